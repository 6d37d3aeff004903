package everyblade.picture.sight;

import everyblade.core.sight.Hindrance;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Facets;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.spi.Station.Tolerance;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * What colours, numbers and patterns of an unrolled airfoil mean, and how much of the surface each reason keeps out of sight.
 *
 * @param vantage from where
 * @param sight of the station
 * @param words in which they are told
 */
record UnrolledLegend(Vantage vantage, StationSight sight, Words words) {

    private static final double SAMPLE = 11;
    private static final double HIGH = 5.4;
    private static final double LINE = 8;

    /** The legend, its upper left corner at a place. */
    List<Group> at(Point corner, double width, boolean inStrips) {
        List<Item> scale = new ArrayList<>();
        double column = width / InSight.values().length;
        SightWords.addLine(scale, corner, words.say("unrolled.scale"), 2.7, width, Ink.LINE);
        for (InSight step : InSight.values()) {
            Point at = corner.plus(step.ordinal() * column, 2);
            scale.addAll(FacetDrawing.inSight(sample(at), Math.max(1, step.from()), true));
            SightWords.addLine(
                    scale, at.plus(SAMPLE + 2, 3.6), step.told(words), SightWords.SIZE, column - SAMPLE - 2, Ink.LINE);
        }
        List<Item> reasons = new ArrayList<>();
        Point second = corner.plus(0, LINE + 5.5);
        SightWords.addLine(reasons, second, words.say("unrolled.reasons"), 2.7, width, Ink.LINE);
        for (Hindrance why : Hindrance.values()) {
            Point at = second.plus(why.ordinal() * column, 2);
            reasons.addAll(FacetDrawing.never(sample(at), why));
            String reason = words.say(why) + ", "
                    + SightWords.badPercent(share(facet -> never(facet).equals(Optional.of(why))));
            SightWords.addLine(
                    reasons, at.plus(SAMPLE + 2, 3.6), reason, SightWords.SIZE, column - SAMPLE - 2, Ink.LINE);
        }
        List<Item> below = new ArrayList<>();
        SightWords.addParagraphs(below, second.plus(0, LINE + 5), width, told(inStrips), Ink.FAINT);
        return List.of(
                new Group(words.say("unrolled.scaleName"), scale),
                new Group(words.say("unrolled.reasonsName"), reasons),
                Group.of(below));
    }

    private static Patch sample(Point corner) {
        return new Patch(new Flat(corner.plus(0, HIGH)), 0, SAMPLE, 0, HIGH);
    }

    private List<String> told(boolean inStrips) {
        List<String> lines = new ArrayList<>();
        lines.add(summary());
        lines.add(words.say("unrolled.counts", vantage.criteriaTold(words), inStrips));
        return lines;
    }

    /** What it says in a sentence or two. */
    String summary() {
        Tolerance within = vantage.station().within();
        boolean exact = within.mm() == 0 && within.deg() == 0;
        return words.say(
                "unrolled.summary",
                words.airfoil(vantage.row()),
                SightWords.percent(share(facet -> never(facet).isEmpty()), words),
                exact ? null : SightWords.percent(share(sight::reaches), words),
                SightWords.number(within.mm()),
                SightWords.number(within.deg()));
    }

    /** What keeps a facet out of sight from the nominal pose all the way round; empty if it is in sight at some time. */
    private Optional<Hindrance> never(int facet) {
        return sight.arcs(0, facet).isEmpty()
                ? Optional.of(sight.why(facet).orElse(Hindrance.HIDDEN))
                : Optional.empty();
    }

    private double share(IntPredicate wanted) {
        Facets facets = vantage.scene().facets();
        double sum = 0;
        for (int facet = 0; facet < facets.count(); facet++) {
            sum += wanted.test(facet) ? facets.area(facet) : 0;
        }
        return sum / facets.area();
    }
}
