package everyblade.testkit;

import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import java.util.List;

/** The rules for given models; named so that no test run takes it for a test of its own. */
final class Given extends EngineModelRules {

    private final List<EngineModel> models;

    Given(EngineModel... models) {
        this.models = List.of(models);
    }

    @Override
    protected EngineModelSource source() {
        return new EngineModelSource() {
            @Override
            public String id() {
                return "given";
            }

            @Override
            public List<EngineModel> models() {
                return models;
            }
        };
    }
}
