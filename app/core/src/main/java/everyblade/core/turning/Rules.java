package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import java.util.HashMap;
import java.util.Map;

/** How entries are judged, each type by a rule of its own. */
final class Rules {

    static final Rules NONE = new Rules(Map.of());

    private final Map<Class<?>, Rule<Entry>> byType;

    private Rules(Map<Class<?>, Rule<Entry>> byType) {
        this.byType = Map.copyOf(byType);
    }

    /** How entries of one type are judged. */
    @FunctionalInterface
    interface Rule<E> {

        /**
         * What the entry leads to.
         *
         * @throws Refusal if it cannot be, with the column at which the line goes wrong
         */
        EntryEffect judge(Moment moment, E entry) throws Refusal;
    }

    /** These rules and one more. */
    <E extends Entry> Rules and(Class<E> type, Rule<E> rule) {
        Map<Class<?>, Rule<Entry>> more = new HashMap<>(byType);
        more.put(type, (moment, entry) -> rule.judge(moment, type.cast(entry)));
        return new Rules(more);
    }

    /** These rules and those, which are of other types. */
    Rules and(Rules others) {
        Map<Class<?>, Rule<Entry>> more = new HashMap<>(byType);
        more.putAll(others.byType);
        return new Rules(more);
    }

    boolean has(Class<? extends Entry> type) {
        return byType.containsKey(type);
    }

    /** What an entry leads to; nothing, if there is no rule for its type. */
    EntryEffect judge(Moment moment, Entry entry) throws Refusal {
        Rule<Entry> rule = byType.get(entry.getClass());
        return rule == null ? new EntryEffect(moment.now()) : rule.judge(moment, entry);
    }
}
