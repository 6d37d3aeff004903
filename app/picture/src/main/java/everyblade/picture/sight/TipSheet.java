package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Pose;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Style;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What is written round the field of a scope tip: which view it is, where airfoil 1 stands, what the tones mean, and how the
 * picture is to be read.
 *
 * @param vantage from where
 * @param first clock angle at which airfoil 1 stands
 * @param tones that occur
 * @param side of the field, mm
 * @param words in which it is told
 * @param inSight of each airfoil the share of its surface that is in sight now
 */
record TipSheet(Vantage vantage, Turn first, Set<Tone> tones, double side, Words words, double[] inSight) {

    private static final double MARGIN = 6;
    private static final double COLUMN = 76;
    private static final double LEAST_FIELD = 60;
    private static final double NOTICE = 2.2;
    private static final double ENTRY = 6.4;
    private static final double SAMPLE_WIDTH = 9;
    private static final double SAMPLE_HEIGHT = 4.6;

    /** Upper left corner of the field. */
    Point corner() {
        return new Point(
                MARGIN,
                21
                        + vantage.engine()
                                .model()
                                .notice()
                                .map(notice -> SightWords.STEP)
                                .orElse(0.0));
    }

    private List<String> notice() {
        return SightWords.notice(vantage, NOTICE, width() - 2 * MARGIN);
    }

    private double width() {
        return 3 * MARGIN + Math.max(LEAST_FIELD, side) + COLUMN;
    }

    private Point legend() {
        return new Point(2 * MARGIN + Math.max(LEAST_FIELD, side), corner().y());
    }

    /** Samples of the tones, to be drawn on the sheet. */
    List<ToneSample> samples() {
        List<Tone> shown = List.copyOf(tones);
        return IntStream.range(0, shown.size())
                .mapToObj(
                        i -> new ToneSample(shown.get(i), legend().plus(0, 5 + i * ENTRY), SAMPLE_WIDTH, SAMPLE_HEIGHT))
                .toList();
    }

    Scene scene() {
        List<Group> groups = new ArrayList<>();
        String title = words.say("tipSheet.title", vantage.told(words));
        String moment = words.say(
                "tipSheet.moment",
                vantage.row().kind(),
                SightWords.degrees(first.wrapped()),
                SightWords.degrees(vantage.pose().clock().wrapped()));
        List<Item> heading = new ArrayList<>();
        SightWords.addLine(heading, new Point(MARGIN, 8), title, 3.6, width() - 2 * MARGIN, Ink.LINE);
        SightWords.addLine(heading, new Point(MARGIN, 13), moment, 2.8, width() - 2 * MARGIN, Ink.LINE);
        for (int line = 0; line < notice().size(); line++) {
            Point at = new Point(MARGIN, 13 + (line + 1) * SightWords.STEP);
            SightWords.addLine(heading, at, notice().get(line), NOTICE, width() - 2 * MARGIN, Ink.ALERT);
        }
        heading.addAll(top());
        groups.add(Group.of(heading));
        groups.add(tonesTold());
        List<Item> right = new ArrayList<>();
        double down = SightWords.addParagraphs(
                right, legend().plus(0, 10 + tones.size() * ENTRY), COLUMN, inSightTold(), Ink.LINE);
        groups.add(Group.of(right));
        double below = Math.max(corner().y() + side, down) + 5;
        List<Item> foot = new ArrayList<>();
        double end =
                SightWords.addParagraphs(foot, new Point(MARGIN, below), width() - 2 * MARGIN, reading(), Ink.FAINT);
        groups.add(Group.of(foot));
        return new Scene(width(), Math.ceil(end), title, moment + ". " + String.join(", ", inSightTold()), groups);
    }

    /** Marks the top of the picture. */
    private List<Item> top() {
        Point at = corner().plus(side / 2, -0.6);
        return List.of(
                Item.of(
                        new Polygon(List.of(at, at.plus(-1.1, 1.6 - 3.4), at.plus(1.1, 1.6 - 3.4))),
                        Style.filled(Ink.LINE)),
                Item.of(Text.upright(at.plus(2.2, 0), words.say("tipSheet.top"), 2, Anchor.START), Ink.FAINT));
    }

    private Group tonesTold() {
        List<Item> items = new ArrayList<>();
        items.add(
                Item.of(Text.upright(legend().plus(0, 2.6), words.say("tipSheet.tones"), 2.7, Anchor.START), Ink.LINE));
        for (ToneSample sample : samples()) {
            items.add(Item.of(
                    Polygon.box(sample.corner().x(), sample.corner().y(), sample.width(), sample.height()),
                    Style.lined(Ink.LINE, 0.3)));
            Point beside = sample.corner().plus(SAMPLE_WIDTH + 2, 3.2);
            SightWords.addLine(
                    items, beside, words.say(sample.tone()), SightWords.SIZE, COLUMN - SAMPLE_WIDTH - 2, Ink.LINE);
        }
        return new Group(words.say("tipSheet.tones"), items);
    }

    private List<String> inSightTold() {
        String word = words.airfoil(vantage.row());
        List<String> lines = new ArrayList<>();
        IntStream.range(0, inSight.length)
                .filter(i -> inSight[i] > 0)
                .forEach(i ->
                        lines.add(words.say("tipSheet.share", word, i + 1, SightWords.percent(inSight[i], words))));
        lines.add(0, words.say("tipSheet.inSight", lines.isEmpty(), word));
        return lines;
    }

    private List<String> reading() {
        Pose pose = vantage.pose();
        Row row = vantage.row();
        List<String> lines = new ArrayList<>();
        lines.add(words.say(
                "tipSheet.numbers",
                row.numbering(),
                row.count(),
                words.airfoil(row),
                String.format(Locale.ROOT, "%.1f", pose.x()),
                String.format(Locale.ROOT, "%.1f", pose.r())));
        lines.add(words.say("tipSheet.places", SightWords.degrees(pose.cone()), pose.pixels()));
        lines.add(words.say("tipSheet.counts", vantage.criteriaTold(words)));
        String somewhere = vantage.setting().between(pose).stream()
                .filter(between -> !between.sure() && !between.rings().isEmpty())
                .map(between -> between.row().name())
                .collect(Collectors.joining(", "));
        if (!somewhere.isEmpty()) {
            lines.add(words.say("tipSheet.somewhere", somewhere));
        }
        return lines;
    }
}
