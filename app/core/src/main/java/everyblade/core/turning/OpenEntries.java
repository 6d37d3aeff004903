package everyblade.core.turning;

import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import java.util.List;
import java.util.Optional;

/** Entries about things: what is open, and which tools are out. */
final class OpenEntries {

    static final Rules RULES = Rules.NONE
            .and(RecordEntry.Open.class, OpenEntries::open)
            .and(RecordEntry.Shut.class, OpenEntries::shut)
            .and(RecordEntry.ToolOut.class, OpenEntries::toolOut)
            .and(RecordEntry.ToolIn.class, OpenEntries::toolIn)
            .and(RecordEntry.Lost.class, OpenEntries::lost);

    private OpenEntries() {}

    private static EntryEffect open(Moment moment, RecordEntry.Open open) {
        Situation now = moment.now();
        String thing = open.thing().value();
        return new EntryEffect(
                        now.noted(now.ledger().opened(thing, moment.number())).portSaid(thing, Optional.empty()))
                .and(ClosingAdvice.onOpen(now, thing));
    }

    private static EntryEffect shut(Moment moment, RecordEntry.Shut shut) throws Refusal {
        Situation now = moment.now();
        Ledger ledger = now.ledger();
        String thing = shut.thing().value();
        if (!ledger.openings().containsKey(thing)) {
            throw new Refusal(
                    shut.thing().column(),
                    new EntryProblem.NotOpen(
                            thing, List.copyOf(ledger.openings().keySet())));
        }
        return new EntryEffect(now.noted(ledger.shut(thing)).portSaid(thing, Optional.of(moment.number())));
    }

    private static EntryEffect toolOut(Moment moment, RecordEntry.ToolOut out) {
        Situation now = moment.now();
        String tool = out.tool().value();
        return new EntryEffect(now.noted(now.ledger().toolOut(tool, moment.number())))
                .and(ClosingAdvice.onToolOut(now, tool));
    }

    private static EntryEffect toolIn(Moment moment, RecordEntry.ToolIn in) throws Refusal {
        Ledger ledger = moment.now().ledger();
        String tool = in.tool().value();
        Ledger found = ledger.found(tool);
        if (!ledger.toolsOut().containsKey(tool) && found.equals(ledger)) {
            throw new Refusal(
                    in.tool().column(),
                    new EntryProblem.NotOut(tool, List.copyOf(ledger.toolsOut().keySet())));
        }
        return new EntryEffect(moment.now().noted(found.toolIn(tool)));
    }

    private static EntryEffect lost(Moment moment, RecordEntry.Lost lost) {
        Situation now = moment.now();
        return new EntryEffect(
                now.noted(now.ledger().lost(moment.number(), lost.tool().value())));
    }
}
