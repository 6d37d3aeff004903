package everyblade.core.turning;

import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.Refusal;
import java.util.List;

/** Entries that leave a question which is no cell's, and the one that settles questions. */
final class QuestionEntries {

    static final Rules RULES = Rules.NONE
            .and(FindingEntry.Refer.class, (moment, refer) -> questioned(moment, new Question.Referred(refer.text())))
            .and(
                    FindingEntry.Again.class,
                    (moment, again) -> questioned(
                            moment, new Question.Again(again.number().value().toPlainString(), again.interval())))
            .and(FindingEntry.Settle.class, QuestionEntries::settle);

    private QuestionEntries() {}

    private static EntryEffect questioned(Moment moment, Question question) {
        Situation now = moment.now();
        return new EntryEffect(now.noted(now.ledger().questioned(moment.number(), question)));
    }

    private static EntryEffect settle(Moment moment, FindingEntry.Settle settle) throws Refusal {
        Situation now = moment.now();
        Ledger ledger = now.ledger();
        int settled = settle.entry().value();
        if (ledger.questions().containsKey(settled)) {
            return new EntryEffect(now.noted(ledger.settled(settled)));
        }
        if (ledger.isUndecided(settled)) {
            return new EntryEffect(now.noted(ledger.decided(settled, moment.number())));
        }
        throw new Refusal(
                settle.entry().column(),
                new EntryProblem.NothingToSettle(
                        settled, List.copyOf(ledger.questions().keySet())));
    }
}
