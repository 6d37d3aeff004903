package everyblade.spi;

import java.util.List;
import java.util.Optional;

/**
 * A wall of revolution.
 *
 * @param id unique within the engine model; {@code hub} and {@code casing} bound the axial rows
 * @param spool the spool it turns with, empty if it stands still
 * @param curve its meridional curve from front to rear, at least two points
 */
public record Wall(String id, Optional<String> spool, List<MeridionalPoint> curve) {

    public Wall {
        curve = List.copyOf(curve);
    }

    /** One that stands still. */
    public static Wall still(String id, List<MeridionalPoint> curve) {
        return new Wall(id, Optional.empty(), curve);
    }
}
