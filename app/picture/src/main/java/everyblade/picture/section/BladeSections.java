package everyblade.picture.section;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Three neighbours of a row cut near the root, in the middle and near the tip, unrolled to one scale. */
final class BladeSections {

    private static final double[] SHARES = {0.02, 0.5, 0.98};
    private static final String[] NAMES = {"section.nearRoot", "section.middle", "section.nearTip"};
    private static final double LETTERS = 2.3;
    private static final double STEP = 3.2;
    private static final int FACTS = 6;

    private BladeSections() {}

    static List<Group> of(RowSurface surface, Channel channel, Box box, Words words) {
        List<SpanCut> cuts = new ArrayList<>();
        for (double share : SHARES) {
            SpanCut.of(surface, channel, share).ifPresent(cuts::add);
        }
        double width = box.width() / SHARES.length;
        double scale = cuts.stream()
                .mapToDouble(cut -> scale(cut, width - 4, box.height() - (FACTS + 1) * STEP))
                .min()
                .orElse(1);
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            Box column = new Box(box.corner().plus(i * width, 0), width, box.height());
            String name = words.say(cuts.size() == NAMES.length ? NAMES[i] : "section.anyCut");
            groups.add(column(cuts.get(i), name, scale, column, words));
        }
        return groups;
    }

    private static double scale(SpanCut cut, double width, double height) {
        double[] extent = extent(cut);
        return Math.min(width / (extent[1] - extent[0]), height / (extent[3] - extent[2] + 2 * cut.pitch()));
    }

    /** Least and greatest x, least and greatest place along the circle. */
    private static double[] extent(SpanCut cut) {
        double[] extent = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (double[] line : cut.lines()) {
            for (int i = 0; i < 4; i++) {
                int low = i % 2 * 2;
                extent[low] = Math.min(extent[low], line[i]);
                extent[low + 1] = Math.max(extent[low + 1], line[i]);
            }
        }
        return extent;
    }

    private static Group column(SpanCut cut, String name, double scale, Box box, Words words) {
        double[] extent = extent(cut);
        Point middle = box.corner().plus(box.width() / 2, (box.height() - FACTS * STEP) / 2);
        Point origin = middle.plus(-scale * (extent[0] + extent[1]) / 2, scale * (extent[2] + extent[3]) / 2);
        List<Item> items = new ArrayList<>();
        for (int k = -1; k <= 1; k++) {
            List<List<Point>> lines = new ArrayList<>();
            for (double[] line : cut.lines()) {
                lines.add(List.of(
                        origin.plus(scale * line[0], -scale * (line[1] + k * cut.pitch())),
                        origin.plus(scale * line[2], -scale * (line[3] + k * cut.pitch()))));
            }
            items.add(Item.of(new Strokes(lines), Style.lined(k == 0 ? Ink.LINE : Ink.FAINT, k == 0 ? 0.35 : 0.2)));
        }
        double y = box.bottom() - FACTS * STEP + STEP;
        for (String fact : facts(cut, name, words)) {
            items.add(Item.of(Text.upright(new Point(box.corner().x(), y), fact, LETTERS, Anchor.START), Ink.LINE));
            y += STEP;
        }
        return new Group(words.say("section.atRadius", name, number(cut.radius(), 1)), items);
    }

    private static List<String> facts(SpanCut cut, String name, Words words) {
        return List.of(
                name,
                words.say("section.radius", number(cut.radius(), 1)),
                words.say("section.chord", number(cut.chordLength(), 1)),
                words.say("section.stagger", number(cut.stagger(), 1)),
                words.say("section.pitch", number(cut.pitch(), 1)),
                words.say("section.solidity", number(cut.solidity(), 2)));
    }

    private static String number(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value).replace('-', '−');
    }
}
