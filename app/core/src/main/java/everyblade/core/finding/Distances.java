package everyblade.core.finding;

import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import java.util.Optional;

/** How far from each other two places of one airfoil can be, where its shape is known. */
@FunctionalInterface
public interface Distances {

    /** No shape is known. */
    Distances UNKNOWN = (row, one, other) -> Optional.empty();

    /** The least and greatest distance from any point of the first zones to any of the others. */
    Optional<Span> between(Row row, ZoneSet one, ZoneSet other);

    /**
     * A distance that is known between two ends.
     *
     * @param least smallest distance
     * @param most greatest distance
     */
    record Span(Length least, Length most) {}
}
