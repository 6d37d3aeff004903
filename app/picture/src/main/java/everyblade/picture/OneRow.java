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
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;

/**
 * The map of one row, on A3 across: its ring, with what points at it from inside and letter signs outside; beside it
 * what is to be read, under it the row unrolled.
 */
final class OneRow {

    private static final Point CENTRE = new Point(115, 129);
    private static final double CELLS_FROM = 58;
    private static final double CELLS_TO = 83.5;
    private static final double LANE = 3.2;
    private static final double SIGNS = 91.6;
    private static final double LETTERS = 2.3;
    private static final double RIM = 95;

    private static final double LEFT = 228;
    private static final double RIGHT = 322;
    private static final double COLUMN = 89;
    private static final double TOP = 25;
    private static final double LISTS = 100;
    private static final double STRIP = 240;

    private OneRow() {}

    static Scene of(Coverage coverage, MapFacts facts, RowCoverage of, MapStyle style) {
        Row row = of.row();
        MapWords words = facts.words();
        String title = words.say("row.title", row.name(), row.id(), row.count(), words.some(row, row.count()));
        Polar polar = new Polar(CENTRE, style.facing().mirrors());
        Standing standing = Standing.of(coverage.situation(), row);
        MapRing ring = new MapRing(of, standing, polar, CELLS_FROM, CELLS_TO, LANE);
        Signs signs = Signs.of(coverage, row.id());
        List<View> views = coverage.situation().engine().model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .toList();
        Pointers pointers = new Pointers(polar, CELLS_FROM);

        List<Group> groups = new ArrayList<>();
        groups.add(Sheet.heading(facts, title));
        groups.add(new Group(words.facing(style.facing()), new Wheel("", polar, RIM, style.facing(), words).clock()));
        groups.add(hub(style, standing, words));
        groups.addAll(ring.cells(words));
        groups.add(Group.of(ring.numbers(List.of())));
        groups.add(pointers.landmarks(standing, words));
        groups.addAll(pointers.views(views, words));
        groups.add(signs.round(polar, standing, CELLS_TO + LANE + 0.6, SIGNS, LETTERS, words));
        groups.add(TitleBlock.at(new Point(RIGHT, TOP), COLUMN, coverage, List.of(of), facts, style));
        groups.add(Legend.at(new Point(LEFT, TOP), 2, 47, words));
        groups.addAll(key(of, words));
        groups.addAll(lists(of, views, signs, words));
        groups.addAll(RowStrip.onPaper(of, new Point(Sheet.MARGIN, STRIP), Sheet.WIDTH - 2 * Sheet.MARGIN, 50, words)
                .groups());
        return new Scene(
                Sheet.WIDTH,
                Sheet.HEIGHT,
                words.say("sheet.row", title, facts.model(), facts.serial()),
                words.say("sheet.summary", title, words.facing(style.facing()), Shares.summary(List.of(of), words)),
                groups);
    }

    private static Group hub(MapStyle style, Standing standing, MapWords words) {
        List<String> lines = new ArrayList<>(List.of(words.from(style.facing()), words.towards(style.facing())));
        if (!standing.doubt().isEmpty()) {
            lines.add(standing.doubt(words));
        }
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            items.add(Item.of(
                    Text.upright(
                            CENTRE.plus(0, 3.4 * (i - (lines.size() - 1) / 2.0) + 0.8),
                            lines.get(i),
                            2.5,
                            Anchor.MIDDLE),
                    i < 2 ? Ink.LINE : Ink.ALERT));
        }
        return Group.of(items);
    }

    private static List<Group> key(RowCoverage of, MapWords words) {
        AirfoilKey key = AirfoilKey.of(of);
        if (of.zoning().size() == 1) {
            return List.of();
        }
        double column = Math.min(13, (COLUMN - 8) / key.columns());
        return List.of(
                Group.of(List.of(Item.of(
                        Text.upright(new Point(LEFT, 65), words.say("key.heading"), 2.1, Anchor.START), Ink.FAINT))),
                key.at(new Point(LEFT, 68), column, 16, 2.2, words));
    }

    private static List<Group> lists(RowCoverage of, List<View> views, Signs signs, MapWords words) {
        List<Group> groups = new ArrayList<>();
        List<String> landmarks = of.row().landmarks().stream()
                .map(landmark -> words.airfoil(of.row()) + " " + landmark.airfoil() + ": " + landmark.what())
                .toList();
        List<String> ways = views.stream()
                .map(view -> words.say(
                        "list.view",
                        view.id(),
                        view.port(),
                        view.window()
                                .map(window -> words.zone(String.join(", ", window.shows())))
                                .orElse(words.say("list.view.computed"))))
                .toList();
        double y = LISTS;
        if (!landmarks.isEmpty()) {
            groups.add(WordList.at(new Point(LEFT, y), COLUMN, 45, words.say("list.landmarks"), landmarks, words));
            y += Math.min(48, WordList.height(landmarks.size()) + 3);
        }
        groups.add(WordList.at(
                new Point(LEFT, y),
                COLUMN,
                STRIP - 4 - y,
                words.say("list.views"),
                ways.isEmpty() ? List.of(words.say("list.views.none")) : ways,
                words));
        List<String> told = signs.told(of, words);
        groups.add(WordList.at(
                new Point(RIGHT, LISTS),
                COLUMN,
                STRIP - 4 - LISTS,
                words.say("list.signs"),
                told.isEmpty() ? List.of(words.say("list.signs.none")) : told,
                words));
        return groups;
    }
}
