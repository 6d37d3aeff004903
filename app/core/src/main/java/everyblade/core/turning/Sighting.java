package everyblade.core.turning;

import everyblade.core.angle.Turn;

/**
 * Something fixed to the track was seen at a known place: an airfoil of a row at the reference, or the shaft's reading.
 *
 * @param entry who said so
 * @param stop index of the stop at which it was seen
 * @param frame what it belongs to: the row's id, or the name of a reading
 * @param origin clock angle at which the frame's zero (airfoil 1, or reading zero) then stands, modulo a turn
 * @param airfoil the airfoil that was seen, 0 for a reading
 * @param plusMinus how good the sighting is, ± degrees
 * @param rock by how much the frame's airfoils may lean either way, degrees
 * @param pitch degrees from one airfoil to the next; a turn for a reading
 */
record Sighting(
        int entry, int stop, String frame, Turn origin, int airfoil, double plusMinus, double rock, double pitch) {

    /** The shaft reads this angle. */
    static Sighting ofReading(int entry, int stop, String frame, Turn angle, double plusMinus) {
        return new Sighting(entry, stop, frame, angle, 0, plusMinus, 0, 360);
    }

    /** Whether it is the shaft's reading, not an airfoil. */
    boolean reads() {
        return airfoil == 0;
    }

    Sighting at(int newStop) {
        return new Sighting(entry, newStop, frame, origin, airfoil, plusMinus, rock, pitch);
    }

    Sighting in(String newFrame) {
        return new Sighting(entry, stop, newFrame, origin, airfoil, plusMinus, rock, pitch);
    }
}
