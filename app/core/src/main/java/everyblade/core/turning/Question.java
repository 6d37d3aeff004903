package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.Optional;

/** What an entry leaves open until it is settled. */
public sealed interface Question extends Fact {

    /** Someone means to look at this airfoil again; {@code text} may begin with a zone. */
    record Recheck(RowKind kind, int airfoil, String row, Optional<String> text) implements Question {}

    /** A tool, light or plug is missing. */
    record Lost(String thing) implements Question {}

    /** Someone else is to decide. */
    record Referred(String text) implements Question {}

    /** @param number as it was typed */
    record Again(String number, Entry.Interval interval) implements Question {}
}
