package everyblade.core.coverage;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.spi.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;

/**
 * Rotors that are turned for real, beside the job that only knows what was entered: where each rotor stands, what its
 * dial shows, and which blades were truly in sight. Errors are drawn from the stated ±, Gaussian with the ± as two
 * standard deviations; losses are whole blades or more and nobody enters them.
 */
final class LossBench {

    /** What goes wrong in a job. */
    enum Loss {
        NONE,
        ONE_ROW,
        TWO_ROWS,
        BETWEEN_READINGS,
        SLIPPED_DIAL,
        TWO_PORTIONS,
        WHOLE_TURN,
        CANCELLED,
        SLIPS,
        TWO_SPOOLS,
        ROUNDS
    }

    private static final int[] COUNTS = {19, 36, 60, 94};

    private static final class Rotor {
        double angle;
        double dial;
        boolean dialSet;
    }

    /** A row as it truly stands: blade 1 at the clock angle {@code first} while its rotor stands at zero. */
    private final class TrueRow {
        final String id;
        final int count;
        final double halfWidth;
        final double first;
        final Rotor rotor;
        final boolean[] truly;
        boolean counted;

        TrueRow(String id, Rotor rotor) {
            this.id = id;
            this.rotor = rotor;
            count = COUNTS[random.nextInt(COUNTS.length)];
            halfWidth = round(360.0 / count * (0.15 + 0.3 * random.nextDouble()));
            first = 360 * random.nextDouble();
            truly = new boolean[count];
        }

        double clock(int n) {
            return first + rotor.angle + (n - 1) * 360.0 / count;
        }

        void swept(double by) {
            for (int n = 1; n <= count; n++) {
                double low = clock(n) + Math.min(0, by) - halfWidth;
                double high = clock(n) + Math.max(0, by) + halfWidth;
                truly[n - 1] |= counted && Math.floor(high / 360) * 360 >= low;
            }
        }
    }

    private final SplittableRandom random;
    private final Loss loss;
    private final List<TrueRow> rows = new ArrayList<>();
    private final double play;
    private final double aim;
    /** Whether the dial goes along when the rotor jumps. */
    private final boolean dialFollows;

    final Job job;
    private TrueRow inView;
    /** The losses still to come, by the number of moves until then, degrees. */
    private final List<double[]> ahead = new ArrayList<>();

    private int moves;
    int losses;

    LossBench(long seed, Loss loss) {
        this.random = new SplittableRandom(seed);
        this.loss = loss;
        Rotor one = new Rotor();
        rows.add(new TrueRow("r", one));
        if (loss != Loss.ONE_ROW && loss != Loss.BETWEEN_READINGS && loss != Loss.ROUNDS) {
            rows.add(new TrueRow("q", loss == Loss.TWO_SPOOLS ? new Rotor() : one));
        }
        double pitch = rows.stream().mapToDouble(row -> 360.0 / row.count).min().orElseThrow();
        play = round(pitch * 0.05 * random.nextDouble());
        aim = round(pitch * 0.05 * random.nextDouble());
        Engines engines = new Engines();
        for (TrueRow row : rows) {
            engines.onSpool(row.rotor == one ? "shaft" : "other").rotor(row.id, row.count);
            engines.view("v-" + row.id, row.id, 0, row.halfWidth);
        }
        dialFollows = loss == Loss.BETWEEN_READINGS && random.nextBoolean();
        job = new Job(engines.pad("pad", Ratio.ONE, play, 0, 0).built());
    }

    private static double round(double number) {
        return Math.rint(number * 1e5) / 1e5;
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.5f", number);
    }

