package everyblade.core.turning;

import everyblade.fact.Fact;
import java.util.Optional;

/** What there is to say of an entry that is kept: what it strikes or answers, what is open, out or hot. */
sealed interface EntryNote extends Fact {

    /** What no longer counts. */
    record Struck(int entry, String text) implements EntryNote {}

    /** What is answered for. */
    record AnsweredFor(int entry, String text) implements EntryNote {}

    /** A port, cover or panel that was opened already by another entry. */
    record OpenAlready(String thing, int entry) implements EntryNote {}

    /** A tool that is out already by another entry. */
    record OutAlready(String tool, int entry) implements EntryNote {}

    /** @param near the port or cover that was most likely meant */
    record UnknownThing(String thing, Optional<String> near) implements EntryNote {}

    /** A view through a port that was not said to be open. */
    record PortNotOpen(String port) implements EntryNote {}

    /** The metal is hotter than the scope tip inside bears; °C. */
    record Hot(double hottest) implements EntryNote {}

    /** A station at which the scope tip counts as in among what turns; mm. */
    record AmongBlades(String station, double clearance, double margin) implements EntryNote {}
}
