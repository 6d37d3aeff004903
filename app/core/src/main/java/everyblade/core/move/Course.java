package everyblade.core.move;

import java.util.List;

/**
 * Stays that serve all needs of a walk, one after the other.
 *
 * @param stays in order
 * @param turning how far the shaft turns in all, steps
 * @param bound what every course turns at least, steps; at most {@code turning}
 */
record Course(List<Stay> stays, long turning, long bound) {

    Course {
        stays = List.copyOf(stays);
    }

    /** Whether no course turns less. */
    boolean proved() {
        return bound == turning;
    }
}
