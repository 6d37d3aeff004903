package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.Optional;

/** A move as it was said: by an amount, or to a reading. */
public sealed interface Movement {

    /** The error stated with the move, ± degrees of shaft; replaces what the pad says. */
    Optional<BigDecimal> plusMinus();

    /**
     * By an amount. Without a sense the sign counts, positive clockwise; with one the number is not negative.
     *
     * @param sense with the spool's normal direction, or against it
     * @param number how much
     * @param unit of what
     * @param plusMinus ± degrees of shaft, not negative
     */
    record By(Optional<Sense> sense, BigDecimal number, Unit unit, Optional<BigDecimal> plusMinus)
            implements Movement {}

    /**
     * To the next angle that reads so.
     *
     * @param sense the way to go; the shorter one if empty
     * @param angle degrees, read modulo a turn
     * @param plusMinus ± degrees of shaft, not negative
     */
    record To(Optional<Sense> sense, BigDecimal angle, Optional<BigDecimal> plusMinus) implements Movement {}
}
