package everyblade.picture;

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

/** Lines of words under a heading. */
final class WordList {

    private static final double SIZE = 2.4;
    private static final double STEP = 3.7;
    private static final double HEADING = 7.4;

    private WordList() {}

    /** How high a list is, mm. */
    static double height(int lines) {
        return HEADING + lines * STEP;
    }

    /** The list, its upper left corner at a place; what finds no room is counted in its last line. */
    static Group at(Point corner, double width, double height, String heading, List<String> lines, MapWords words) {
        int room = Math.max(1, (int) ((height - HEADING) / STEP));
        List<String> shown = new ArrayList<>(lines);
        if (lines.size() > room) {
            shown = new ArrayList<>(lines.subList(0, room - 1));
            shown.add(words.say("list.more", lines.size() - shown.size()));
        }
        List<Item> items = new ArrayList<>();
        items.add(Item.of(Text.upright(corner.plus(0, 2.6), heading, 2.7, Anchor.START), Ink.LINE));
        items.add(Item.of(Strokes.line(corner.plus(0, 3.8), corner.plus(width, 3.8)), Style.lined(Ink.LINE, 0.18)));
        for (int i = 0; i < shown.size(); i++) {
            items.add(Item.of(
                    Text.upright(
                            corner.plus(0, HEADING + i * STEP),
                            Lettering.fitted(shown.get(i), SIZE, width),
                            SIZE,
                            Anchor.START),
                    Ink.LINE));
        }
        return new Group(heading, items);
    }
}
