package nightjar;

import everyblade.spi.EngineModelSource;
import everyblade.testkit.EngineModelRules;

class NightjarRulesTest extends EngineModelRules {

    @Override
    protected EngineModelSource source() {
        return new NightjarFan();
    }
}
