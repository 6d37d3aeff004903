package everyblade.core.finding.closing;

import everyblade.fact.Fact;
import java.math.BigDecimal;
import java.util.Optional;

/** What times of entries do not bear out; {@code count} is of the entries, times are ISO 8601, UTC, durations seconds. */
sealed interface TimeProblem extends Fact {

    /** @param before the entry before the first of them */
    record TooSoon(int count, EntryNumbers entries, EntryLine first, BigDecimal seconds, int before)
            implements TimeProblem {}

    /**
     * The machine's clock stood earlier than at the entry before.
     *
     * @param typed when the first of them was
     * @param before when the one before it was
     */
    record ClockRanBack(EntryNumbers entries, EntryLine first, String typed, String before) implements TimeProblem {}

    /**
     * It is said to have been earlier than the entry before.
     *
     * @param said time of the first of them
     * @param before time of the one before it
     * @param later how long after its own time it was typed, if that is long
     */
    record RunsBack(EntryNumbers entries, EntryLine first, String said, String before, Optional<Later> later)
            implements TimeProblem {}

    record ToCome(int count, EntryNumbers entries, EntryLine first, String said, String typed) implements TimeProblem {}

    record LongAfter(int count, EntryNumbers entries, EntryLine first, Later later, String typed)
            implements TimeProblem {}

    record AllLongAfter(LongAfter all) implements TimeProblem {}

    record OneTimeOnly(EntryNumbers entries) implements TimeProblem {}

    /** @param seconds that each airfoil is to be in view */
    record Untimed(int count, BigDecimal seconds, EntryNumbers entries) implements TimeProblem {}

    /** How long something was typed after it was done. */
    record Later(long number, Unit unit) implements Fact {}

    /** Of long times. */
    enum Unit {
        HOURS,
        DAYS
    }
}
