package everyblade.core.finding;

import everyblade.fact.Fact;
import java.util.List;
import java.util.Optional;

/**
 * What one rule says of one finding.
 *
 * @param rule that says it
 * @param verdict its answer
 * @param outcome that it gives
 * @param again the repeat inspection that goes with it
 * @param figures that led to it, those of the deciding step
 */
public record Ruling(Rule rule, Verdict verdict, Outcome outcome, Optional<Repeat> again, List<Figure> figures) {

    public Ruling {
        figures = List.copyOf(figures);
    }

    /** What a rule gives, as the manual words it. */
    public sealed interface Outcome extends Fact {

        record Sure(String words) implements Outcome {}

        /** Of what is too close to call. */
        record Either(String one, String other) implements Outcome {}
    }
}
