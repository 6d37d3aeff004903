package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws the cells of a row's airfoils: each zone once, in its look, damage marked on top.
 *
 * @param coverage of the row
 * @param plan where the zones lie in an airfoil
 */
record AirfoilDrawing(RowCoverage coverage, ZonePlan plan) {

    private static final double HAIR = 0.06;
    private static final double SPACING_LEAST = 0.55;
    private static final double SPACING_MOST = 1.5;

    /** How much narrower than it is high, or the other way, a cell may be for a pattern. */
    private static final double NARROW = 0.6;

    private static final double TINY = 1.5;
    /** Under a cell that is not seen, but some of whose surface is. */
    private static final Ink BEGUN = Ink.STEP_2;

    private static final double DAMAGE_SHARE = 0.45;
    private static final double DAMAGE_MOST = 1.6;

    /** One airfoil in its patch, all its cells in one group. */
    Group whole(int airfoil, Patch patch, MapWords words) {
        List<Item> items = new ArrayList<>();
        for (int zone = 0; zone < plan.places().size(); zone++) {
            items.addAll(cell(airfoil, zone, plan.patch(zone, patch)));
        }
        items.addAll(outline(airfoil, patch));
        return new Group(new AirfoilWords(coverage, words).of(airfoil), items);
    }

    /** One airfoil in its patch, a group for each of its cells. */
    List<Group> cells(int airfoil, Patch patch, MapWords words) {
        List<Group> groups = new ArrayList<>();
        for (int zone = 0; zone < plan.places().size(); zone++) {
            groups.add(new Group(
                    new AirfoilWords(coverage, words).of(airfoil, zone), cell(airfoil, zone, plan.patch(zone, patch))));
        }
        groups.add(Group.of(outline(airfoil, patch)));
        return groups;
    }

    /**
     * One airfoil in its patch, all its cells in one group without words.
     *
     * @param looks of the airfoil
     * @param fine mm below which a cell is too small for a pattern
     */
    Group silent(int airfoil, PictureLooks looks, Patch patch, double fine) {
        double length = patch.length() / plan.columns();
        double height = patch.height() / plan.bands();
        boolean plain = Math.sqrt(length * height) < fine || Math.min(length, height) < NARROW * fine;
        List<Item> items = new ArrayList<>();
        for (int zone = 0; zone < plan.places().size(); zone++) {
            Patch place = plan.patch(zone, patch);
            Optional<Cell> cell = Optional.of(cellOf(airfoil, zone));
            Look look = looks.looks().get(zone);
            boolean begun = looks.begun().get(zone);
            items.addAll(plain ? plain(look, place, cell, begun) : framed(look, place, cell, begun));
        }
        if (!plain) {
            items.add(Item.of(patch, Style.lined(Ink.LINE, 0.12)));
            return Group.of(items);
        }
        // Outlines of such small airfoils would be most of what is seen: a line under them stands for all.
        boolean tiny = Math.min(patch.length(), patch.height()) < TINY * fine;
        items.add(Item.of(
                tiny ? patch.part(0, 1, -0.05, 0.05) : patch,
                tiny ? Style.filled(Ink.FAINT) : Style.lined(Ink.FAINT, 0.1)));
        return Group.of(items);
    }

    private List<Item> cell(int airfoil, int zone, Patch patch) {
        return cell(Look.of(coverage, airfoil, zone), patch, Optional.of(cellOf(airfoil, zone)));
    }

    private Cell cellOf(int airfoil, int zone) {
        return new Cell(coverage.row().id(), airfoil, zone);
    }

    /** A cell too small for a pattern: its wash, and of its mark as much as a pattern would have about. */
    private static List<Item> plain(Look look, Patch patch, Optional<Cell> cell, boolean begun) {
        Ink ground = begun ? BEGUN : ground(look);
        // There are thousands of them, and the paper is there already.
        Item whole = new Item(patch, ground == Ink.PAPER ? Style.NONE : Style.filled(ground), cell);
        return switch (look.pattern()) {
            case SOLID, EMPTY -> List.of(whole);
            case FILLED_UP -> List.of(whole, Item.of(patch.part(0, 1, 0, Pattern.MOST), Style.filled(look.mark())));
            default -> List.of(whole, Item.of(patch.part(0, 1, 0.35, 0.65), Style.filled(look.mark())));
        };
    }

    /** A cell, or the sample of one in the legend. */
    static List<Item> cell(Look look, Patch patch, Optional<Cell> cell) {
        List<Item> items = new ArrayList<>();
        items.add(new Item(patch, Style.both(ground(look), hair(look), HAIR), cell));
        pattern(look, patch).ifPresent(items::add);
        return items;
    }

    /** A cell whose outline is filled, not drawn: a fraction of the work where there are thousands. */
    private static List<Item> framed(Look look, Patch patch, Optional<Cell> cell, boolean begun) {
        List<Item> items = new ArrayList<>();
        items.add(new Item(patch, Style.filled(hair(look)), cell));
        items.add(Item.of(patch.within(HAIR / 2), Style.filled(begun ? BEGUN : ground(look))));
        pattern(look, patch).ifPresent(items::add);
        return items;
    }

    /** The sample of a begun cell in a legend. */
    static Item begun(Patch patch) {
        return Item.of(patch, Style.both(BEGUN, Ink.FAINT, HAIR));
    }

    private static Ink ground(Look look) {
        return look.pattern() == Pattern.SOLID ? look.mark() : look.wash();
    }

    private static Ink hair(Look look) {
        return look.pattern() == Pattern.SOLID ? look.wash() : Ink.FAINT;
    }

    /** What lies on the ground of a cell; nothing on that of a solid one. */
    private static Optional<Item> pattern(Look look, Patch patch) {
        if (look.pattern() == Pattern.SOLID) {
            return Optional.empty();
        }
        double spacing =
                Math.max(SPACING_LEAST, Math.min(SPACING_MOST, Math.min(patch.length(), patch.height()) / 1.9));
        Style style = look.pattern().isLined()
                ? Style.lined(look.mark(), hundredths((look.pattern() == Pattern.CROSS ? 0.14 : 0.2) * spacing))
                : Style.filled(look.mark());
        return look.pattern().on(patch, spacing).map(shape -> Item.of(shape, style));
    }

    /** Few different widths, for each is a style of its own. */
    private static double hundredths(double width) {
        return Math.round(width * 100) / 100.0;
    }

    private List<Item> outline(int airfoil, Patch patch) {
        List<Item> items = new ArrayList<>();
        items.add(Item.of(patch, Style.lined(Ink.LINE, 0.12)));
        for (int zone = 0; zone < plan.places().size(); zone++) {
            if (coverage.remarked(Remark.What.FOUND, airfoil, zone)) {
                Patch place = plan.patch(zone, patch);
                items.add(damage(place.middle(), DAMAGE_SHARE * Math.min(place.length(), place.height())));
            }
        }
        return items;
    }

    /** One sign over whatever state the cell has: a lozenge so far from its middle to its corners, mm. */
    static Item damage(Point middle, double half) {
        double far = Math.min(DAMAGE_MOST, half);
        return Item.of(
                new Polygon(
                        List.of(middle.plus(0, -far), middle.plus(far, 0), middle.plus(0, far), middle.plus(-far, 0))),
                Style.both(Ink.ALERT, Ink.PAPER, Math.max(0.1, hundredths(0.2 * far))));
    }
}
