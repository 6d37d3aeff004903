package everyblade.core.finding.closing;

import everyblade.core.entry.Kind;
import everyblade.core.finding.Repeat;
import everyblade.core.finding.Verdict;
import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.Optional;

/** What is open about a finding. */
sealed interface FindingProblem extends Fact {

    /**
     * Nobody knows what comes of it, or where it is; one of the two is there.
     *
     * @param why a {@link Verdict}, or a problem of this sort
     */
    record Undecided(Kind kind, Optional<Fact> why, Optional<CountLost> doubt) implements FindingProblem {}

    record Unsaid(Verdict verdict) implements FindingProblem {}

    enum Unjudged implements FindingProblem {
        NO_LIMITS
    }

    /** It was entered while the count was lost. */
    record CountLost(RowKind row) implements FindingProblem {}

    record RepeatNotEntered(Repeat repeat) implements FindingProblem {}

    /**
     * A finding of the last record, at a place that was not looked at again.
     *
     * @param entry in that record
     * @param date of the entry, ISO 8601
     * @param accepted whether the place was accepted as not seen
     */
    record NotLookedAgain(Kind kind, int entry, String date, boolean accepted) implements FindingProblem {}
}
