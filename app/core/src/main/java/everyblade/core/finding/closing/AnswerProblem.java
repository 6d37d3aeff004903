package everyblade.core.finding.closing;

import everyblade.fact.Fact;

/** What a person said to something that was open. */
sealed interface AnswerProblem extends Fact {

    /** @param entry in which it is answered */
    record Answered(Fact what, int entry, String by, String reason) implements AnswerProblem {}

    record SaysNothing(EntryLine about, String reason) implements AnswerProblem {}
}
