package everyblade.core.turning;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an entry leads to.
 *
 * @param situation after it
 * @param warnings one line each, for the person who entered it; they change nothing
 */
public record EntryEffect(Situation situation, List<String> warnings) {

    public EntryEffect {
        warnings = List.copyOf(warnings);
    }

    EntryEffect(Situation situation, String... warnings) {
        this(situation, List.of(warnings));
    }

    /** The same with one more warning, if there is one. */
    EntryEffect and(Optional<String> warning) {
        return new EntryEffect(
                situation, Stream.concat(warnings.stream(), warning.stream()).toList());
    }
}
