package everyblade.core.entry;

import everyblade.fact.Fact;
import java.util.List;
import java.util.Optional;

/** Why words do not say zones of a row. What was said is cut short where it is long. */
sealed interface ZoneProblem extends Fact {

    /** What says all by itself. */
    enum Flaw implements ZoneProblem {
        NOTHING_IN_COMMON,
        ALL_STANDS_ALONE,
        CONCAVE_OR_CONVEX
    }

    /** @param readings the zones that may be meant, at least two */
    record Ambiguous(String said, List<String> readings) implements ZoneProblem {}

    /** A band or side that the row has, where it cannot follow. */
    record Misplaced(String said) implements ZoneProblem {}

    /**
     * The row has no such zone.
     *
     * @param said empty if nothing was
     * @param known bands and sides of the row
     * @param path how several are said together, in full; empty if the row is divided in one way at most
     * @param letters the same in letters
     */
    record NoZone(Optional<String> said, List<String> known, Optional<String> path, Optional<String> letters)
            implements ZoneProblem {}
}
