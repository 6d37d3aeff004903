package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.Optional;

/** What entries of several kinds may state in the same way. */
public final class Stated {

    private Stated() {}

    /** How long it took, s, if the entry says so. */
    public static Optional<BigDecimal> seconds(Entry entry) {
        return entry instanceof Entry.Timed timed ? timed.seconds() : Optional.empty();
    }

    /** The move that the entry says, if it is one; a round is none, for it says no angle. */
    public static Optional<Movement> movement(Entry entry) {
        return entry instanceof Entry.Moving moving
                ? Optional.of(moving.movement().value())
                : Optional.empty();
    }

    /** What an angle or a place may be off, ± degrees, if the entry says so. */
    public static Optional<BigDecimal> plusMinus(Entry entry) {
        return entry instanceof Entry.Placing placing
                ? placing.plusMinus()
                : movement(entry).flatMap(Movement::plusMinus);
    }

    /** The picture that the entry names. */
    public static Optional<Said<String>> file(Entry entry) {
        return entry instanceof Entry.Pictured pictured ? Optional.of(pictured.file()) : Optional.empty();
    }
}
