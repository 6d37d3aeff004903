package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.LossBench.Loss;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Simulated jobs in which the count is lost in one way or another, held against where the rotor truly went: once a loss
 * is noticed, nothing is called seen that was not. A hundred jobs of each kind, with {@code -Deveryblade.campaign=true}
 * 2,000, whose figures are printed.
 */
class LossTruthTest {

    private static final boolean CAMPAIGN = Boolean.getBoolean("everyblade.campaign");
    private static final int JOBS = CAMPAIGN ? 2_000 : 100;

    @ParameterizedTest
    @EnumSource
    void whereALossIsNoticedNothingIsCalledSeenThatWasNot(Loss loss) {
        int noticed = 0;
        int wrong = 0;
        int unnoticed = 0;
        int truly = 0;
        int doubted = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            LossBench bench = new LossBench(seed, loss).run();
            boolean told = bench.job.coverage().lostCount();
            boolean counts = bench.losses == 0 || told;
            noticed += counts ? 1 : 0;
            unnoticed += counts ? 0 : 1;
            if (counts) {
                wrong += bench.cells(State.SEEN, false) > 0 ? 1 : 0;
            }
            doubted += bench.cells(State.MAYBE, true);
            truly += bench.cells(State.SEEN, true) + bench.cells(State.MAYBE, true);
        }
        if (CAMPAIGN) {
            System.out.printf(
                    "%s: %d jobs, %d with a false cell, %d unnoticed, %.1f %% of what was truly seen called maybe%n",
                    loss, noticed, wrong, unnoticed, 100.0 * doubted / truly);
        }
        // Of two losses that make each other good, only another row may tell, and not where they were.
        double bearable = loss == Loss.CANCELLED ? 0.03 : 0.01;
        assertThat(wrong).as("jobs with a cell called seen that was not").isLessThanOrEqualTo((int)
                Math.max(1, bearable * noticed));
        if (loss == Loss.NONE || loss == Loss.SLIPS) {
            assertThat((double) doubted / truly)
                    .as("truly seen but called maybe")
                    .isLessThan(0.06);
        }
        if (loss == Loss.ONE_ROW || loss == Loss.TWO_ROWS || loss == Loss.TWO_SPOOLS) {
            assertThat(unnoticed)
                    .as("losses between two identifications of a row that nobody noticed")
                    .isZero();
        }
    }
}
