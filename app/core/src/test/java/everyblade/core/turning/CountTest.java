package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.State;
import everyblade.spi.Ratio;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CountTest {

    /** 36 blades seen within ± 2°; blade 1 at the reference, then nine turns of 38° ± 1.9°. */
    private static Job nineTurns(double drift) {
        Job job = new Job(new Engines()
                .rotor("c1", 36)
                .view("v", "c1", 118, 2)
                .pad("pad", Ratio.ONE, 1.9, 0, drift)
                .built());
        job.enter("view v", "datum c1 1");
        Collections.nCopies(9, "turn on 38").forEach(job::enter);
        return job;
    }

    @Nested
    class WithPlayInTheTool {

        @Test
        void theLastBladesAreOnlyMaybeSeen() {
            Job job = nineTurns(0);
            assertThat(job.airfoils("c1", State.MAYBE)).containsExactly(3);
            assertThat(job.airfoils("c1", State.UNSEEN)).containsExactly(2);
            assertThat(job.airfoils("c1", State.SEEN)).hasSize(34);
        }

        @Test
        void anIdentificationAtTheEndMakesThemSure() {
            Job job = nineTurns(0).enter("here 3");
            assertThat(job.airfoils("c1", State.MAYBE)).isEmpty();
            assertThat(job.airfoils("c1", State.UNSEEN)).containsExactly(2);
            assertThat(job.coverage().lostCount()).isFalse();
        }

        @Test
        void anIdentificationBeyondTheErrorsTellsThatTheCountWasLost() {
            Job job = nineTurns(0).enter("here 7");
            assertThat(job.coverage().lostCount()).isTrue();
            assertThat(job.warnings())
                    .anySatisfy(warning -> assertThat(warning)
                            .contains("the count was lost")
                            .contains("4 blades")
                            .contains("between entries 2 and 12"));
            assertThat(job.airfoils("c1", State.SEEN)).isSubsetOf(List.of(1, 7));
        }

        @Test
        void aRotorThatRollsBackMayHaveLostMore() {
            assertThat(nineTurns(1).airfoils("c1", State.MAYBE)).containsExactly(3, 4);
        }
    }
}
