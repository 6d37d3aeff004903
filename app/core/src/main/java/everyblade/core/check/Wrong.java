package everyblade.core.check;

import everyblade.fact.Fact;
import java.math.BigDecimal;

/** What is wrong with a model, by the ids of its parts. */
public sealed interface Wrong extends Fact {

    record MissingMesh(String file, String row) implements Wrong {}

    record NoSurface(String row) implements Wrong {}

    record InsideOut(String row) implements Wrong {}

    record OffClock(String row) implements Wrong {}

    /** Chords that are so many times its pitch, to two digits. */
    record UnlikelyChord(String row, BigDecimal times) implements Wrong {}

    record NeighboursCut(String row) implements Wrong {}

    /** They do at a position of movable vanes. */
    record NeighboursCutAt(String row, String position) implements Wrong {}

    record RingMatesCut(String row, String other) implements Wrong {}

    record RowsCut(String row, String other) implements Wrong {}

    record CutsWall(String row, String wall) implements Wrong {}

    record StationInBlades(String station, String view, String row) implements Wrong {}

    record StationAtWall(String station, String view) implements Wrong {}

    record StationOutsideWalls(String station, String view) implements Wrong {}

    /** A stated aim, and by how much a station's tolerance moves the middle of the picture; degrees. */
    record AimWithinTolerance(String view, double aim, String station, double moved) implements Wrong {}

    /** By how much a station's tolerance moves the middle of the picture, beside half a pitch of the row; degrees. */
    record HalfAPitch(String station, String view, double moved, String row, double halfPitch) implements Wrong {}

    record SeesNothing(String view, String row) implements Wrong {}

    record StationSeesNothing(String station, String view, String row) implements Wrong {}

    /** @param reference degrees */
    record ReferenceUnseen(String view, double reference) implements Wrong {}

    /** Why that is a problem. */
    enum Because implements Fact {
        NOTHING_KNOWN,
        METAL_SEEN,
        CLOCK_OFF,
        SLENDER,
        LONG,
        NO_WAY_BETWEEN,
        TOUCH_BEFORE,
        STANDS_IN_SWEPT,
        BEHIND_WALL,
        TIP_DOES_NOT_FIT,
        WALL_TOO_NEAR,
        IN_OPENING,
        IN_METAL,
        FARTHER_THAN_COUNTED,
        NEIGHBOUR_TAKEN,
        NOTHING_PROPER,
        NOT_LOOKED_AT
    }

    /** What to do. */
    enum Mend implements Fact {
        PUT_MESH_BESIDE,
        TURN_FACES,
        TURN_MESH,
        CHECK_UNITS,
        CHECK_COUNT,
        CHECK_STAGGER,
        CHECK_RING,
        CHECK_CHORD,
        END_AT_WALL,
        MOVE_OR_THINNER,
        PUT_WITHIN_WALLS,
        MOVE_STATION,
        DELETE_AIM,
        LOOK_SQUARELY,
        CORRECT_STATIONS,
        CORRECT_STATION,
        CORRECT_REFERENCE
    }
}
