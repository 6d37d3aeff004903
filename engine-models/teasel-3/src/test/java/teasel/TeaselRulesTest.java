package teasel;

import everyblade.spi.EngineModelSource;
import everyblade.testkit.EngineModelRules;

class TeaselRulesTest extends EngineModelRules {

    @Override
    protected EngineModelSource source() {
        return new TeaselFan();
    }
}
