package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Judges entries one by one: may this be, after what was before, and what does it lead to. An entry for which no room has a
 * rule stands in the record and changes nothing. Voids are not judged here; {@link Fold} leaves out what they strike.
 */
final class Judge {

    private static final Rules RULES = Stream.of(
                    ViewEntries.RULES,
                    MovementEntries.RULES,
                    CountEntries.RULES,
                    CellEntries.RULES,
                    QuestionEntries.RULES,
                    OpenEntries.RULES)
            .reduce(Rules.NONE, Rules::and);

    private Judge() {}

    /**
     * The step of one entry.
     *
     * @param number K of the entry
     * @param sinceBefore seconds since the entry before, if both were entered live
     * @throws Refusal if it cannot be, with the column at which the line goes wrong
     */
    static EntryEffect judge(Situation situation, int number, Entry entry, OptionalDouble sinceBefore) throws Refusal {
        return RULES.judge(new Moment(situation, number, sinceBefore), entry);
    }

    /** Whether a room has a rule for entries of this type. */
    static boolean judges(Class<? extends Entry> type) {
        return RULES.has(type);
    }
}
