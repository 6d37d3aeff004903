package everyblade.core.finding.closing;

import everyblade.fact.Fact;

/** Why an acceptance cannot stand. */
sealed interface AcceptanceProblem extends Fact {

    record NoReason(String reason, Fact against) implements AcceptanceProblem {}

    record NotSo(String reason, Fact against) implements AcceptanceProblem {}
}
