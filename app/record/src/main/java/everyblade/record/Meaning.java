package everyblade.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Said;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
            return TextNode.valueOf(RecordForm.word(word.name()));
        }
        if (value instanceof List<?> list) {
            ArrayNode array = JobJson.object().arrayNode();
            list.forEach(element -> array.add(node(element)));
            return array;
        }
        if (value instanceof Record said) {
            return object(said);
        }
        throw new IllegalArgumentException("no entry says a " + value.getClass());
    }

    private static ObjectNode object(Record said) {
        ObjectNode object = JobJson.object();
        RecordForm form = RecordForm.of(said.getClass());
        for (Class<?> choice : RecordForm.CHOICES.keySet()) {
            if (choice.isInstance(said)) {
                object.put(choiceKey(choice), form.word());
            }
        }
        for (RecordForm.Component component : form.components()) {
            Object value = component.get(said);
            if (value instanceof Optional<?> optional) {
                optional.ifPresent(present -> object.set(component.name(), node(present)));
            } else {
                object.set(component.name(), node(value));
            }
        }
        return object;
    }

    /** Whether two entries say the same, wherever in a line each word of it stood. */
    static boolean isSame(Entry one, Entry other) {
        return isSame((Object) one, other);
    }

    private static boolean isSame(Object one, Object other) {
        if (one instanceof Said<?> a && other instanceof Said<?> b) {
            return isSame(a.value(), b.value());
        }
        if (one instanceof Optional<?> a && other instanceof Optional<?> b) {
            return a.isPresent() == b.isPresent() && (a.isEmpty() || isSame(a.get(), b.get()));
        }
        if (one instanceof List<?> a && other instanceof List<?> b) {
            boolean same = a.size() == b.size();
            for (int i = 0; same && i < a.size(); i++) {
                same = isSame(a.get(i), b.get(i));
            }
            return same;
        }
        if (one instanceof Record a && other instanceof Record b) {
            return a.getClass() == b.getClass()
                    && RecordForm.of(a.getClass()).components().stream()
                            .allMatch(component -> isSame(component.get(a), component.get(b)));
        }
        return one.equals(other);
    }

    private static String choiceKey(Class<?> choice) {
        return choice == Entry.class ? "verb" : "move";
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
                throw new Unreadable(new LineFlaw.Missing(where));
            }
            return plain((Class<?>) type, node, where);
        }

        private List<Object> list(Type inner, JsonNode node, String where) throws Unreadable {
            require(node != null && node.isArray(), where, LineFlaw.Sort.LIST);
            List<Object> list = new ArrayList<>();
            for (JsonNode element : node) {
                list.add(value(inner, element, where));
            }
            return List.copyOf(list);
        }

        private Object plain(Class<?> type, JsonNode node, String where) throws Unreadable {
            if (type == String.class) {
                require(node.isTextual(), where, LineFlaw.Sort.TEXT);
                return node.textValue();
            }
            if (type == Integer.class) {
                require(node.isInt(), where, LineFlaw.Sort.WHOLE_NUMBER);
                return node.intValue();
            }
            if (type == boolean.class) {
                require(node.isBoolean(), where, LineFlaw.Sort.TRUTH);
                return node.booleanValue();
            }
            if (type == BigDecimal.class) {
                require(node.isNumber(), where, LineFlaw.Sort.NUMBER);
                return node.decimalValue();
            }
            if (type.isEnum()) {
                for (Object constant : type.getEnumConstants()) {
                    if (RecordForm.word(((Enum<?>) constant).name()).equals(node.textValue())) {
                        return constant;
                    }
                }
                throw unknown(node, where);
            }
            require(node.isObject(), where, LineFlaw.Sort.OBJECT);
            Map<String, Class<?>> choices = RecordForm.CHOICES.get(type);
            if (choices == null) {
                return object(type, node, "");
            }
            String key = choiceKey(type);
            Class<?> chosen = choices.get(node.path(key).asText());
            if (chosen == null || !node.path(key).isTextual()) {
                throw unknown(node.path(key), key);
            }
            return object(chosen, node, key);
        }

        private static Unreadable unknown(JsonNode node, String where) {
            return new Unreadable(
                    node.isTextual() ? new LineFlaw.UnknownWord(where, node.textValue()) : new LineFlaw.NoWord(where));
        }

        private Record object(Class<?> type, JsonNode node, String choiceKey) throws Unreadable {
            RecordForm form = RecordForm.of(type);
            List<RecordForm.Component> components = form.components();
            Object[] values = new Object[components.size()];
            int known = node.has(choiceKey) ? 1 : 0;
            for (int i = 0; i < values.length; i++) {
                RecordForm.Component component = components.get(i);
                values[i] = value(component.type(), node.get(component.name()), component.name());
                known += node.has(component.name()) ? 1 : 0;
            }
            if (!unknownKeysToo && known < node.size()) {
                List<String> names = new ArrayList<>(choiceKey.isEmpty() ? List.of() : List.of(choiceKey));
                components.forEach(component -> names.add(component.name()));
                requireKnown(node, names);
            }
            try {
                return (Record) form.maker().newInstance(values);
            } catch (ReflectiveOperationException failure) {
                throw new Unreadable(new LineFlaw.Unsayable(form.word()));
            }
        }
    }

    /** Refuses members that are not among these. */
    static void requireKnown(JsonNode node, Collection<String> known) throws Unreadable {
        for (var names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                throw new Unreadable(new LineFlaw.UnknownKey(name, List.copyOf(known)));
            }
        }
    }

    static void require(boolean holds, String where, LineFlaw.Sort wanted) throws Unreadable {
        if (!holds) {
            throw new Unreadable(new LineFlaw.OtherSort(where, wanted));
        }
    }

    static void require(boolean holds, String where, String wanted) throws Unreadable {
        if (!holds) {
            throw new Unreadable(new LineFlaw.OtherText(where, wanted));
        }
    }
}
