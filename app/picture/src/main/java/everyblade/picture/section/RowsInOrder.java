package everyblade.picture.section;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The rows of a model that says nothing of where they lie: boxes in order, front to rear. */
final class RowsInOrder {

    private static final double LETTERS = 2.5;
    private static final double WIDEST = 30;

    private RowsInOrder() {}

    static Group of(EngineModel model, Box box, Words words) {
        List<Item> items = new ArrayList<>();
        String told = words.say("section.inOrder");
        items.add(Item.of(Text.upright(box.corner().plus(0, 6), told, LETTERS, Anchor.START), Ink.FAINT));
        int count = model.rows().size();
        double width = Math.min(WIDEST, box.width() / count);
        for (int i = 0; i < count; i++) {
            Row row = model.rows().get(i);
            double x = box.corner().x() + i * width;
            double y = box.corner().y() + 14;
            items.add(
                    Item.of(Polygon.box(x + 0.15 * width, y, 0.7 * width, 0.5 * box.height()), SideSection.style(row)));
            String label = Lettering.fitted(row.id() + " · " + row.count(), LETTERS, 0.4 * box.height());
            items.add(Item.of(
                    new Text(
                            new everyblade.picture.scene.Point(x + width / 2 - 0.8, y + 0.5 * box.height() + 2),
                            label,
                            LETTERS,
                            Anchor.START,
                            90),
                    Ink.LINE));
        }
        return new Group(words.say("section.rowsInOrder"), items);
    }
}
