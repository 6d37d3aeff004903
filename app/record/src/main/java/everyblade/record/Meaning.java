package everyblade.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Said;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * An entry as a JSON object that says the same, and back. The object is made from the records themselves: a member for
 * each component, in their order, absent where an {@code Optional} is empty; before them {@code verb} with the entry's
 * name, or {@code move} with {@code by} or {@code to}, where there is a choice of records. Columns are not kept: in
 * what is read back they are 1.
 */
final class Meaning {

    private static final int NO_COLUMN = 1;

    private Meaning() {}

    static ObjectNode write(Entry entry) {
        return (ObjectNode) node(entry);
    }

    /**
     * Reads back what {@link #write} made.
     *
     * @param unknownKeysToo whether to pass over members that are not known, as a newer version may have them
     */
    static Entry read(JsonNode node, boolean unknownKeysToo) throws Unreadable {
        return (Entry) new Reader(unknownKeysToo).value(Entry.class, node, "means");
    }

    private static JsonNode node(Object value) {
        if (value instanceof Said<?> said) {
            return node(said.value());
        }
        if (value instanceof String text) {
            return TextNode.valueOf(text);
        }
        if (value instanceof Integer number) {
            return IntNode.valueOf(number);
        }
        if (value instanceof Boolean yes) {
            return BooleanNode.valueOf(yes);
        }
        if (value instanceof BigDecimal number) {
            return DecimalNode.valueOf(number);
        }
        if (value instanceof Enum<?> word) {
            return TextNode.valueOf(word(word.name()));
        }
        if (value instanceof List<?> list) {
            ArrayNode array = Json.object().arrayNode();
            list.forEach(element -> array.add(node(element)));
            return array;
        }
        if (value instanceof Record said) {
            return object(said);
        }
        throw new IllegalArgumentException("no entry says a " + value.getClass());
    }

    private static ObjectNode object(Record said) {
        ObjectNode object = Json.object();
        for (Class<?> choice : List.of(Entry.class, Movement.class)) {
            if (choice.isInstance(said)) {
                object.put(choiceKey(choice), word(said.getClass().getSimpleName()));
            }
        }
        for (RecordComponent component : said.getClass().getRecordComponents()) {
            Object value = get(component, said);
            if (value instanceof Optional<?> optional) {
                optional.ifPresent(present -> object.set(component.getName(), node(present)));
            } else {
                object.set(component.getName(), node(value));
            }
        }
        return object;
    }

    private static Object get(RecordComponent component, Record said) {
        try {
            return component.getAccessor().invoke(said);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("an entry's records are public", failure);
        }
    }

    private static String choiceKey(Class<?> choice) {
        return choice == Entry.class ? "verb" : "move";
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private record Reader(boolean unknownKeysToo) {

        Object value(Type type, JsonNode node, String where) throws Unreadable {
            if (type instanceof ParameterizedType generic) {
                Type inner = generic.getActualTypeArguments()[0];
                if (generic.getRawType() == Optional.class) {
                    return node == null ? Optional.empty() : Optional.of(value(inner, node, where));
                }
                if (generic.getRawType() == Said.class) {
                    return new Said<>(value(inner, node, where), NO_COLUMN);
                }
                return list(inner, node, where);
            }
            if (node == null) {
                throw new Unreadable("\"" + where + "\" is missing");
            }
            return plain((Class<?>) type, node, where);
        }

        private List<Object> list(Type inner, JsonNode node, String where) throws Unreadable {
            require(node != null && node.isArray(), where, "a list");
            List<Object> list = new ArrayList<>();
            for (JsonNode element : node) {
                list.add(value(inner, element, where));
            }
            return List.copyOf(list);
        }

        private Object plain(Class<?> type, JsonNode node, String where) throws Unreadable {
            if (type == String.class) {
                require(node.isTextual(), where, "a text");
                return node.textValue();
            }
            if (type == Integer.class) {
                require(node.isInt(), where, "a whole number");
                return node.intValue();
            }
            if (type == boolean.class) {
                require(node.isBoolean(), where, "true or false");
                return node.booleanValue();
            }
            if (type == BigDecimal.class) {
                require(node.isNumber(), where, "a number");
                return node.decimalValue();
            }
            if (type.isEnum()) {
                return choose(Arrays.asList(type.getEnumConstants()), each -> ((Enum<?>) each).name(), node, where);
            }
            require(node.isObject(), where, "an object");
            if (type.isSealed()) {
                String key = choiceKey(type);
                List<Class<?>> choices = List.of(type.getPermittedSubclasses());
                return object(choose(choices, Class::getSimpleName, node.get(key), key), node, Set.of(key));
            }
            return object(type, node, Set.of());
        }

        private Record object(Class<?> type, JsonNode node, Set<String> alsoKnown) throws Unreadable {
            RecordComponent[] components = type.getRecordComponents();
            Set<String> known = new LinkedHashSet<>(alsoKnown);
            Class<?>[] types = new Class<?>[components.length];
            Object[] values = new Object[components.length];
            for (int i = 0; i < components.length; i++) {
                String name = components[i].getName();
                known.add(name);
                types[i] = components[i].getType();
                values[i] = value(components[i].getGenericType(), node.get(name), name);
            }
            if (!unknownKeysToo) {
                requireKnown(node, known);
            }
            try {
                return (Record) type.getDeclaredConstructor(types).newInstance(values);
            } catch (ReflectiveOperationException failure) {
                throw new Unreadable("\"" + word(type.getSimpleName()) + "\" cannot be said with these values");
            }
        }

        private static <T> T choose(List<T> choices, Function<T, String> name, JsonNode node, String where)
                throws Unreadable {
            require(node != null && node.isTextual(), where, "a word");
            return choices.stream()
                    .filter(choice -> word(name.apply(choice)).equals(node.textValue()))
                    .findFirst()
                    .orElseThrow(() ->
                            new Unreadable("\"" + where + "\" is \"" + node.textValue() + "\", which is not known"));
        }
    }

    /** Refuses members that are not among these. */
    static void requireKnown(JsonNode node, Collection<String> known) throws Unreadable {
        for (var names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                throw new Unreadable(
                        "the key \"" + name + "\" is not known (known are " + String.join(", ", known) + ")");
            }
        }
    }

    static void require(boolean holds, String where, String expected) throws Unreadable {
        if (!holds) {
            throw new Unreadable("\"" + where + "\" should be " + expected);
        }
    }
}
