package everyblade.picture.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.picture.scene.Ink;
import everyblade.words.Words;
import java.util.Locale;
import java.util.Optional;

/** The steps of the scale of how long a facet is in sight in one turn, in degrees of the turn. */
enum InSight {
    GLIMPSE(0, Ink.STEP_1, Ink.LINE),
    SHORT(2, Ink.STEP_2, Ink.LINE),
    MEDIUM(5, Ink.STEP_3, Ink.LINE),
    LONG(10, Ink.STEP_4, Ink.PAPER),
    LONGEST(20, Ink.STEP_5, Ink.PAPER);

    private final double from;
    private final Ink fill;
    private final Ink text;

    InSight(double from, Ink fill, Ink text) {
        this.from = from;
        this.fill = fill;
        this.text = text;
    }

    /** The step of so many degrees. */
    static InSight of(double degrees) {
        InSight step = GLIMPSE;
        for (InSight next : values()) {
            step = degrees >= next.from ? next : step;
        }
        return step;
    }

    /** How many degrees these arcs have together. */
    static double degrees(ArcSet arcs) {
        return (double) arcs.measure() / Circle.TICKS_PER_DEGREE;
    }

    /** Degrees as they are written into a facet. */
    static String written(double degrees) {
        return String.format(Locale.ROOT, degrees < 10 ? "%.1f" : "%.0f", degrees);
    }

    /** From how many degrees on. */
    double from() {
        return from;
    }

    /** From and up to how many degrees. */
    String told(Words words) {
        Optional<Double> to =
                ordinal() + 1 < values().length ? Optional.of(values()[ordinal() + 1].from) : Optional.empty();
        return words.say("unrolled.step", from, to);
    }

    /** The ink of a facet. */
    Ink fill() {
        return fill;
    }

    /** The ink of words in it. */
    Ink text() {
        return text;
    }
}
