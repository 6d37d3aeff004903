package everyblade.core.finding;

import everyblade.core.entry.Kind;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import java.util.Map;

/**
 * Something found wrong on one airfoil.
 *
 * @param entry that says so
 * @param kind what it is
 * @param row of the airfoil
 * @param airfoil from 1
 * @param zones in which it lies, or may lie where it was said broadly
 * @param sizes as measured
 */
public record Finding(int entry, Kind kind, Row row, int airfoil, ZoneSet zones, Map<Dimension, Measured> sizes) {

    public Finding {
        sizes = Map.copyOf(sizes);
    }
}
