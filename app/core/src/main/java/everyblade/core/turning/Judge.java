package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.Refusal;
import java.util.OptionalDouble;

/**
 * Judges entries one by one: may this be, after what was before, and what does it lead to. Voids are not judged here;
 * {@link Fold} leaves out what they strike.
 */
final class Judge {

    private Judge() {}

    /**
     * The step of one entry.
     *
     * @param number K of the entry
     * @param sinceBefore seconds since the entry before, if both were entered live
     * @throws Refusal if it cannot be, with the column at which the line goes wrong
     */
    static EntryEffect judge(Situation situation, int number, Entry entry, OptionalDouble sinceBefore) throws Refusal {
        return switch (EntryKind.of(entry)) {
            case VIEW, AT, WATCH, IN, CLEAR, OUT, PAD, HEAT, VANES -> ViewEntries.judge(situation, number, entry);
            case TURN, SKIP, ROUND, LOOK, DRAW, FEED -> MovementEntries.judge(situation, number, entry, sinceBefore);
            case DATUM, HERE, SLIP, PAUSE, HANDOVER, TAKEOVER -> CountEntries.judge(situation, number, entry);
            case FIND, RECHECK, PHOTO, SAW, NO_ACCESS, ASK -> CellEntries.judge(situation, number, entry);
            case OPEN, SHUT, TOOL_OUT, TOOL_IN, LOST, PROOF, CONDITION, FACT, REFER, AGAIN, SETTLE, NOTE, VOID ->
                new EntryEffect(OpenEntries.judge(situation, number, entry)).and(ClosingAdvice.on(situation, entry));
        };
    }
}
