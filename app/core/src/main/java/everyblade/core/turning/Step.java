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
public record Step(Situation situation, List<String> warnings) {

    public Step {
        warnings = List.copyOf(warnings);
    }

    Step(Situation situation, String... warnings) {
        this(situation, List.of(warnings));
    }

    /** The same with one more warning, if there is one. */
    Step and(Optional<String> warning) {
        return new Step(
                situation, Stream.concat(warnings.stream(), warning.stream()).toList());
    }
}
