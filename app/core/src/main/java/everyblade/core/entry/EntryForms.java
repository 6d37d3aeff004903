package everyblade.core.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All forms of entries, by verb and by type. */
final class EntryForms {

    private static final List<EntryForm<?>> ALL = Stream.of(TurningRules.FORMS, FindingRules.FORMS, RecordRules.FORMS)
            .flatMap(List::stream)
            .toList();

    /** Those that share a verb share its rule. */
    private static final Map<String, EntryForm<?>> BY_VERB = ALL.stream()
            .collect(Collectors.toUnmodifiableMap(EntryForm::verb, Function.identity(), (one, other) -> one));

    private static final Map<Class<?>, EntryForm<?>> BY_TYPE =
            ALL.stream().collect(Collectors.toUnmodifiableMap(EntryForm::type, Function.identity()));

    private EntryForms() {}

    static Set<String> verbs() {
        return BY_VERB.keySet();
    }

    /** The form with this verb in lower case. */
    static Optional<EntryForm<?>> of(String verb) {
        return Optional.ofNullable(BY_VERB.get(verb));
    }

    /** The form of an entry; every type has one. */
    static EntryForm<?> of(Entry entry) {
        return of(entry.getClass());
    }

    static EntryForm<?> of(Class<? extends Entry> type) {
        return BY_TYPE.get(type);
    }
}