    private double gauss(double plusMinus) {
        double u = 1 - random.nextDouble();
        return plusMinus / 2 * Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    private boolean readings() {
        return loss == Loss.BETWEEN_READINGS || loss == Loss.SLIPPED_DIAL;
    }

    LossBench run() {
        int steps = 6 + random.nextInt(10);
        int portions = loss == Loss.NONE || loss == Loss.SLIPS
                ? 0
                : loss == Loss.TWO_PORTIONS || loss == Loss.CANCELLED ? 2 : 1;
        double by = lostBy();
        for (int i = 0; i < portions; i++) {
            ahead.add(new double[] {1 + random.nextInt(steps / 2), by});
            by = loss == Loss.CANCELLED ? -by : Math.copySign(lostBy(), by);
        }
        look(rows.get(0));
        for (int i = 0; i < steps; i++) {
            switch (random.nextInt(6)) {
                case 0 -> look(rows.get(random.nextInt(rows.size())));
                case 1 -> identify(random.nextBoolean());
                case 2 -> {
                    if (loss == Loss.SLIPS) {
                        inView.rotor.angle += 360 * random.nextDouble();
                        job.enter("slip");
                        identify(false);
                    } else if (loss == Loss.ROUNDS) {
                        goRound();
                    }
                }
                default -> move();
            }
        }
        // Every row is identified once more, so that what can be noticed is.
        rows.forEach(row -> {
            look(row);
            identify(random.nextBoolean());
        });
        return this;
    }

    /** A blade or more of every row, and more than the errors of a whole job explain. */
    private double lostBy() {
        double pitch = rows.stream().mapToDouble(row -> 360.0 / row.count).max().orElseThrow();
        double whole = loss == Loss.WHOLE_TURN
                ? 360
                : pitch * (1 + random.nextInt(3)) + (random.nextBoolean() ? 0 : pitch * random.nextDouble());
        return random.nextBoolean() ? whole : -whole;
    }

    private void look(TrueRow row) {
        inView = row;
        job.enter("view v-" + row.id);
        if (!row.counted) {
            identify(false);
        }
    }

    /** A move, by an amount or to what the dial shall read; where the count is lost the rotor jumps on the way. */
    private void move() {
        double amount = (random.nextInt(5) == 0 ? -1 : 1) * (5 + 80 * random.nextDouble());
        boolean watched = random.nextInt(4) != 0;
        Rotor rotor = inView.rotor;
        if (readings() && rotor.dialSet && random.nextInt(4) != 0) {
            double target = round(((rotor.dial + amount) % 360 + 360) % 360);
            double read = target + gauss(play);
            turn(() -> nearer(read - rotor.dial), watched);
            job.enter((watched ? "turn to " : "skip to ") + text(target));
        } else {
            double counted = round(amount);
            double end = rotor.angle + counted + gauss(play) + (loss == Loss.SLIPPED_DIAL ? 0 : jump());
            turn(() -> end - rotor.angle, watched);
            job.enter((watched ? "turn " : "skip ") + text(counted));
        }
    }

    /** The rotor goes its way, and somewhere on it what is lost comes to it unwatched; a dial may slip instead. */
    private void turn(DoubleSupplier left, boolean watched) {
        double jump = jump();
        moves++;
        losses += jump != 0 ? 1 : 0;
        int when = random.nextInt(3);
        go(left.getAsDouble() * when / 2, watched);
        if (loss == Loss.SLIPPED_DIAL && inView.rotor.dialSet) {
            inView.rotor.dial += jump;
        } else {
            go(jump, false);
            inView.rotor.dial -= dialFollows ? 0 : jump;
        }
        // What was lost at the very end nobody turns back.
        if (when < 2) {
            go(left.getAsDouble(), watched);
        }
    }

    /** What is lost in the next move, degrees. */
    private double jump() {
        return ahead.stream()
                .filter(one -> one[0] == moves)
                .mapToDouble(one -> one[1])
                .sum();
    }

    private static double nearer(double degrees) {
        return degrees - 360 * Math.rint(degrees / 360);
    }

    private void go(double by, boolean watched) {
        if (watched) {
            inView.swept(by);
        }
        inView.rotor.angle += by;
        inView.rotor.dial += by;
    }

    /** Turns until a known blade stands at the reference, as well as one can put it there, and says so. */
    private void identify(boolean watched) {
        int blade = 1 + random.nextInt(inView.count);
        double by = nearer(gauss(aim) - inView.clock(blade));
        if (inView.counted) {
            double counted = round(by + gauss(play));
            go(by, watched);
            job.enter((watched ? "turn " : "skip ") + text(counted), "here " + blade + " ±" + text(aim));
            return;
        }
        go(by, false);
        if (rows.stream().anyMatch(row -> row.counted)) {
            job.enter("skip " + text(round(by)));
        }
        boolean at = readings() && !inView.rotor.dialSet;
        job.enter("datum " + inView.id + " " + blade + (at ? " at 0" : "") + " ±" + text(aim));
        if (at) {
            inView.rotor.dial = 0;
            inView.rotor.dialSet = true;
        }
        inView.counted = true;
    }

    /** A watched turn from a blade that was put at the reference to the same one. */
    private void goRound() {
        identify(false);
        double at = inView.clock(1) / (360.0 / inView.count);
        int blade = Math.floorMod(-Math.round(at), inView.count) + 1;
        go(360 + gauss(aim) - inView.clock(blade) + 360 * Math.rint(inView.clock(blade) / 360), true);
        job.enter("round " + blade + " ±" + text(aim));
    }

    /** How many cells are in a state and truly were, or were not, in sight. */
    int cells(State state, boolean inSight) {
        int sum = 0;
        for (TrueRow row : rows) {
            RowCoverage coverage = job.coverage().row(row.id);
            for (int n = 1; n <= row.count; n++) {
                sum += coverage.state(n, 0) == state && row.truly[n - 1] == inSight ? 1 : 0;
            }
        }
        return sum;
    }
}
