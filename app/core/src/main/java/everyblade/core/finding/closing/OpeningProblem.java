package everyblade.core.finding.closing;

import everyblade.fact.Fact;
import java.util.Optional;

/** What is open, out or inside. */
sealed interface OpeningProblem extends Fact {

    enum Inside implements OpeningProblem {
        TIP_AMONG_BLADES
    }

    record ToolOut(String tool) implements OpeningProblem {}

    record Open(Thing thing) implements OpeningProblem {}

    /** @param shut whether it was shut before, and not only never said to be open */
    record LookedThrough(Thing port, boolean shut) implements OpeningProblem {}

    /**
     * Something that can be opened.
     *
     * @param name of a port of the model
     * @param id of that, or whatever a person called it
     */
    record Thing(Optional<String> name, String id) implements Fact {}
}
