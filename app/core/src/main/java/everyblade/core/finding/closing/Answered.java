package everyblade.core.finding.closing;

import everyblade.core.entry.FindingEntry;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import java.util.Optional;

/**
 * Things for which a person has to answer by {@code settle}. Answered for, they are no longer open, but told all the same
 * with the answer: who was not there must find them.
 *
 * @param fold of the journal
 */
record Answered(Fold fold) {

    /** The entry in which a person answered for entry K. */
    Optional<Logged> answer(int number) {
        return Optional.ofNullable(fold.situation().ledger().outcomes().get(number))
                .map(entry -> fold.entries().get(entry - 1));
    }

    /**
     * A thing, as open as its answer leaves it.
     *
     * @param about the entry that is answered for
     * @param where it is; empty if it is nowhere
     * @param advice what to do if there is no answer yet, before it is said
     */
    OpenItem item(Kind kind, Logged about, Fact what, Optional<Where> where, Fact advice) {
        Optional<Logged> answer = answer(about.number());
        if (answer.isEmpty()) {
            String settle = "settle " + about.number() + " because ";
            return new OpenItem(kind, Optional.of(about), what, where, new ToDo.Answer(advice, settle.strip()), settle);
        }
        Logged by = answer.get();
        String reason = ((FindingEntry.Settle) by.entry()).reason();
        Fact answered = new AnswerProblem.Answered(what, by.number(), by.by(), reason);
        return new ReasonGiven(reason).says()
                ? OpenItem.told(kind, Optional.of(about), answered, where)
                : new OpenItem(
                        kind,
                        Optional.of(about),
                        answered,
                        where,
                        new ToDo.AnswerAnew(by.number()),
                        "void " + by.number() + " because ");
    }
}
