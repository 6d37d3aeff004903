package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Shape.Patch;
import everyblade.picture.scene.Shape.Polygon;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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

    /** One airfoil in its patch, all its cells in one group. */
    Group whole(int airfoil, Patch patch) {
        List<Item> items = new ArrayList<>();
        for (int zone = 0; zone < plan.places().size(); zone++) {
            items.addAll(cell(airfoil, zone, plan.patch(zone, patch)));
        }
        items.addAll(outline(airfoil, patch));
        return new Group(AirfoilWords.of(coverage, airfoil), items);
    }

    /** One airfoil in its patch, a group for each of its cells. */
    List<Group> cells(int airfoil, Patch patch) {
        List<Group> groups = new ArrayList<>();
        for (int zone = 0; zone < plan.places().size(); zone++) {
            groups.add(
                    new Group(AirfoilWords.of(coverage, airfoil, zone), cell(airfoil, zone, plan.patch(zone, patch))));
        }
        groups.add(Group.of(outline(airfoil, patch)));
        return groups;
    }

    private List<Item> cell(int airfoil, int zone, Patch patch) {
        return cell(
                Look.of(coverage, airfoil, zone),
                patch,
                OptionalDouble.of(coverage.areas(airfoil, zone).seen()),
                Optional.of(new Cell(coverage.row().id(), airfoil, zone)));
    }

    /** A cell, or the sample of one in the legend. */
    static List<Item> cell(Look look, Patch patch, OptionalDouble share, Optional<Cell> cell) {
        boolean solid = look.pattern() == Pattern.SOLID;
        List<Item> items = new ArrayList<>();
        items.add(new Item(
                patch, Style.both(solid ? look.mark() : look.wash(), solid ? look.wash() : Ink.FAINT, HAIR), cell));
        if (!solid) {
            double spacing =
                    Math.max(SPACING_LEAST, Math.min(SPACING_MOST, Math.min(patch.length(), patch.height()) / 1.9));
            Style style = look.pattern().isLined()
                    ? Style.lined(look.mark(), hundredths((look.pattern() == Pattern.CROSS ? 0.14 : 0.2) * spacing))
                    : Style.filled(look.mark());
            look.pattern().on(patch, spacing, share).ifPresent(shape -> items.add(Item.of(shape, style)));
        }
        return items;
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
                items.addAll(damage(plan.patch(zone, patch)));
            }
        }
        return items;
    }

    /** A heavy frame and a lozenge, over whatever state the cell has. */
    static List<Item> damage(Patch patch) {
        double size = Math.min(2.2, Math.min(patch.length(), patch.height()));
        double line = Math.max(0.18, hundredths(0.14 * size));
        Point middle = patch.middle();
        double half = 0.36 * size;
        return List.of(
                Item.of(patch, Style.lined(Ink.LINE, 2 * line)),
                Item.of(patch, Style.lined(Ink.PAPER, hundredths(0.5 * line))),
                Item.of(
                        new Polygon(List.of(
                                middle.plus(0, -half),
                                middle.plus(half, 0),
                                middle.plus(0, half),
                                middle.plus(-half, 0))),
                        Style.both(Ink.PAPER, Ink.LINE, line)));
    }
}
