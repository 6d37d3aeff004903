package everyblade.core.move;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.move.SlowPlan.SlowView;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A random job on few blades in whole marks of the circle: every angle at which something comes into sight is one.
 * Works out by itself where each blade stands.
 */
final class SmallJob {

    static final int MARKS = 24;
    static final int MARK = 360 / MARKS;
    private static final int[] COUNTS = {1, 2, 3, 4, 6, 8};

    /** A row and where its blade 1 stands while the shaft stands at mark zero. */
    private record SmallRow(String id, int count, int sense, int bands) {}

    private record SmallView(SmallRow row, int reference, int halfWidth, String shows) {}

    private final SplittableRandom random;
    private final List<SmallView> views = new ArrayList<>();
    private final Map<String, Integer> firstBlade = new HashMap<>();
    private final List<String> lines = new ArrayList<>();
    private final Engine engine;
    private int shaft;
    /** 1 or −1 if the shaft may be turned one way only. */
    final int way;

    SmallJob(long seed, int rows) {
        random = new SplittableRandom(seed);
        Engines engines = new Engines().normal(random.nextBoolean() ? Direction.CW : Direction.CCW);
        way = random.nextInt(3) - 1;
        if (way == 0) {
            engines.pad("pad", Ratio.ONE, 0, 0, 0);
        } else {
            engines.pad("pad", Ratio.ONE, 0, 0, 0, way > 0 ? Direction.CW : Direction.CCW);
        }
        for (int row = 0; row < rows; row++) {
            addRow(engines, "r" + row);
        }
        engine = engines.built();
    }

    private void addRow(Engines engines, String id) {
        Direction numbering = random.nextBoolean() ? Direction.CW : Direction.CCW;
        int count = COUNTS[random.nextInt(COUNTS.length)];
        SmallRow row = new SmallRow(id, count, numbering.sign(), count <= 4 ? 1 + random.nextInt(2) : 1);
        engines.row(id, RowKind.ROTOR, count, numbering, row.bands(), List.of(), false, 0);
        int number = 1 + random.nextInt(2);
        for (int i = 0; i < number; i++) {
            String shows = row.bands() == 1 || random.nextInt(3) > 0 ? "all" : random.nextBoolean() ? "root" : "tip";
            SmallView view = new SmallView(row, random.nextInt(MARKS), random.nextInt(3), shows);
            views.add(view);
            engines.view(id + "-" + i, id, MARK * view.reference(), MARK * view.halfWidth(), shows);
            lines.add("view " + id + "-" + i);
            if (i == 0) {
                int blade = 1 + random.nextInt(count);
                lines.add("datum " + id + " " + blade);
                firstBlade.put(id, view.reference() - row.sense() * (blade - 1) * MARKS / count - shaft);
            }
            for (int move = random.nextInt(3); move > 0; move--) {
                int amount = (way != 0 ? way : random.nextBoolean() ? 1 : -1) * random.nextInt(8);
                shaft += amount;
                lines.add((random.nextInt(3) > 0 ? "skip " : "turn ") + MARK * amount);
            }
        }
    }

    Job job() {
        return new Job(engine).enter(lines.toArray(String[]::new));
    }

    /** A cell that a view shows and that was not seen. */
    private record Cell(SmallRow row, int blade, int band) {}

    /** The least time in which all gaps can be closed, half seconds; −1 if that would take too long to work out. */
    int leastTime(Job job) {
        List<Cell> open = views.stream()
                .flatMap(view -> cells(view).stream())
                .distinct()
                .filter(cell -> {
                    RowCoverage row = job.coverage().row(cell.row().id());
                    return row.state(cell.blade(), cell.band()) != State.SEEN;
                })
                .toList();
        if (open.size() > 10 - 2 * views.size()) {
            return -1;
        }
        List<SlowView> slow =
                views.stream().map(view -> new SlowView(shows(view, open))).toList();
        return SlowPlan.of(MARKS, open.size(), slow, views.size() - 1, way >= 0, way <= 0);
    }

    private static List<Cell> cells(SmallView view) {
        List<Cell> cells = new ArrayList<>();
        for (int blade = 1; blade <= view.row().count(); blade++) {
            for (int band = 0; band < view.row().bands(); band++) {
                if (view.shows().equals("all") || view.shows().equals(band == 0 ? "root" : "tip")) {
                    cells.add(new Cell(view.row(), blade, band));
                }
            }
        }
        return cells;
    }

    /** Which of the open cells a view shows at each mark that the shaft may go on by. */
    private int[] shows(SmallView view, List<Cell> open) {
        int[] shows = new int[MARKS];
        List<Cell> cells = cells(view);
        for (int mark = 0; mark < MARKS; mark++) {
            for (int i = 0; i < open.size(); i++) {
                Cell cell = open.get(i);
                int clock = firstBlade.get(cell.row().id())
                        + cell.row().sense()
                                * (cell.blade() - 1)
                                * MARKS
                                / cell.row().count()
                        + shaft
                        + mark;
                int off = Math.floorMod(clock - view.reference() + MARKS / 2, MARKS) - MARKS / 2;
                shows[mark] |= cells.contains(cell) && Math.abs(off) <= view.halfWidth() ? 1 << i : 0;
            }
        }
        return shows;
    }
}
