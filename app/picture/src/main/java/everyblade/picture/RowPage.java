package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Scene;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;

/** One row for an A4 page with words around it: its ring, under it the row unrolled, then what the signs mean. */
final class RowPage {

    private static final double CELLS_FROM = 48;
    private static final double CELLS_TO = 63;
    private static final double LANE = 3.2;
    private static final double SIGNS = 69;
    private static final double LETTERS = 2.3;
    private static final double RIM = 72;
    private static final double BELOW = 6;
    private static final double STRIP = 40;
    private static final double LIST_MOST = 26;
    private static final double SPARE = 1;

    private RowPage() {}

    static Scene of(Coverage coverage, RowCoverage of, Facing facing) {
        String name = of.row().name();
        double width = PageScenes.WIDTH;
        double outside = RIM + Wheel.MARGIN;
        Polar polar = new Polar(new Point(width / 2, outside), facing.mirrors());
        Standing standing = Standing.of(coverage.situation(), of.row());
        MapRing ring = new MapRing(of, standing, polar, CELLS_FROM, CELLS_TO, LANE);
        Signs signs = Signs.of(coverage, of.row().id());
        Pointers pointers = new Pointers(polar, CELLS_FROM);
        List<View> views = coverage.situation().engine().model().views().stream()
                .filter(view -> view.row().equals(of.row().id()))
                .toList();

        List<Group> groups = new ArrayList<>();
        groups.add(new Group(MapWords.ENGLISH.facing(facing), new Wheel("", polar, RIM, facing).clock()));
        groups.add(hub(polar, facing, standing));
        groups.addAll(ring.cells());
        groups.add(Group.of(ring.numbers(List.of())));
        groups.add(pointers.landmarks(standing));
        groups.addAll(pointers.views(views));
        groups.add(signs.round(polar, standing, CELLS_TO + LANE, SIGNS, LETTERS));
        double y = 2 * outside + BELOW;
        groups.addAll(RowStrip.onPaper(of, new Point(0, y), width, STRIP).groups());
        y += STRIP + BELOW;
        List<String> told = signs.told(ring);
        if (!told.isEmpty()) {
            double height = Math.min(LIST_MOST, WordList.height(told.size()) + SPARE);
            groups.add(WordList.at(new Point(0, y), width, height, "Findings (F) and what to look at again (R)", told));
            y += height;
        }
        return new Scene(width, y, name, name, groups);
    }

    private static Group hub(Polar polar, Facing facing, Standing standing) {
        List<Item> items = new ArrayList<>();
        items.add(Item.of(
                Text.upright(polar.centre().plus(0, 0.8), MapWords.ENGLISH.facing(facing), 2.5, Anchor.MIDDLE),
                Ink.LINE));
        if (!standing.doubt().isEmpty()) {
            items.add(Item.of(
                    Text.upright(polar.centre().plus(0, 5), standing.doubt(MapWords.ENGLISH), 2.5, Anchor.MIDDLE),
                    Ink.ALERT));
        }
        return Group.of(items);
    }
}
