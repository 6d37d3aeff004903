package everyblade.core.move;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Engine;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A random job left off somewhere, the same for each seed: rows that turn and that stand still, on two spools, through ports and
 * without, few blades and many, moves with errors and without, blades that can be told from others and none; or one row whose
 * sight is computed, before four stations.
 */
final class AnyJob {

    private static final int[] COUNTS = {3, 6, 9, 12, 23, 40};
    private static final String[] SHOWN = {"all", "all", "root", "tip", "leading", "trailing"};
    private static final int COMPUTED_BLADES = 14;
    /**
     * Numbers of jobs beyond the first ones whose plans have what few have: blades counted by eye, a little further after a round, a
     * view taken anew, for the doubt about where the scope tip is would be too large.
     */
    private static final int[] RARE = {149, 177, 188, 236, 242, 265, 304, 350, 400, 412, 463};

    private final SplittableRandom random;
    private final List<String> lines = new ArrayList<>();
    private final Set<String> still = new HashSet<>();

    private AnyJob(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Numbers of jobs for {@link #declared}: so many, and some that are rare. */
    static List<Integer> numbers(int first) {
        return IntStream.concat(IntStream.range(0, first), IntStream.of(RARE))
                .distinct()
                .boxed()
                .toList();
    }

    static Job declared(long seed) {
        AnyJob any = new AnyJob(seed);
        return any.entered(new Job(any.engine()));
    }

    /** One row before so many views that not every way of sharing its blades out among them can be followed. */
    static Job manyViews(long seed) {
        AnyJob any = new AnyJob(seed);
        Engines engines = new Engines()
                .pad("pad", Ratio.ONE, any.random.nextInt(3), 0, 0)
                .port("p0")
                .port("p1")
                .row("r0", RowKind.ROTOR, 40, Direction.CW, 3, List.of(), false, 0)
                .aim(1);
        List<String> views = new ArrayList<>();
        for (int view = 0; view < 7; view++) {
            engines.viewThrough("p" + view % 2, "r0-" + view, "r0", any.random.nextInt(360), 3, "s" + (view % 3 + 1));
            views.add("r0-" + view);
        }
        any.visits(views, List.of());
        any.visits(views, List.of());
        return any.entered(new Job(engines.built()));
    }

    /** Where sight is computed; what stations show is computed once for all of them. */
    static Job computed(Job fresh, long seed) {
        AnyJob any = new AnyJob(seed);
        any.visits(List.of("a", "b"), List.of("ahead", "low", "left", "outer"));
        return any.entered(fresh.another());
    }

    /** What is refused was never done. */
    private Job entered(Job job) {
        for (String line : lines) {
            try {
                job.tryEnter(line);
            } catch (Refusal refused) {
                continue;
            }
        }
        return job;
    }

    /** The row of {@link #computed}, of which nothing was seen. */
    static Job computed(double play) {
        Station[] ahead = {
            ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3),
            ShapedEngine.station("low", -14, 116, new Heading(1, 0.4, -0.2), 0.5, 2)
        };
        Station[] beside = {
            ShapedEngine.station("left", -15, 128, new Heading(1, -0.4, -0.1), 0.5, 2),
            ShapedEngine.station("outer", -10, 140, new Heading(1, 0.1, -0.6), 0.5, 2)
        };
        return new Job(new ShapedEngine()
                .row("r0", RowKind.ROTOR, COMPUTED_BLADES, 35, 0)
                .play(play)
                .view("a", "r0", ahead)
                .view("b", "r0", beside)
                .built());
    }

    private Engine engine() {
        Engines engines = new Engines().normal(random.nextBoolean() ? Direction.CW : Direction.CCW);
        Direction[][] ways = {{}, {Direction.CW}, {Direction.CCW}};
        double play = random.nextInt(4) == 0 ? 0 : random.nextInt(5);
        engines.pad("pad", new Ratio(1, 1 + random.nextInt(3)), play, 0, 0, ways[random.nextInt(ways.length)])
                .port("p0")
                .port("p1");
        int rows = 1 + random.nextInt(3);
        for (int row = 0; row < rows; row++) {
            List<String> views = row(engines, "r" + row, rows);
            if (random.nextInt(3) > 0) {
                visits(views, List.of());
            }
        }
        return engines.built();
    }

    private List<String> row(Engines engines, String id, int rows) {
        int count = COUNTS[random.nextInt(COUNTS.length)];
        if (random.nextBoolean()) {
            engines.landmark(1 + random.nextInt(COUNTS[0]));
        }
        if (id.equals("r2")) {
            engines.onSpool("second");
        }
        RowKind kind = random.nextInt(4) > 0 ? RowKind.ROTOR : RowKind.STATOR;
        if (kind == RowKind.STATOR) {
            still.add(id);
        }
        engines.aim(random.nextInt(5) * 0.5)
                .row(
                        id,
                        kind,
                        count,
                        random.nextBoolean() ? Direction.CW : Direction.CCW,
                        2,
                        List.of(ChordBand.LEADING, ChordBand.TRAILING),
                        false,
                        random.nextInt(2) * 0.4);
        List<String> views = new ArrayList<>();
        for (int view = 0; view < (rows == 1 ? 4 : 2) + random.nextInt(2); view++) {
            String name = id + "-" + view;
            String shown = view == 0 ? "all" : SHOWN[random.nextInt(SHOWN.length)];
            int reference = random.nextInt(360);
            double half = 0.25 + random.nextInt(6);
            if (random.nextBoolean()) {
                engines.viewThrough("p" + random.nextInt(2), name, id, reference, half, shown);
            } else {
                engines.view(name, id, reference, half, shown);
            }
            views.add(name);
        }
        return views;
    }

    /** Some of what a technician may have done at these views, whether it was warned of or not. */
    private void visits(List<String> views, List<String> stations) {
        Set<String> counted = new HashSet<>();
        for (int visit = random.nextInt(3); visit >= 0; visit--) {
            String view = views.get(random.nextInt(views.size()));
            lines.add("view " + view);
            String row = stations.isEmpty() ? view.substring(0, 2) : "r0";
            if (counted.add(row)) {
                lines.add("datum " + row + " 1");
            }
            if (random.nextInt(4) == 0) {
                lines.add("watch " + (random.nextBoolean() ? "root" : "tip"));
            }
            for (int move = random.nextInt(3); move > 0; move--) {
                lines.add(move(still.contains(row)));
            }
            if (random.nextInt(5) == 0) {
                lines.addAll(List.of("open p0", "shut p0"));
            }
        }
    }

    private String move(boolean drawn) {
        if (!drawn && random.nextInt(4) == 0) {
            return "round 1";
        }
        boolean watched = random.nextInt(3) > 0;
        String verb = drawn ? watched ? "draw " : "feed " : watched ? "turn on " : "skip on ";
        String off = random.nextInt(5) == 0 ? " ± " + (1 + random.nextInt(8)) : "";
        return verb + (10 + random.nextInt(340)) + off;
    }
}
