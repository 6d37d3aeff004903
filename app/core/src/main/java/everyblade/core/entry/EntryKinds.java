package everyblade.core.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All kinds of entries, by verb and by type. */
final class EntryKinds {

    static final List<EntryKind> ALL = Stream.of(
                    LookEntry.KINDS, TurnEntry.KINDS, FindingEntry.KINDS, RecordEntry.KINDS)
            .flatMap(List::stream)
            .toList();

    /** Those that share a verb share its rule. */
    private static final Map<String, EntryKind> BY_VERB = ALL.stream()
            .collect(Collectors.toUnmodifiableMap(EntryKind::verb, Function.identity(), (one, other) -> one));

    private static final Map<Class<?>, EntryKind> BY_TYPE =
            ALL.stream().collect(Collectors.toUnmodifiableMap(EntryKind::type, Function.identity()));

    private EntryKinds() {}

    static Set<String> verbs() {
        return BY_VERB.keySet();
    }

    /** The kind with this verb in lower case. */
    static Optional<EntryKind> of(String verb) {
        return Optional.ofNullable(BY_VERB.get(verb));
    }

    /** The kind of an entry of this type; every type has one. */
    static EntryKind of(Class<? extends Entry> type) {
        return BY_TYPE.get(type);
    }
}
