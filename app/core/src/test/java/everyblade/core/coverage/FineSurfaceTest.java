package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.sight.Pose;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Stations that are held exactly before a row of twisted blades, turned once round: what is called seen is so on a surface
 * twenty times as fine, and so is its outermost strip; judged by a caster of the tests' own.
 */
class FineSurfaceTest {

    private static final int STATIONS = Boolean.getBoolean("everyblade.campaign") ? 60 : 2;
    private static final int BLADES = 20;

    /** Cells of one blade by what they are called and whether 95 % of them and of their outermost strips were in sight. */
    private static final class Counts {
        int rightlySeen;
        int wronglySeen;
        int calledLess;
        int wrongAtEdge;
        int leftForItsEdge;
    }

    @Test
    void whatIsCalledSeenIsSoOnAFineSurface() throws Exception {
        Counts counts = new Counts();
        for (int seed = 0; seed < STATIONS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Station station = ShapedEngine.station(
                    "s",
                    -24 + 14 * random.nextDouble(),
                    108 + 34 * random.nextDouble(),
                    new Heading(1, -0.7 + 1.4 * random.nextDouble(), -0.5 + random.nextDouble()),
                    0,
                    0);
            count(station, counts);
        }
        assertThat(counts.wronglySeen).isZero();
        assertThat(counts.wrongAtEdge).isZero();
        // 95 % of their surface was in sight, but a fifth of the outermost strip was not.
        assertThat(counts.leftForItsEdge).isPositive();
        assertThat(counts.rightlySeen).isPositive();
        assertThat(counts.calledLess).isLessThanOrEqualTo(STATIONS / 10);
    }

    private static void count(Station station, Counts counts) throws Exception {
        EngineModel model = new ShapedEngine()
                .twisted("r", BLADES, 0)
                .view("v", "r", "wide120", Optional.empty(), station)
                .model();
        Row row = model.rows().get(0);
        RowCoverage coverage = new Job(Engine.of(model))
                .enter("view v", "datum r 1", "turn 360")
                .coverage()
                .row("r");
        Truth truth = new Truth(model, row);
        truth.watch(Pose.of(station, model.scopeTip("wide120").orElseThrow()), 0, 360);
        for (int zone = 0; zone < coverage.zoning().size(); zone++) {
            boolean whole = truth.share(1, zone) >= 0.95;
            boolean edge = truth.strip(1, zone) >= 0.95;
            boolean seen = coverage.state(1, zone) == State.SEEN;
            counts.rightlySeen += seen && whole && edge ? 1 : 0;
            counts.wronglySeen += seen && !whole ? 1 : 0;
            counts.leftForItsEdge += whole && !edge && coverage.lacksEdgeAlone(1, zone) ? 1 : 0;
            counts.wrongAtEdge += seen && !edge ? 1 : 0;
            counts.calledLess += !seen && whole && edge ? 1 : 0;
        }
    }
}
