package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Clearances;
import everyblade.core.sight.StationAims;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plans of whole rows against every order there is. A plan is not proved to be the least, since which of its turns have a seam
 * hangs on what was identified before, and no bound knows that: here it is shown how far it may be off.
 */
@EnabledIfSystemProperty(named = "everyblade.campaign", matches = "true")
class EveryOrderTest {

    private static final double MOST_OFF = 0.01;

    @ParameterizedTest
    @CsvSource({"tansy-a1, t", "larkspur-4, c2"})
    void aPlanTakesHardlyMoreThanTheLeastThereIs(String id, String rowId) throws Exception {
        EngineModel model = model(id);
        ViewScene scene = new ViewScene(model, Map.of(), Map.of());
        Job job = new Job(
                        Engine.of(model).withClearances(Clearances.of(scene), 2).withAims(new StationAims(scene)))
                .set("detail", "0.8");
        for (Row row : model.rows()) {
            if (!row.id().equals(rowId)) {
                job.enter("ask " + row.id() + " none");
            }
        }
        Row row = model.row(rowId).orElseThrow();
        Prices prices = Prices.of(Settings.USUAL);
        Plan plan = PlanBuilder.of(job.fold(), job.coverage(), prices);
        EveryOrder least = EveryOrder.of(job.fold(), job.coverage(), row, prices, plan.minutes());
        System.out.printf(
                "%s %s: at least %.2f by the bound, %.2f by every order (%d turns tried), found %.2f%n",
                id, rowId, plan.bound(), least.minutes(), least.tried(), plan.minutes());
        assertThat(plan.unsure()).isZero();
        assertThat(plan.minutes()).isLessThanOrEqualTo((1 + MOST_OFF) * least.minutes());
        assertThat(plan.bound()).isLessThanOrEqualTo(least.minutes());
    }

    private static EngineModel model(String id) throws Exception {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        return ((Reading.Read) EngineJsonReader.read(file)).model();
    }
}
