package everyblade.spi;

import java.util.Set;

/**
 * A turning point: where a shaft is turned by hand.
 *
 * @param id unique within its spool
 * @param name what people call it
 * @param ratio shaft turns per tool turn
 * @param directions the ways in which the shaft may be turned here, at least one
 * @param play error of each move, ± degrees of shaft at 95 %, not negative
 * @param backlash by how much the first move after a reversal may fall short, degrees of shaft, not negative
 * @param drift by how much the rotor may roll back after each push, degrees of shaft, not negative
 */
public record Pad(
        String id, String name, Ratio ratio, Set<Direction> directions, double play, double backlash, double drift) {

    public Pad {
        directions = Set.copyOf(directions);
    }

    /** One that turns the shaft itself, either way, without backlash or drift. */
    public static Pad direct(String id, String name, double play) {
        return new Pad(id, name, Ratio.ONE, Set.of(Direction.CW, Direction.CCW), play, 0, 0);
    }
}
