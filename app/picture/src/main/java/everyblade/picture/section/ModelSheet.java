package everyblade.picture.section;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Style;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sheet of a model, A4 across: its side section above, one row from aft and that row's blade sections below. Made
 * without any drawing library; the same model gives the same scene.
 */
public final class ModelSheet {

    private static final double WIDTH = 297;
    private static final double HEIGHT = 210;
    private static final double MARGIN = 8;
    private static final double SIZE = 2.5;

    private ModelSheet() {}

    /**
     * The scene of a model.
     *
     * @param row the row to show from aft and cut; of a model without it, and if none is named, the first with a shape,
     *     else the first
     * @param files the contents of its mesh files, by name; what is not there is not drawn
     * @param words in which it is told
     */
    public static Scene of(EngineModel model, Optional<String> row, Map<String, byte[]> files, Words words) {
        Drawn drawn = Drawn.of(model, files, words);
        Row shown = row.flatMap(model::row).orElseGet(() -> first(drawn));
        Box sheet = new Box(new Point(MARGIN, MARGIN), WIDTH - 2 * MARGIN, HEIGHT - 2 * MARGIN);
        List<Group> groups = new ArrayList<>();
        groups.add(head(model, sheet));
        Box above = new Box(sheet.corner().plus(0, 14), sheet.width(), 84);
        groups.addAll(SideSection.of(drawn, above).orElseGet(() -> List.of(RowsInOrder.of(model, above, words))));
        Box left = new Box(sheet.corner().plus(0, 104), 90, 84);
        groups.add(caption(left, words.say("section.fromAft", SideSection.told(shown, words))));
        groups.addAll(FrontView.of(drawn, shown, left));
        Box right = new Box(left.corner().plus(100, 0), sheet.width() - 100, 84);
        groups.addAll(sections(drawn, shown, right));
        groups.add(legend(sheet, words));
        String title = model.name() + " (" + model.id() + ")";
        return new Scene(WIDTH, HEIGHT, title, summary(drawn, shown), groups);
    }

    private static Row first(Drawn drawn) {
        return drawn.surfaces().isEmpty()
                ? drawn.model().rows().get(0)
                : drawn.surfaces().get(0).row();
    }

    private static List<Group> sections(Drawn drawn, Row row, Box box) {
        Optional<RowSurface> surface = drawn.surface(row);
        if (surface.isEmpty() || row.kind() == RowKind.LINER) {
            return List.of(caption(box, drawn.words().say("section.noShape", surface.isPresent())));
        }
        List<Group> groups = new ArrayList<>();
        groups.add(caption(box, drawn.words().say("section.cut")));
        Channel channel = Channel.of(drawn.model(), surface.get());
        groups.addAll(BladeSections.of(surface.get(), channel, box.inside(0, 4, 0, 0), drawn.words()));
        return groups;
    }

    private static Group head(EngineModel model, Box sheet) {
        List<Item> items = new ArrayList<>();
        String title = Lettering.fitted(model.name() + " (" + model.id() + ")", 4.5, sheet.width());
        items.add(Item.of(Text.upright(sheet.corner().plus(0, 4.5), title, 4.5, Anchor.START), Ink.LINE));
        model.notice().ifPresent(notice -> {
            String words = Lettering.fitted(notice, SIZE, sheet.width());
            items.add(Item.of(Text.upright(sheet.corner().plus(0, 9), words, SIZE, Anchor.START), Ink.ALERT));
        });
        return Group.of(items);
    }

    private static Group caption(Box box, String words) {
        String fitted = Lettering.fitted(words, SIZE, box.width());
        return Group.of(List.of(
                Item.of(Text.upright(box.corner().plus(0, -0.5), fitted, SIZE, Anchor.START), Ink.LINE)));
    }

    private static Group legend(Box sheet, Words words) {
        double y = sheet.bottom();
        List<Item> items = new ArrayList<>();
        double x = sheet.corner().x();
        x = sample(items, x, y, Style.both(Ink.PART_WASH, Ink.LINE, 0.15), words.say("section.turns"));
        x = sample(items, x, y, Style.both(Ink.PAPER, Ink.LINE, 0.15), words.say("section.still"));
        x = sample(items, x, y, Style.filled(Ink.ALERT), words.say("section.ports"));
        sample(items, x, y, Style.filled(Ink.SEEN), words.say("section.stations"));
        return new Group(words.say("section.legend"), items);
    }

    private static double sample(List<Item> items, double x, double y, Style style, String words) {
        items.add(Item.of(everyblade.picture.scene.DrawnShape.Polygon.box(x, y - 2, 3.5, 2), style));
        items.add(Item.of(Text.upright(new Point(x + 4.5, y), words, SIZE, Anchor.START), Ink.FAINT));
        return x + 10 + Lettering.SLACK * Lettering.length(words, SIZE);
    }

    private static String summary(Drawn drawn, Row shown) {
        EngineModel model = drawn.model();
        Words words = drawn.words();
        return words.say(
                "section.summary",
                model.rows().size(),
                drawn.surfaces().size(),
                model.ports().size(),
                model.views().size(),
                SideSection.told(shown, words));
    }
}
