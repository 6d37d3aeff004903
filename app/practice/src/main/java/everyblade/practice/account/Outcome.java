package everyblade.practice.account;

import everyblade.core.finding.Finding;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.harm.Harm;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

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
        /** Missed: it was in sight, and not called, or only after the trainee had been told of it. */
        NOT_CALLED
    }

    /**
     * How long it was looked for: seconds from when it was first properly in sight until it was called. Empty if it was not
     * called, or was called from a worse picture before.
     */
    public OptionalDouble search(TipTrack track) {
        OptionalLong called = call.isPresent() ? track.when(call.get().entry()) : OptionalLong.empty();
        return called.isPresent() && sighting.firstMillis() >= 0 && called.getAsLong() >= sighting.firstMillis()
                ? OptionalDouble.of((called.getAsLong() - sighting.firstMillis()) / 1000.0)
                : OptionalDouble.empty();
    }

    /** Whether the eye found it, wherever it was then put. */
    public boolean found() {
        return call.isPresent();
    }
}
