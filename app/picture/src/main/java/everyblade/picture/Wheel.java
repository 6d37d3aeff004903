package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Rows as rings about one axis, in the order in which the air passes them, the first innermost; clock angles round
 * them, and in the hub what the wheel shows and from where it is seen.
 *
 * @param name what its rows have in common
 * @param polar where the axis is
 * @param radius of the outermost ring, mm
 * @param facing from where it is seen
 * @param words in which it says so
 */
record Wheel(String name, Polar polar, double radius, Facing facing, MapWords words) {

    /** Room outside the outermost ring for clock angles, mm. */
    static final double MARGIN = 8;

    private static final double HUB = 0.25;
    private static final double RING_MOST = 18;

    /** The rings of these rows. */
    List<Group> rings(Coverage coverage, List<RowCoverage> rows) {
        double depth = Math.min(RING_MOST, (1 - HUB) * radius / rows.size());
        double lane = Math.max(Math.min(1.9, 0.5 * depth), Math.min(2.6, 0.3 * depth));
        double hub = radius - rows.size() * depth;
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(name + ", " + words.facing(facing), clock()));
        groups.add(Group.of(hub(hub)));
        for (int i = 0; i < rows.size(); i++) {
            RowCoverage row = rows.get(i);
            Standing standing = Standing.of(coverage.situation(), row.row());
            MapRing ring =
                    new MapRing(row, standing, polar, hub + i * depth + 0.1 * lane, hub + (i + 1) * depth - lane, lane);
            String id = row.row().id();
            List<String> labels = standing.doubt().isEmpty()
                    ? List.of(id, id)
                    : Collections.nCopies(2, id + ": " + standing.doubt(words));
            groups.addAll(ring.airfoils(words));
            List<Item> lettering = new ArrayList<>(ring.labels(labels));
            lettering.addAll(ring.numbers(labels));
            groups.add(new Group(row.row().name() + " (" + id + ")", lettering));
        }
        return groups;
    }

    /** Marks every 10 degrees, told every 30. */
    List<Item> clock() {
        return new ClockScale(polar, radius, words, 2.6).angles();
    }

    private List<Item> hub(double hub) {
        List<Item> items = new ArrayList<>();
        double size = Math.min(3, hub / 7);
        String[] lines = {name, words.from(facing), words.towards(facing)};
        for (int i = 0; i < lines.length; i++) {
            items.add(Item.of(
                    Text.upright(
                            polar.centre().plus(0, (i - 0.6) * 1.5 * size),
                            lines[i],
                            i == 0 ? 1.1 * size : size,
                            Anchor.MIDDLE),
                    i == 0 ? Ink.LINE : Ink.FAINT));
        }
        items.addAll(sense(0.8 * hub));
        return items;
    }

    /** An arrow in the direction in which angles and turning are counted as positive. */
    private List<Item> sense(double at) {
        List<Point> arc = new ArrayList<>();
        for (int degrees = -50; degrees <= 46; degrees += 4) {
            arc.add(polar.at(degrees, at));
        }
        double length = 2.6 / polar.scale(at);
        return List.of(
                Item.of(new Strokes(List.of(arc)), Style.lined(Ink.FAINT, 0.25)),
                Item.of(
                        new Polygon(List.of(polar.at(46 + length, at), polar.at(46, at - 0.9), polar.at(46, at + 0.9))),
                        Style.filled(Ink.FAINT)));
    }
}
