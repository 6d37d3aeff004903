package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.turning.Situation;
import java.util.List;
import org.junit.jupiter.api.Test;

class SweptArcTest {

    private static Job counting() {
        return Job.on("tansy-a1").enter("heat 24 C", "view ex-t", "datum t 1");
    }

    private static List<SweptArc> arcs(Job job) {
        Situation now = job.coverage().situation();
        return SweptArc.of(now, now.seat().orElseThrow());
    }

    @Test
    void isNoneBeforeAnythingIsWatched() {
        assertThat(arcs(counting())).isEmpty();
    }

    @Test
    void reachesFromTheScopeTipToWhereWhatPassedItFirstStandsNow() {
        assertThat(arcs(counting().enter("turn on 100"))).hasSize(1).first().satisfies(arc -> {
            assertThat(arc.to()).isZero();
            assertThat(Math.abs(arc.from())).isEqualTo(100);
        });
    }

    @Test
    void goesOnWithEachMoveThatIsWatched() {
        assertThat(arcs(counting().enter("turn on 100", "turn on 20")))
                .hasSize(1)
                .allSatisfy(arc -> assertThat(Math.abs(arc.to() - arc.from())).isEqualTo(120));
    }

    @Test
    void leavesOutWhatWasNotWatched() {
        assertThat(arcs(counting().enter("turn on 100", "skip on 30", "turn on 20")))
                .extracting(arc -> Math.abs(arc.to() - arc.from()))
                .containsExactly(100.0, 20.0);
    }

    @Test
    void beginsAnewWhereTheScopeTipIsPlacedAnew() {
        assertThat(arcs(counting().enter("turn on 100", "view ex-t-edge"))).isEmpty();
    }
}
