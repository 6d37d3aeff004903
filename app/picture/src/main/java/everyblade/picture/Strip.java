package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Zoning;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Shape.Anchor;
import everyblade.picture.scene.Shape.Patch;
import everyblade.picture.scene.Shape.Text;
import java.util.ArrayList;
import java.util.List;

/**
 * A row unrolled: airfoils in the order of their numbers from left to right, every zone on a line of its own, root
 * lowest.
 *
 * @param coverage of the row
 * @param corner upper left corner, names of zones included
 * @param width mm
 * @param height mm
 */
record Strip(RowCoverage coverage, Point corner, double width, double height) {

    private static final double NAMES = 38;
    private static final double NUMBERS = 4;
    private static final double GAP = 0.06;
    private static final double LINE_MOST = 5;
    private static final double READABLE = 1.2;

    /** All cells, with the names of zones beside and the numbers of airfoils under them. */
    List<Group> groups() {
        Zoning zoning = coverage.zoning();
        ZonePlan plan = ZonePlan.stacked(coverage.row(), zoning);
        double line = Math.min(LINE_MOST, (height - NUMBERS) / zoning.size());
        double high = line * zoning.size();
        double pitch = (width - NAMES) / coverage.row().count();
        Flat frame = new Flat(corner.plus(NAMES, high));
        AirfoilDrawing drawing = new AirfoilDrawing(coverage, plan);
        List<Group> groups = new ArrayList<>();
        for (int n = 1; n <= coverage.row().count(); n++) {
            groups.add(drawing.whole(n, new Patch(frame, (n - 1 + GAP / 2) * pitch, (n - GAP / 2) * pitch, 0, high)));
        }
        List<Item> words = new ArrayList<>();
        double size = Math.min(2.3, 0.8 * line);
        for (int zone = 0; zone < zoning.size() && size >= READABLE; zone++) {
            double middle = (plan.places().get(zone).band() + 0.5) * line;
            words.add(Item.of(
                    Text.upright(
                            frame.at(-1.2, middle - Lettering.CAPITAL * size / 2),
                            Lettering.fitted(zoning.names().get(zone), size, NAMES - 1.2),
                            size,
                            Anchor.END),
                    Ink.LINE));
        }
        words.addAll(numbers(frame, pitch));
        groups.add(new Group("The row unrolled", words));
        return groups;
    }

    private List<Item> numbers(Flat frame, double pitch) {
        int count = coverage.row().count();
        double room = Lettering.length(" " + count, 2.2);
        int step = room <= pitch ? 1 : room <= 2 * pitch ? 2 : 5;
        List<Item> items = new ArrayList<>();
        for (int n = 1; n <= count; n++) {
            if (n == 1 || n % step == 0 && n > step / 2 + 1) {
                items.add(Item.of(
                        Text.upright(frame.at((n - 0.5) * pitch, -3), Integer.toString(n), 2.2, Anchor.MIDDLE),
                        n == 1 ? Ink.LINE : Ink.FAINT));
            }
        }
        return items;
    }
}
