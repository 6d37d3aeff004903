package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Zoning;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;

/**
 * How one airfoil is divided, with the names of its parts, as it lies in a ring whose numbers rise clockwise.
 *
 * @param row of the airfoil
 * @param zoning how it is divided
 */
record AirfoilKey(Row row, Zoning zoning) {

    private static final double MARGIN = 8;

    static AirfoilKey of(RowCoverage coverage) {
        return new AirfoilKey(coverage.row(), coverage.zoning());
    }

    /** How wide it is with columns of a width, mm. */
    double width(double column) {
        return MARGIN + columns() * column;
    }

    int columns() {
        return plan().columns();
    }

    /** Whether another airfoil is divided and lies the same way. */
    boolean isLike(AirfoilKey other) {
        return zoning.equals(other.zoning) && (row.kind() == RowKind.LINER) == (other.row.kind() == RowKind.LINER);
    }

    /**
     * The key, its upper left corner at a place.
     *
     * @param column width of a column, mm
     * @param height of all bands together, mm
     * @param size of the font, mm
     * @param words in which parts are named
     */
    Group at(Point corner, double column, double height, double size, MapWords words) {
        ZonePlan plan = plan();
        double width = column * plan.columns();
        Flat frame = new Flat(corner.plus(MARGIN, 1.6 * size + height));
        Patch whole = new Patch(frame, 0, width, 0, height);
        List<Item> items = new ArrayList<>();
        for (int zone = 0; zone < zoning.size(); zone++) {
            items.add(Item.of(plan.patch(zone, whole), Style.both(Ink.PAPER, Ink.LINE, 0.12)));
        }
        double small = Math.min(size, 0.8 * height / Math.max(1, zoning.spans().size()));
        for (int band = 0; band < zoning.spans().size(); band++) {
            int height0 = row.kind() == RowKind.LINER ? zoning.spans().size() - 1 - band : band;
            double bandHeight = height / zoning.spans().size();
            Point at = frame.at(-1, (height0 + 0.5) * bandHeight - Lettering.CAPITAL * small / 2);
            items.add(Item.of(Text.upright(at, words.zone(zoning.spans().get(band)), small, Anchor.END), Ink.LINE));
        }
        for (int column0 = 0; column0 < plan.columns() && !zoning.chords().isEmpty(); column0++) {
            Point at = frame.at((column0 + 0.5) * column, -1.2 * size);
            items.add(Item.of(
                    Text.upright(at, words.zone(zoning.chords().get(chord(plan, column0))), size, Anchor.MIDDLE),
                    Ink.LINE));
        }
        for (int side = 0; side < zoning.sides().size(); side++) {
            Point at = frame.at((side + 0.5) * width / 2, height + 0.5 * size);
            items.add(Item.of(
                    Text.upright(
                            at, words.say("key.side", words.zone(zoning.sides().get(side))), size, Anchor.MIDDLE),
                    Ink.LINE));
        }
        return new Group(words.say("key.name", words.airfoil(row)), items);
    }

    private ZonePlan plan() {
        return ZonePlan.unwrapped(row, zoning, Direction.CW);
    }

    private int chord(ZonePlan plan, int column) {
        for (int zone = 0; zone < zoning.size(); zone++) {
            if (plan.places().get(zone).column() == column) {
                return zone % zoning.chords().size();
            }
        }
        throw new IllegalStateException("no zone lies in column " + column);
    }
}
