package everyblade.core.turning;

import everyblade.fact.Fact;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an entry leads to.
 *
 * @param situation after it
 * @param warnings for the person who entered it; they change nothing
 */
record EntryEffect(Situation situation, List<Fact> warnings) {

    public EntryEffect {
        warnings = List.copyOf(warnings);
    }

    EntryEffect(Situation situation, Fact... warnings) {
        this(situation, List.of(warnings));
    }

    /** The same with one more warning, if there is one. */
    EntryEffect and(Optional<? extends Fact> warning) {
        return new EntryEffect(
                situation,
                Stream.<Fact>concat(warnings.stream(), warning.stream()).toList());
    }
}
