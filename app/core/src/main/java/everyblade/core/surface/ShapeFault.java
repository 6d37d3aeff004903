package everyblade.core.surface;

import everyblade.core.entry.ZonePhrase;
import everyblade.fact.Fact;

/** Why a shape gives no surface. */
public sealed interface ShapeFault extends Fact {

    /** What the author of the model is to do. */
    Mend mend();

    /** One of the walls is not there between which axial airfoils stand. */
    record NoWall(String wall) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.ADD_WALLS;
        }
    }

    /** Radii at x, and what is left free below the casing, mm. */
    record NoRoom(double x, double casing, double hub, double clearance) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.CORRECT_WALLS;
        }
    }

    /** A curve whose points are all in one place. */
    record NoLength(CurveName curve) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.PART_POINTS;
        }
    }

    /** Points without a place. */
    record Nowhere() implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.LOOK_FOR_FLAT;
        }
    }

    /** A face without area, by its number. */
    record Flat(int face) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.LOOK_FOR_DOUBLE;
        }
    }

    record DamagedFile(String file, FileDamage damage) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.SAVE_AGAIN;
        }
    }

    record MissingFile(String file) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.PUT_BESIDE;
        }
    }

    /** A file none of whose facets lies in a zone. */
    record EmptyZone(String file, ZonePhrase zone) implements ShapeFault {
        @Override
        public Mend mend() {
            return Mend.FINER;
        }
    }

    /** What is to be done about it. */
    enum Mend implements Fact {
        ADD_WALLS,
        CORRECT_WALLS,
        PART_POINTS,
        LOOK_FOR_FLAT,
        LOOK_FOR_DOUBLE,
        SAVE_AGAIN,
        PUT_BESIDE,
        FINER
    }
}
