package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.spi.Ratio;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Jobs of many runs of watching, each counted on from a known blade: all that is called seen in one job is to hold
 * together in 95 % of jobs, however many runs it rests on. Errors are Gaussian with the ± as two standard deviations. 300
 * jobs of each number of runs, with {@code -Deveryblade.campaign=true} 3,000.
 */
class ManyRunsTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 3_000 : 300;
    private static final int BLADES = 94;
    private static final double PITCH = 360.0 / BLADES;
    private static final double HALF_WIDTH = 1.5;
    private static final double PLAY = 1.5;

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.5f", number);
    }

    /** Whether a job of so many runs, a blade identified after every third, calls nothing seen that was not. */
    private static boolean holds(long seed, int runs) {
        SplittableRandom random = new SplittableRandom(seed);
        Job job = new Job(new Engines()
                .rotor("r", BLADES)
                .view("v", "r", 0, HALF_WIDTH)
                .pad("pad", Ratio.ONE, PLAY, 0, 0)
                .built());
        boolean[] truly = new boolean[BLADES];
        double angle = 0;
        job.enter("view v", "datum r 1 ±0");
        for (int run = 0; run < runs; run++) {
            for (boolean watched : new boolean[] {false, true}) {
                double counted =
                        Math.rint(1e5 * (watched ? 2 + 8 * random.nextDouble() : 360 * random.nextDouble())) / 1e5;
                double by = counted + PLAY / 2 * gauss(random);
                for (int n = 0; watched && n < BLADES; n++) {
                    double low = angle + Math.min(0, by) + n * PITCH - HALF_WIDTH;
                    double high = angle + Math.max(0, by) + n * PITCH + HALF_WIDTH;
                    truly[n] |= Math.floor(high / 360) * 360 >= low;
                }
                angle += by;
                job.enter((watched ? "turn " : "skip ") + text(counted));
            }
            if (run % 3 == 2) {
                int blade = random.nextInt(BLADES);
                double by = Math.IEEEremainder(-blade * PITCH - angle, 360);
                double counted = by - PLAY / 2 * gauss(random);
                angle += by;
                job.enter("skip " + text(counted), "here " + (blade + 1) + " ±0");
            }
        }
        RowCoverage row = job.coverage().row("r");
        for (int n = 1; n <= BLADES; n++) {
            if (row.state(n, 0) == State.SEEN && !truly[n - 1]) {
                return false;
            }
        }
        return true;
    }

    private static double gauss(SplittableRandom random) {
        double u = 1 - random.nextDouble();
        return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 20, 40})
    void allThatAJobCallsSeenHoldsTogether(int runs) {
        int held = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            held += holds(seed, runs) ? 1 : 0;
        }
        assertThat((double) held / JOBS).isGreaterThanOrEqualTo(0.95);
    }
}
