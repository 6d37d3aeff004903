package everyblade.picture;

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

/** What every sheet has: A3 across, a border, a heading, and the notice under it. */
final class Sheet {

    static final double WIDTH = 420;
    static final double HEIGHT = 297;
    static final double MARGIN = 9;

    private Sheet() {}

    static Group heading(MapFacts facts, String what) {
        List<Item> items = new ArrayList<>();
        items.add(Item.of(Polygon.box(5, 5, WIDTH - 10, HEIGHT - 10), Style.lined(Ink.LINE, 0.5)));
        double size = 5.4;
        double half = (WIDTH - 2 * MARGIN) / 2;
        Point left = new Point(MARGIN, 13);
        items.add(
                Item.of(Text.upright(left, Lettering.fitted(facts.model(), size, half), size, Anchor.START), Ink.LINE));
        items.add(Item.of(
                Text.upright(new Point(WIDTH - MARGIN, 13), Lettering.fitted(what, size, half), size, Anchor.END),
                Ink.LINE));
        facts.notice()
                .ifPresent(notice -> items.add(Item.of(
                        Text.upright(left.plus(0, 5), Lettering.fitted(notice, 2.8, 2 * half), 2.8, Anchor.START),
                        Ink.ALERT)));
        return Group.of(items);
    }
}
