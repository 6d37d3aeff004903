package everyblade.core.finding.measure;

import everyblade.fact.Fact;

/** Why a measured length may be worse than it looks. */
public sealed interface Warning extends Fact {

    /** One of the two lines in a picture. */
    enum Line implements Fact {
        MEASURED,
        KNOWN
    }

    /**
     * A line that is seen aslant.
     *
     * @param degrees between the line of sight and the surface's normal
     * @param times how many times shorter it may look than it is
     * @param grazing whether it is too slanted to be measured
     */
    record Slanted(Line line, double degrees, double times, boolean grazing) implements Warning {}

    /** What is wrong with how the points were chosen. */
    enum Choice implements Warning {
        POINTS_TOO_CLOSE,
        OTHER_DISTANCE
    }
}
