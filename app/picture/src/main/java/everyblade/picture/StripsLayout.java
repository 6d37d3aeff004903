package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * All rows unrolled one under the other, root lowest, so that what is left is a notch; the chosen one as high as its
 * zones need, with their names.
 */
final class StripsLayout implements ScreenLayout {

    private static final double NAMES_LEAST = 18;
    private static final double NAMES_SHARE = 0.25;
    /** Below this width, mm, shares alone stand behind rows. */
    private static final double NARROW = 115;
    /** Room for a full share, which is never cut. */
    private static final double SHARE = 13;

    private static final double EDGE = 1;
    private static final double BETWEEN = 1.1;
    /** Where rows are low, the room between them is at most such a share. */
    private static final double BETWEEN_SHARE = 0.22;

    private static final double CHOSEN_SHARE = 0.28;
    private static final double CHOSEN_MOST = 42;
    /** Height of a zone of the chosen row, for which the others give way as far as they can be told apart. */
    private static final double ZONE = 1.9;

    private static final double ROW_LEAST = 2.6;
    private static final double LETTERS_MOST = 3.6;
    private static final double LETTERS_SHARE = 0.95;
    /** What is said of a row beside its share is in letters so much smaller. */
    private static final double STAGE_SHARE = 0.85;

    private static final double TITLE = 5.4;

    private final ScreenView view;
    private final List<RowStrip> strips;
    private final double letters;
    private final double names;
    private final double figures;

    StripsLayout(Coverage coverage, ScreenView view) {
        this.view = view;
        double high = view.height() - view.foot();
        List<RowCoverage> rows = coverage.rows();
        names = names(rows, view);
        figures = figures(rows, view);
        boolean opened = rows.stream().anyMatch(this::isChosen);
        double chosen = rows.stream()
                .filter(this::isChosen)
                .mapToDouble(row -> chosen(row, high, rows.size() - 1))
                .findFirst()
                .orElse(0);
        double each = (high - chosen) / (rows.size() - (opened ? 1 : 0));
        strips = new ArrayList<>();
        double between = Math.min(BETWEEN, BETWEEN_SHARE * each);
        letters = Math.min(LETTERS_MOST, LETTERS_SHARE * each);
        double down = 0;
        for (RowCoverage row : rows) {
            if (isChosen(row)) {
                strips.add(RowStrip.opened(
                        row,
                        new Point(EDGE, down + TITLE),
                        view.width() - figures - EDGE,
                        chosen - TITLE - BETWEEN,
                        names - EDGE,
                        view.words()));
                down += chosen;
            } else {
                strips.add(RowStrip.low(
                        row,
                        new Point(EDGE, down + between / 2),
                        view.width() - figures - EDGE,
                        Math.min(each, 2 * LETTERS_MOST + between) - between,
                        names - EDGE,
                        view.words()));
                down += each;
            }
        }
    }

    /** What the chosen row takes, mm. */
    private static double chosen(RowCoverage row, double high, int others) {
        double needed = TITLE + BETWEEN + RowStrip.UNDER + ZONE * row.zoning().size();
        double usual = Math.min(CHOSEN_MOST, CHOSEN_SHARE * high);
        return Math.max(usual, Math.min(Math.min(CHOSEN_MOST, needed), high - others * ROW_LEAST));
    }

    /** Room for what stands before rows: wide enough for the parts of a span's sides, whichever row is chosen. */
    private static double names(List<RowCoverage> rows, ScreenView view) {
        double longest = rows.stream()
                .flatMap(row -> RowStrip.sides(row.zoning()).stream())
                .mapToDouble(name -> length(view.words().zone(name), RowStrip.SCREEN_NAMES))
                .max()
                .orElse(0);
        return Math.min(Math.max(NAMES_LEAST, longest + 3 * EDGE), Math.max(NAMES_LEAST, NAMES_SHARE * view.width()));
    }

    /** Room for what stands behind rows: shares, and whatever is said of any of them. */
    private static double figures(List<RowCoverage> rows, ScreenView view) {
        if (view.width() < NARROW) {
            return SHARE + 2 * EDGE;
        }
        return SHARE
                + 3 * EDGE
                + rows.stream()
                        .mapToDouble(row -> length(RowProgress.of(row).stage(view.words()), STAGE_SHARE * LETTERS_MOST))
                        .max()
                        .orElse(0);
    }

    private static double length(String words, double size) {
        return Lettering.length(words, size) * Lettering.SLACK;
    }

    private boolean isChosen(RowCoverage row) {
        return view.chosen().filter(row.row().id()::equals).isPresent();
    }

