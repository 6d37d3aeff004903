package everyblade.picture.sight;

import everyblade.core.sight.Hindrance;
import everyblade.picture.Pattern;
import everyblade.picture.scene.Ink;

/** How a facet out of sight looks: a pattern for each reason, so that it can be told without colour. */
enum WhyLook {
    OUTSIDE_CONE(Hindrance.OUTSIDE_CONE, Pattern.EMPTY, Ink.FAINT, Ink.PAPER),
    OUT_OF_RANGE(Hindrance.OUT_OF_RANGE, Pattern.DOTS, Ink.FAST, Ink.FAST_WASH),
    GRAZING(Hindrance.GRAZING, Pattern.HATCH, Ink.MAYBE, Ink.MAYBE_WASH),
    TOO_COARSE(Hindrance.TOO_COARSE, Pattern.CROSS, Ink.STATED, Ink.STATED_WASH),
    HIDDEN(Hindrance.HIDDEN, Pattern.BARS, Ink.NO_ACCESS, Ink.NO_ACCESS_WASH);

    private final Hindrance why;
    private final Pattern pattern;
    private final Ink mark;
    private final Ink wash;

    WhyLook(Hindrance why, Pattern pattern, Ink mark, Ink wash) {
        this.why = why;
        this.pattern = pattern;
        this.mark = mark;
        this.wash = wash;
    }

    static WhyLook of(Hindrance why) {
        return values()[why.ordinal()];
    }

    Pattern pattern() {
        return pattern;
    }

    /** The ink of the pattern. */
    Ink mark() {
        return mark;
    }

    /** The ink under it. */
    Ink wash() {
        return wash;
    }
}
