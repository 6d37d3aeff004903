package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.sight.Pose;
import everyblade.core.sight.PoseFamily;
import everyblade.core.turning.Engine;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A cell along an edge of sight, of which barely more than the bound is in sight: the patches along that edge that are shown up
 * to their borders count as a whole, so that it is called seen, as it is on a surface twenty times as fine.
 */
class BarelySeenTest {

    private static final int BLADE = 2;
    private static final int ZONE = 1;

    @Test
    void aCellAFewThousandthsAboveTheBoundIsCalledSeenAndIs() throws Exception {
        Path file = Path.of("..", "..", "engine-models", "corncrake-12", EngineJsonReader.FILE);
        EngineModel model = ((Reading.Read) EngineJsonReader.read(file)).model();
        View view = model.view("p5-c5").orElseThrow();
        Row row = model.row(view.row()).orElseThrow();
        Station station = view.stations().stream()
                .filter(one -> one.id().equals("high"))
                .findFirst()
                .orElseThrow();

        RowCoverage coverage = new Job(Engine.of(model))
                .enter("heat 20 C", "view p5-c5", "at high", "datum c5 1 ±0", "turn on 360 ±0")
                .coverage()
                .row("c5");
        assertThat(coverage.areas(BLADE, ZONE).seen()).isBetween(0.95, 0.96);
        assertThat(coverage.state(BLADE, ZONE)).isEqualTo(State.SEEN);

        List<Pose> poses = PoseFamily.of(
                Pose.of(station, model.scopeTip(view.scopeTip().orElseThrow()).orElseThrow()), station.within());
        for (int pose = 0; pose < poses.size(); pose += 26) {
            Truth truth = new Truth(model, row);
            truth.watch(poses.get(pose), 0, 360);
            assertThat(truth.share(BLADE, ZONE)).as("pose %d", pose).isGreaterThanOrEqualTo(0.95);
        }
    }
}
