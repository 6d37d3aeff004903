package everyblade.core.entry;

import java.util.Optional;
import java.util.function.Function;

/**
 * How one kind of entry is said: read and written in one place, so that what is written is read back.
 *
 * @param type of the entry
 * @param verb with which its line begins
 * @param rowMayLead whether a row may stand before the verb
 * @param rule by which the rest is read; may give another type where several share a verb
 * @param rest what stands behind the verb, empty if nothing does
 */
record EntryForm<E extends Entry>(
        Class<E> type, String verb, boolean rowMayLead, RowRule rule, Function<E, String> rest) {

    /** How the rest of a line is read once its verb, and the row before it if any, are known. */
    @FunctionalInterface
    interface RowRule {

        /**
         * The entry, not yet checked for words too many at its end.
         *
         * @throws Refusal if something is missing or does not belong
         */
        Entry read(Optional<Said<String>> row, Line line) throws Refusal;
    }

    /** How the rest of a line is read once its verb is known. */
    @FunctionalInterface
    interface Rule {

        /** As {@link RowRule#read}. */
        Entry read(Line line) throws Refusal;
    }

    /** A kind of entry before which no row stands. */
    static <E extends Entry> EntryKind kind(Class<E> type, String verb, Rule rule, Function<E, String> rest) {
        return EntryKind.of(new EntryForm<>(type, verb, false, (row, line) -> rule.read(line), rest));
    }

    /** A kind of entry before which a row may stand. */
    static <E extends Entry> EntryKind kindOfRow(Class<E> type, String verb, RowRule rule, Function<E, String> rest) {
        return EntryKind.of(new EntryForm<>(type, verb, true, rule, rest));
    }

    /** The line that says this entry. */
    String line(Entry entry) {
        String behind = rest.apply(type.cast(entry)).stripLeading();
        return behind.isEmpty() ? verb : verb + " " + behind;
    }
}
