package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import java.util.ArrayList;
import java.util.List;

/**
 * All rows of an engine unrolled for the upper half of an A4 page, a line each: id, name and count before it, behind it
 * the share of its cells that is done and what is to be said of it first; then the legend.
 */
public final class PageStrips {

    private static final double WIDTH = PageScenes.WIDTH;
    private static final double NAME = 13;
    private static final double COUNT = 57;
    private static final double STRIP = 59;
    private static final double STRIP_END = 141;
    private static final double DONE = 153;
    private static final double STAGE = 155;
    private static final double BETWEEN = 0.9;
    private static final double LETTERS = 2.7;
    private static final double FINE = 0.8;
    private static final double DAMAGE = 1;

    private PageStrips() {}

    /**
     * The strips.
     *
     * @param each height of a row with the space to the next, mm
     */
    public static Scene of(Coverage coverage, MapWords words, double each) {
        List<Group> groups = new ArrayList<>();
        List<RowCoverage> rows = coverage.rows();
        for (int i = 0; i < rows.size(); i++) {
            RowCoverage row = rows.get(i);
            RowStrip strip = RowStrip.low(row, new Point(STRIP, i * each), STRIP_END - STRIP, each - BETWEEN, 0, words);
            groups.addAll(DrawnAirfoils.of(
                            DrawnAirfoils.NONE,
                            new AirfoilDrawing(row, strip.plan()),
                            Remarked.of(coverage, row.row().id(), Remark.What.STATED),
                            strip::patch,
                            FINE)
                    .groups());
            groups.add(damage(coverage, row, strip));
            groups.add(
                    Group.of(beside(row, words, i * each + (each - BETWEEN) / 2, Math.min(LETTERS, each - BETWEEN))));
        }
        double legend = Legend.linesHeight(WIDTH, words);
        double height = rows.size() * each + legend;
        groups.add(Legend.lines(new Point(0, height), WIDTH, words));
        return new Scene(WIDTH, height, words.say("strips"), Shares.summary(rows, words), groups);
    }

    private static Group damage(Coverage coverage, RowCoverage row, RowStrip strip) {
        Remarked found = Remarked.of(coverage, row.row().id(), Remark.What.FOUND);
        List<Item> items = new ArrayList<>();
        for (int n = 1; n <= row.row().count() && !found.remarks().isEmpty(); n++) {
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                if (found.has(n, zone)) {
                    Cell cell = new Cell(row.row().id(), n, zone);
                    items.add(AirfoilDrawing.damage(strip.patch(cell).middle(), DAMAGE));
                }
            }
        }
        return Group.of(items);
    }

    private static List<Item> beside(RowCoverage row, MapWords words, double middle, double size) {
        RowProgress progress = RowProgress.of(row);
        double base = middle + Lettering.CAPITAL * size / 2;
        return List.of(
                word(0, base, row.row().id(), size, NAME - 1, Anchor.START, Ink.LINE),
                word(NAME, base, row.row().name(), size, COUNT - NAME - 6, Anchor.START, Ink.LINE),
                word(COUNT, base, Integer.toString(row.row().count()), size, 6, Anchor.END, Ink.FAINT),
                word(DONE, base, progress.percent(), size, DONE - STRIP_END - 1, Anchor.END, Ink.LINE),
                word(STAGE, base, progress.stage(words), size, WIDTH - STAGE, Anchor.START, ink(progress.stage())));
    }

    /** Only what is in doubt calls for the eye: a row that waits is nothing wrong. */
    private static Ink ink(RowProgress.Stage stage) {
        return switch (stage) {
            case MAYBE -> Ink.ALERT;
            case COMPLETE -> Ink.LINE;
            case NOT_BEGUN, NO_VIEW, LEFT -> Ink.FAINT;
        };
    }

    private static Item word(double x, double base, String words, double size, double room, Anchor anchor, Ink ink) {
        return Item.of(Text.upright(new Point(x, base), Lettering.fitted(words, size, room), size, anchor), ink);
    }
}
