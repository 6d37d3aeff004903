package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.turning.CountError;
import everyblade.spi.Ratio;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Random jobs whose true moves differ from the entered ones by errors drawn from the stated ±: Gaussian with the ± as
 * two standard deviations, one-sided ones even between nothing and their bound. What is called seen must truly have
 * been in sight. 2,500 jobs of each kind, with {@code -Deveryblade.campaign=true} 10,000.
 */
class TruthTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 10_000 : 2_500;
    private static final int[] COUNTS = {12, 19, 36, 60, 94};

    /** A rotor that is turned for real, beside the job that only knows what was entered. */
    private static final class Bench {

        final SplittableRandom random;
        final int count;
        final double pitch;
        final double halfWidth;
        final double play;
        final double drift;
        final double aim;
        final Job job;
        final boolean[] truly;
        double angle;
        boolean lost;

        Bench(long seed) {
            random = new SplittableRandom(seed);
            count = COUNTS[random.nextInt(COUNTS.length)];
            pitch = 360.0 / count;
            halfWidth = round(pitch * (0.1 + 0.4 * random.nextDouble()));
            play = round(pitch * 0.15 * random.nextDouble());
            drift = random.nextInt(3) == 0 ? round(pitch * 0.04 * random.nextDouble()) : 0;
            aim = round(pitch * 0.1 * random.nextDouble());
            truly = new boolean[count];
            job = new Job(new Engines()
                    .rotor("c1", count)
                    .view("v", "c1", 0, halfWidth)
                    .pad("pad", Ratio.ONE, play, 0, drift)
                    .built());
        }

        static double round(double number) {
            return Math.rint(number * 1e5) / 1e5;
        }

        static String text(double number) {
            return String.format(Locale.ROOT, "%.5f", number);
        }

        double gauss(double plusMinus) {
            double u = 1 - random.nextDouble();
            return plusMinus / 2 * Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
        }

        /** What a push by hand truly does beyond what is counted. */
        double error(double amount) {
            return gauss(play) - Math.signum(amount) * drift * random.nextDouble();
        }

        /** Turns by a counted amount; the rotor goes where it truly goes. */
        void turn(double counted, double trueAmount, boolean watching) {
            double from = angle;
            angle += trueAmount;
            if (watching) {
                for (int n = 0; n < count; n++) {
                    double low = Math.min(from, angle) + n * pitch - halfWidth;
                    double high = Math.max(from, angle) + n * pitch + halfWidth;
                    truly[n] |= Math.floor(high / 360) * 360 >= low;
                }
            }
            job.enter((watching ? "turn " : "skip ") + text(counted));
        }

        void move() {
            double counted = round((random.nextInt(4) == 0 ? -1 : 1) * (2 + 60 * random.nextDouble()));
            turn(counted, counted + error(counted), random.nextInt(4) != 0);
        }

        /** Turns until a known blade stands at the reference as well as one can put it there. */
        void identify() {
            int blade = random.nextInt(count);
            double target = -blade * pitch + gauss(aim);
            double trueAmount = (target - angle) % 360;
            double counted = round(trueAmount - error(trueAmount));
            turn(counted, trueAmount, random.nextBoolean());
            job.enter("here " + (blade + 1) + " ±" + text(aim));
        }

        /** The rotor goes elsewhere by at least a blade more than all errors allow for, and nobody notices. */
        void lose() {
            double allowed = 4 * (aim + play * 4 + drift * 20);
            double lostBy = (random.nextBoolean() ? 1 : -1) * (pitch + allowed) * (1 + random.nextDouble());
            if (Math.abs(lostBy) < 180 - allowed) {
                angle += lostBy;
                lost = true;
            }
        }

        Bench run(boolean losing) {
            job.enter("view v", "datum c1 1 ±" + text(aim));
            angle = gauss(aim);
            int stretches = 1 + random.nextInt(3);
            for (int stretch = 0; stretch < stretches; stretch++) {
                int moves = 1 + random.nextInt(8);
                for (int i = 0; i < moves; i++) {
                    move();
                    if (losing && !lost && i == moves / 2) {
                        lose();
                    }
                }
                identify();
            }
            int after = random.nextInt(6);
            for (int i = 0; i < after; i++) {
                move();
            }
            return this;
        }

        /** How many cells are in a state and truly were, or were not, in sight. */
        int cells(State state, boolean inSight) {
            RowCoverage row = job.coverage().row("c1");
            int sum = 0;
            for (int n = 1; n <= count; n++) {
                sum += row.state(n, 0) == state && truly[n - 1] == inSight ? 1 : 0;
            }
            return sum;
        }
    }

    private static List<Bench> jobs(boolean losing) {
        return LongStream.range(0, JOBS)
                .mapToObj(seed -> new Bench(seed).run(losing))
                .toList();
    }

    @Test
    void inNineteenOfTwentyJobsEveryCellCalledSeenWasTrulyInSight() {
        Map<Integer, int[]> bySize = new TreeMap<>();
        int[] unseen = new int[2];
        int[] maybe = new int[2];
        int alarms = 0;
        for (Bench bench : jobs(false)) {
            int[] figures = bySize.computeIfAbsent(bench.count, size -> new int[2]);
            figures[0]++;
            figures[1] += bench.cells(State.SEEN, false) == 0 ? 1 : 0;
            for (int inSight = 0; inSight < 2; inSight++) {
                unseen[inSight] += bench.cells(State.UNSEEN, inSight == 1);
                maybe[inSight] += bench.cells(State.MAYBE, inSight == 1);
            }
            alarms += bench.job.fold().situation().countErrors().stream().anyMatch(CountError::lost) ? 1 : 0;
        }
        assertThat(bySize)
                .hasSize(COUNTS.length)
                .allSatisfy((size, figures) -> assertThat((double) figures[1] / figures[0])
                        .as("share of jobs with %d blades", size)
                        .isGreaterThanOrEqualTo(0.95));
        assertThat(share(unseen)).as("unseen but truly in sight").isLessThan(0.05);
        // Were nothing ever doubtful, the figures above would say nothing.
        assertThat(share(maybe)).as("maybe seen and truly in sight").isBetween(0.1, 0.9);
        assertThat((double) alarms / JOBS)
                .as("told of a lost count that was none")
                .isLessThan(0.05);
    }

    @Test
    void noLostCountOfABladeOrMoreStaysUnnoticed() {
        int lost = 0;
        int noticed = 0;
        int right = 0;
        for (Bench bench : jobs(true)) {
            if (bench.lost) {
                lost++;
                noticed += bench.job.coverage().lostCount() ? 1 : 0;
                right += bench.cells(State.SEEN, false) == 0 ? 1 : 0;
            }
        }
        assertThat(lost).isGreaterThan(JOBS / 4);
        assertThat(noticed).isEqualTo(lost);
        assertThat((double) right / lost).isGreaterThanOrEqualTo(0.95);
    }

    private static double share(int[] notAndTruly) {
        return (double) notAndTruly[1] / (notAndTruly[0] + notAndTruly[1]);
    }
}
