package everyblade.core.finding;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One step of a rule: what keeps to all of it gets its outcome; what does not is held against the next step. A step
 * without any limit takes everything.
 *
 * @param sizes what each dimension may be
 * @param counts how many there may be
 * @param apart how far findings of this rule on one airfoil must be from each other
 * @param outcome as the manual words it
 * @param again the repeat inspection that goes with it
 */
public record Step(
        Map<Dimension, Bounds> sizes, Counts counts, Optional<Length> apart, String outcome, Optional<Repeat> again) {

    public Step {
        sizes = Map.copyOf(sizes);
    }

    /**
     * How many there may be, those left out that an earlier step of the rule takes by their size.
     *
     * @param perAirfoil findings on one airfoil
     * @param perRow findings in the row
     * @param airfoils airfoils of the row with any
     * @param neighbours airfoils with any that stand side by side; 1 if none may have such a neighbour
     */
    public record Counts(OptionalInt perAirfoil, OptionalInt perRow, OptionalInt airfoils, OptionalInt neighbours) {

        /** No limit to any number. */
        public static final Counts ANY =
                new Counts(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
    }
}
