package everyblade.practice.account;

import everyblade.core.finding.Finding;
import everyblade.practice.harm.Harm;
import java.util.Optional;

/**
 * What became of one piece of damage.
 *
 * @param harm the damage
 * @param sighting how it was in sight
 * @param fate what became of it
 * @param call the finding that was taken for it
 */
public record Outcome(Harm harm, TargetSighting sighting, Fate fate, Optional<Finding> call) {

    /** What becomes of damage. */
    public enum Fate {
        /** Called, on its airfoil, in its zone, by its kind. */
        CALLED,
        /** Called on its airfoil in its zone, but as something else. */
        OTHER_KIND,
        /** Called on its airfoil, but in another zone, where other limits may hold. */
        OTHER_ZONE,
        /** Called on a neighbour: the count was off. */
        OTHER_AIRFOIL,
        /** Missed: it was never in the picture. */
        NEVER_IN_SIGHT,
        /** Missed: too briefly, too far, too slantwise or too small in the picture. */
        TOO_LITTLE,
        /** Missed: it was in sight, and not called. */
        NOT_CALLED
    }

    /** Whether the eye found it, wherever it was then put. */
    public boolean found() {
        return call.isPresent();
    }
}
