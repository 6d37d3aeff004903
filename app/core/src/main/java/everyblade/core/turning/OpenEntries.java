package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import java.util.List;
import java.util.Optional;

/** Entries about what is open: ports, tools, questions. Everything else leaves the situation as it is. */
final class OpenEntries {

    private OpenEntries() {}

    static Situation judge(Situation now, int number, Entry entry) throws Refusal {
        Ledger ledger = now.ledger();
        if (entry instanceof Entry.Open open) {
            return now.noted(ledger.opened(open.thing().value(), number))
                    .portSaid(open.thing().value(), Optional.empty());
        }
        if (entry instanceof Entry.Shut shut) {
            if (!ledger.openings().containsKey(shut.thing().value())) {
                throw new Refusal(
                        shut.thing().column(),
                        new EntryProblem.NotOpen(
                                shut.thing().value(),
                                List.copyOf(ledger.openings().keySet())));
            }
            return now.noted(ledger.shut(shut.thing().value()))
                    .portSaid(shut.thing().value(), Optional.of(number));
        }
        if (entry instanceof Entry.ToolOut out) {
            return now.noted(ledger.toolOut(out.tool().value(), number));
        }
        if (entry instanceof Entry.ToolIn in) {
            String tool = in.tool().value();
            Ledger found = ledger.found(tool);
            if (!ledger.toolsOut().containsKey(tool) && found.equals(ledger)) {
                throw new Refusal(
                        in.tool().column(),
                        new EntryProblem.NotOut(
                                tool, List.copyOf(ledger.toolsOut().keySet())));
            }
            return now.noted(found.toolIn(tool));
        }
        if (entry instanceof Entry.Lost lost) {
            return now.noted(ledger.lost(number, lost.tool().value()));
        }
        if (entry instanceof Entry.Proof proof) {
            return now.noted(ledger.proved(new Stance.Proof(
                    proof.size().value().doubleValue(), proof.distance().value().doubleValue())));
        }
        if (entry instanceof Entry.Refer refer) {
            return now.noted(ledger.questioned(number, new Question.Referred(refer.text())));
        }
        if (entry instanceof Entry.Again again) {
            return now.noted(ledger.questioned(
                    number, new Question.Again(again.number().value().toPlainString(), again.interval())));
        }
        if (entry instanceof Entry.Settle settle) {
            int settled = settle.entry().value();
            if (!ledger.questions().containsKey(settled) && ledger.isUndecided(settled)) {
                return now.noted(ledger.decided(settled, number));
            }
            if (!ledger.questions().containsKey(settled)) {
                throw new Refusal(
                        settle.entry().column(),
                        new EntryProblem.NothingToSettle(
                                settled, List.copyOf(ledger.questions().keySet())));
            }
            return now.noted(ledger.settled(settled));
        }
        return now;
    }
}
