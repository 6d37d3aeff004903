package everyblade.record;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Movement;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How the records of one type are made: what is slow to ask of Java again for each of a hundred thousand lines.
 *
 * @param word that stands for the type where there is a choice of records
 * @param components in their order
 * @param maker takes them in that order
 */
record RecordForm(String word, List<Component> components, Constructor<?> maker) {

    /** Those that were asked for: an entry of every kind would keep each short command waiting. */
    private static final ClassValue<RecordForm> KNOWN = new ClassValue<>() {
        @Override
        protected RecordForm computeValue(Class<?> type) {
            return read(type);
        }
    };

    /** The choices where one type stands for several records, by the word of each. */
    static final Map<Class<?>, Map<String, Class<?>>> CHOICES =
            Map.of(Entry.class, choices(Entry.class), Movement.class, choices(Movement.class));

    /** A component of a record. */
    record Component(String name, Type type, RecordComponent of) {

        Object get(Record said) {
            try {
                return of.getAccessor().invoke(said);
            } catch (ReflectiveOperationException failure) {
                throw new IllegalStateException("an entry's records are public", failure);
            }
        }
    }

    /** How this record, of those that an entry is made of, is made. */
    static RecordForm of(Class<?> type) {
        return KNOWN.get(type);
    }

    private static RecordForm read(Class<?> type) {
        List<Component> components = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            components.add(new Component(component.getName(), component.getGenericType(), component));
        }
        try {
            Class<?>[] types = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            return new RecordForm(
                    word(type.getSimpleName()), List.copyOf(components), type.getDeclaredConstructor(types));
        } catch (NoSuchMethodException impossible) {
            throw new AssertionError("every record has its canonical constructor", impossible);
        }
    }

    private static Map<String, Class<?>> choices(Class<?> sealed) {
        Map<String, Class<?>> choices = new HashMap<>();
        records(sealed).forEach(choice -> choices.put(word(choice.getSimpleName()), choice));
        return Map.copyOf(choices);
    }

    /** The records that a sealed type stands for, by way of those that only group them. */
    private static Stream<Class<?>> records(Class<?> sealed) {
        return Arrays.stream(sealed.getPermittedSubclasses())
                .flatMap(choice -> choice.isSealed() ? records(choice) : Stream.of(choice));
    }

    static String word(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