    @Override
    public List<RowStrip> rows() {
        return strips;
    }

    @Override
    public List<Group> words() {
        List<Group> groups = new ArrayList<>();
        for (RowStrip strip : strips) {
            boolean chosen = isChosen(strip.coverage());
            groups.add(chosen ? strip.words() : Group.of(List.of()));
            groups.add(Group.of(chosen ? title(strip) : beside(strip)));
        }
        groups.add(view.legendAtFoot());
        return groups;
    }

    /** Its id and count before a row, how far it is behind it. */
    private List<Item> beside(RowStrip strip) {
        RowCoverage row = strip.coverage();
        double size = letters;
        double base = strip.corner().y() + strip.height() / 2 + Lettering.CAPITAL * size / 2;
        double behind = strip.corner().x() + strip.width() + EDGE;
        List<Item> items = new ArrayList<>();
        items.add(word(strip.corner().x(), base, row.row().id(), size, names - 8, Anchor.START, Ink.LINE));
        items.add(word(
                strip.corner().x() + names - 2 * EDGE,
                base,
                Integer.toString(row.row().count()),
                STAGE_SHARE * size,
                7,
                Anchor.END,
                Ink.FAINT));
        if (!view.figures()) {
            return items;
        }
        RowProgress progress = RowProgress.of(row);
        items.add(word(behind + SHARE, base, progress.percent(), size, SHARE, Anchor.END, Ink.LINE));
        if (view.width() < NARROW) {
            return items;
        }
        items.add(word(
                behind + SHARE + 1.5,
                base,
                progress.stage(view.words()),
                STAGE_SHARE * size,
                figures - SHARE - 1.5 - EDGE / 2,
                Anchor.START,
                progress.stage() == RowProgress.Stage.NOT_BEGUN ? Ink.FAINT : Ink.LINE));
        return items;
    }

    /** The chosen row's title over it, and a frame round it all. */
    private List<Item> title(RowStrip strip) {
        RowCoverage row = strip.coverage();
        double top = strip.corner().y() - TITLE;
        double base = top + 4;
        String airfoils = view.words().some(row.row(), row.row().count());
        String name = view.words()
                .say("row.title", row.row().name(), row.row().id(), row.row().count(), airfoils);
        RowProgress progress = RowProgress.of(row);
        String figures = view.figures() ? progress.percent() + "  " + progress.stage(view.words()) : "";
        double right = view.width() - 2 * EDGE;
        double room = Lettering.length(figures, LETTERS_MOST) * Lettering.SLACK;
        return List.of(
                Item.of(
                        Polygon.box(EDGE / 2, top + 0.3, view.width() - EDGE, TITLE + strip.height() + BETWEEN - 0.6),
                        Style.lined(Ink.SEEN, 0.5)),
                word(2 * EDGE, base, name, LETTERS_MOST, right - room - 3 * EDGE, Anchor.START, Ink.LINE),
                word(right, base, figures, LETTERS_MOST, room, Anchor.END, Ink.LINE));
    }

    private static Item word(double x, double y, String words, double size, double room, Anchor anchor, Ink ink) {
        return Item.of(Text.upright(new Point(x, y), Lettering.fitted(words, size, room), size, anchor), ink);
    }

    @Override
    public Cell next(Cell from, MapStep step) {
        int at = 0;
        while (!strips.get(at).has(from)) {
            at++;
        }
        RowStrip strip = strips.get(at);
        return switch (step) {
            case RIGHT, NEXT -> strip.beside(from, 1);
            case LEFT, PREVIOUS -> strip.beside(from, -1);
            case UP -> strip.over(from, 1).orElseGet(() -> entered(from, strip, -1));
            case DOWN -> strip.over(from, -1).orElseGet(() -> entered(from, strip, 1));
        };
    }

    /** The cell of the neighbouring row that lies nearest above or below. */
    private Cell entered(Cell from, RowStrip strip, int rowsDown) {
        int next = strips.indexOf(strip) + rowsDown;
        if (next < 0 || next >= strips.size()) {
            return from;
        }
        RowStrip to = strips.get(next);
        double share = (from.airfoil() - 0.5) / strip.coverage().row().count();
        int airfoil = 1 + (int) (share * to.coverage().row().count());
        int band = rowsDown > 0 ? to.plan().bands() - 1 : 0;
        return new Cell(to.coverage().row().id(), airfoil, to.plan().zone(0, band));
    }

    @Override
    public String title() {
        return view.words().say("screen.strips", strips.size());
    }

    @Override
    public String summary() {
        return view.words().say("screen.strips.order");
    }
}
