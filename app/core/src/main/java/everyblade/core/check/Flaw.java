package everyblade.core.check;

import everyblade.fact.Fact;

/**
 * One thing wrong with a model, told so that its author can mend it.
 *
 * @param kind what sort of thing
 * @param part where in the model
 * @param what what is wrong
 * @param why why that is a problem
 * @param mend what to do
 */
public record Flaw(Kind kind, CheckedPart part, Wrong what, Fact why, Fact mend) {

    /** What sort of thing is wrong. */
    public enum Kind {
        NO_SURFACE(true),
        MISSING_MESH(true),
        BAD_MESH(true),
        MESH_INSIDE_OUT(true),
        MESH_OFF_CLOCK(false),
        UNLIKELY_CHORD(false),
        BLADES_CUT(true),
        VANES_CUT(false),
        RING_MATES_CUT(true),
        ROWS_CUT(true),
        BLADE_CUTS_WALL(true),
        STATION_OUTSIDE_WALLS(true),
        STATION_IN_BLADES(true),
        AIM_WITHIN_TOLERANCE(false),
        TOLERANCE_OF_HALF_A_PITCH(false),
        SEES_NOTHING(false),
        STATION_SEES_NOTHING(false),
        REFERENCE_UNSEEN(false);

        private final boolean refuses;

        Kind(boolean refuses) {
            this.refuses = refuses;
        }

        /** Whether a model with it cannot be right, so that a job should not be done with it. */
        public boolean refuses() {
            return refuses;
        }

        /** In lower case with hyphens; stable from version to version. */
        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
