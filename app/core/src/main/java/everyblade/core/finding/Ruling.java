package everyblade.core.finding;

import java.util.List;
import java.util.Optional;

/**
 * What one rule says of one finding.
 *
 * @param rule that says it
 * @param verdict its answer
 * @param outcome as the manual words it; of what is too close, what it may be
 * @param again the repeat inspection that goes with it
 * @param figures that led to it, those of the deciding step
 */
public record Ruling(Rule rule, Verdict verdict, String outcome, Optional<Repeat> again, List<Figure> figures) {

    public Ruling {
        figures = List.copyOf(figures);
    }
}
