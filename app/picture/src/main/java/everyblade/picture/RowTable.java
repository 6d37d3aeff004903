package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/** What was seen of each row, one line a row. */
final class RowTable {

    private static final double HEADING = 5;
    private static final double LINE_MOST = 4;
    private static final double LEAST_SHARE = 0.75;

    private RowTable() {}

    /** The table, its upper left corner at a place, fitted into the room. */
    static Group at(
            Point corner,
            double width,
            double height,
            String name,
            Coverage coverage,
            List<RowCoverage> rows,
            MapWords words) {
        double line = Math.min(LINE_MOST, (height - HEADING) / rows.size());
        double size = Math.min(2.5, 0.78 * line);
        List<Item> items = new ArrayList<>();
        items.add(Item.of(Text.upright(corner.plus(0, 2.6), name, 2.7, Anchor.START), Ink.LINE));
        items.add(Item.of(Text.upright(corner.plus(width, 2.6), words.say("table.head"), 2.1, Anchor.END), Ink.FAINT));
        items.add(Item.of(
                Strokes.line(corner.plus(0, HEADING - 1.2), corner.plus(width, HEADING - 1.2)),
                Style.lined(Ink.LINE, 0.18)));
        for (int i = 0; i < rows.size(); i++) {
            Point base = corner.plus(0, HEADING + (i + 0.72) * line);
            items.addAll(line(base, width, size, coverage, rows.get(i), words));
        }
        return new Group(name, items);
    }

    private static List<Item> line(
            Point base, double width, double size, Coverage coverage, RowCoverage row, MapWords words) {
        String doubt = Standing.of(coverage.situation(), row.row()).doubt(words);
        String name = (doubt.isEmpty() ? "" : doubt + ": ") + row.row().name();
        String count = row.row().count() + " " + words.some(row.row(), row.row().count());
        List<Item> items = new ArrayList<>();
        items.add(word(base, row.row().id(), size, 0.09 * width, Anchor.START, Ink.LINE));
        items.add(word(base.plus(0.1 * width, 0), name, size, 0.39 * width, Anchor.START, Ink.LINE));
        items.add(word(base.plus(0.5 * width, 0), count, size, 0.16 * width, Anchor.START, Ink.FAINT));
        String figures = new ShareFigures(row.headline(), words).brief();
        items.add(word(base.plus(width, 0), figures, size, 0.33 * width, Anchor.END, Ink.LINE));
        return items;
    }

    /** Smaller before it is cut, down to what can be read on paper. */
    private static Item word(Point at, String told, double most, double room, Anchor anchor, Ink ink) {
        double length = Lettering.length(told, most) * Lettering.SLACK;
        double size = Math.max(LEAST_SHARE * most, length <= room ? most : 0.999 * most * room / length);
        return Item.of(Text.upright(at, Lettering.fitted(told, size, room), size, anchor), ink);
    }
}
