package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Zoning;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A row unrolled: airfoils in the order of their numbers from left to right, every zone on a line of its own, root
 * lowest.
 *
 * @param coverage of the row
 * @param corner upper left corner, names of zones included
 * @param width mm
 * @param height mm
 * @param names room for the names of zones, mm
 * @param letters size of the font, mm
 * @param lineMost greatest height of a line, mm
 * @param least size of the font at which the lines are named one by one; else those of one side together, mm
 * @param said in which words
 */
record RowStrip(
        RowCoverage coverage,
        Point corner,
        double width,
        double height,
        double names,
        double letters,
        double lineMost,
        double least,
        MapWords said)
        implements RowPlace {

    /** Numbers stand under every one of these, the first that leaves room. */
    private static final int[] STEPS = {1, 2, 5, 10, 20, 50};

    private static final double NUMBERS = 1.8;
    private static final double FOOT = 1.5;
    private static final double GAP = 0.06;
    private static final double READABLE = 1.2;
    private static final double SCREEN_READABLE = 2.8;
    private static final double BESIDE = 1.2;
    private static final double SCREEN_LETTERS = 3;
    private static final double NAMES_LARGER = 0.1;
    /** Size of the font of the names of zones on a screen, at most, mm. */
    static final double SCREEN_NAMES = SCREEN_LETTERS + NAMES_LARGER;

    /** What the numbers under a row take on a screen, mm. */
    static final double UNDER = NUMBERS * SCREEN_LETTERS;

    /** In a room on paper. */
    static RowStrip onPaper(RowCoverage coverage, Point corner, double width, double height, MapWords said) {
        return new RowStrip(coverage, corner, width, height, 38, 2.2, 5, READABLE, said);
    }

    /** Zone by zone in a room on a screen, where words are read from farther away; names as wide as is given. */
    static RowStrip opened(
            RowCoverage coverage, Point corner, double width, double height, double names, MapWords said) {
        return new RowStrip(coverage, corner, width, height, names, SCREEN_LETTERS, 12, SCREEN_READABLE, said);
    }

    /** As high as its room, without words of its own. */
    static RowStrip low(RowCoverage coverage, Point corner, double width, double height, double names, MapWords said) {
        return new RowStrip(coverage, corner, width, height, names, 0, height, 0, said);
    }

    /** The cell of the airfoil so many numbers on, after the last the first. */
    Cell beside(Cell cell, int on) {
        return new Cell(
                cell.row(),
                Math.floorMod(cell.airfoil() - 1 + on, coverage.row().count()) + 1,
                cell.zone());
    }

    /** The cell so many lines higher; empty beyond the tip and the root. */
    Optional<Cell> over(Cell cell, int lines) {
        int band = plan().places().get(cell.zone()).band() + lines;
        return band < 0 || band >= plan().bands()
                ? Optional.empty()
                : Optional.of(new Cell(cell.row(), cell.airfoil(), plan().zone(0, band)));
    }

    /**
     * A name beside some lines.
     *
     * @param zone the first of them, which is the uppermost
     * @param lines how many
     */
    private record Name(String words, int zone, int lines) {}

    /** What stands beside the lines: where they are too low for each to be named, all zones of one side together. */
    private List<Name> besides() {
        List<String> zones = coverage.zoning().names();
        int chords = Math.max(1, coverage.zoning().chords().size());
        boolean together = size(1) < least && zones.size() > chords;
        List<Name> names = new ArrayList<>();
        for (int zone = 0; zone < zones.size(); zone += together ? chords : 1) {
            String name = zones.get(zone);
            names.add(
                    together && chords > 1
                            ? new Name(said.zone(side(name)), zone, chords)
                            : new Name(said.zone(name), zone, 1));
        }
        return names;
    }

    private static String side(String zone) {
        return zone.substring(0, zone.lastIndexOf('/'));
    }

    /** Of each zone its name, or where a chord is divided that of its side. */
    static List<String> sides(Zoning zoning) {
        return zoning.names().stream()
                .map(zone -> zoning.chords().size() > 1 && zone.contains("/") ? side(zone) : zone)
                .distinct()
                .toList();
    }

    private double size(int lines) {
        return Math.min(letters + NAMES_LARGER, 0.8 * line() * lines);
    }

    /** All cells, with the names of zones beside and the numbers of airfoils under them. */
    List<Group> groups() {
        AirfoilDrawing drawing = new AirfoilDrawing(coverage, plan());
        List<Group> groups = new ArrayList<>();
        for (int n = 1; n <= coverage.row().count(); n++) {
            groups.add(drawing.whole(n, patch(n), said));
        }
        groups.add(words());
        return groups;
    }

    @Override
    public boolean liesLike(RowPlace other) {
        return other instanceof RowStrip strip
                && coverage.row().equals(strip.coverage.row())
                && corner.equals(strip.corner)
                && width == strip.width
                && height == strip.height
                && names == strip.names
                && letters == strip.letters;
    }

    @Override
    public Patch patch(int airfoil) {
        return new Patch(frame(), (airfoil - 1 + GAP / 2) * pitch(), (airfoil - GAP / 2) * pitch(), 0, high());
    }

    @Override
    public ZonePlan plan() {
        return ZonePlan.stacked(coverage.row(), coverage.zoning());
    }

    @Override
    public Optional<Cell> cellAt(Point place) {
        double across = frame().across(place);
        int airfoil = (int) Math.floor(frame().along(place) / pitch()) + 1;
        if (across < 0
                || across >= high()
                || airfoil < 1
                || airfoil > coverage.row().count()) {
            return Optional.empty();
        }
        Patch patch = patch(airfoil);
        double along = frame().along(place);
        if (along < patch.from() || along >= patch.to()) {
            return Optional.empty();
        }
        ZonePlan plan = plan();
        int band = (int) (across / high() * plan.bands());
        return Optional.of(new Cell(coverage.row().id(), airfoil, plan.zone(0, band)));
    }

    private Flat frame() {
        return new Flat(corner.plus(names, high()));
    }

    private double line() {
        return Math.min(
                lineMost, (height - NUMBERS * letters) / coverage.zoning().size());
    }

    private double high() {
        return line() * coverage.zoning().size();
    }

    /** Where it ends with the numbers under it, mm from above. */
    double foot() {
        return corner.y() + high() + NUMBERS * letters + FOOT;
    }

    private double pitch() {
        return (width - names) / coverage.row().count();
    }

    /** The names of zones beside the airfoils, and their numbers under them. */
    Group words() {
        Flat frame = frame();
        List<Item> words = new ArrayList<>();
        for (Name name : besides()) {
            double size = size(name.lines());
            double middle = (plan().places().get(name.zone()).band() + 1 - name.lines() / 2.0) * line();
            if (size >= READABLE) {
                words.add(beside(frame, middle - Lettering.CAPITAL * size / 2, name.words(), size, Ink.LINE));
            }
        }
        if (besides().get(0).lines() > 1) {
            String first =
                    said.say("strip.first", said.zone(coverage.zoning().chords().get(0)));
            words.add(beside(frame, -0.8 - letters, first, letters, Ink.FAINT));
        }
        words.addAll(numbers(frame));
        return new Group(said.say("group.strip"), words);
    }

    private Item beside(Flat frame, double base, String words, double size, Ink ink) {
        return Item.of(
                Text.upright(frame.at(-BESIDE, base), Lettering.fitted(words, size, names - BESIDE), size, Anchor.END),
                ink);
    }

    private List<Item> numbers(Flat frame) {
        int count = coverage.row().count();
        double room = Lettering.length(" " + count, letters);
        int step = IntStream.of(STEPS)
                .filter(each -> room <= each * pitch())
                .findFirst()
                .orElse(count);
        List<Item> items = new ArrayList<>();
        for (int n = 1; n <= count; n++) {
            if (n == 1 || n % step == 0 && n > step / 2 + 1) {
                items.add(Item.of(
                        Text.upright(
                                frame.at((n - 0.5) * pitch(), -0.8 - letters),
                                Integer.toString(n),
                                letters,
                                Anchor.MIDDLE),
                        n == 1 ? Ink.LINE : Ink.FAINT));
            }
        }
        return items;
    }
}
