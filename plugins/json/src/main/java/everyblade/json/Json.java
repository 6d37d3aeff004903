package everyblade.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON value that knows where it stands in its file. */
public sealed interface Json {

    Place place();

    /** What an author calls such a value. */
    String type();

    /** Where the value at a JSON pointer stands, seen from here; of what is not there, the nearest that is around it. */
    default Place placeAt(String pointer) {
        if (pointer.isEmpty()) {
            return place();
        }
        int end = pointer.indexOf('/', 1);
        String step = pointer.substring(1, end < 0 ? pointer.length() : end);
        String rest = end < 0 ? "" : pointer.substring(end);
        return child(step.replace("~1", "/").replace("~0", "~"))
                .map(child -> child.placeAt(rest))
                .orElse(place());
    }

    /** What an object or array holds at a key or index. */
    private Optional<Json> child(String step) {
        if (this instanceof Obj object) {
            return Optional.ofNullable(object.members().get(step)).map(Member::value);
        }
        boolean index = this instanceof Arr && step.matches("[0-9]{1,9}");
        return index
                ? ((Arr) this).elements().stream().skip(Integer.parseInt(step)).findFirst()
                : Optional.empty();
    }

    /** An object, keys in the order of the file. */
    record Obj(Place place, Map<String, Member> members) implements Json {
        @Override
        public String type() {
            return "an object";
        }

        /** The text of a member, for messages; empty if it has none. */
        public String textOf(String key) {
            Member member = members.get(key);
            return member != null && member.value() instanceof Text text ? text.value() : "";
        }

        /** Where a member's key stands, or this object if it has no such key. */
        public Place placeOf(String key) {
            Member member = members.get(key);
            return member == null ? place : member.key();
        }
    }

    /**
     * A key with its value.
     *
     * @param key where the key stands
     */
    record Member(Place key, Json value) {}

    record Arr(Place place, List<Json> elements) implements Json {
        @Override
        public String type() {
            return "an array";
        }
    }

    record Text(Place place, String value) implements Json {
        @Override
        public String type() {
            return "a text";
        }
    }

    /** A number, as written. */
    record Num(Place place, String digits) implements Json {
        @Override
        public String type() {
            return "a number";
        }

        /** The nearest double; infinite if it is beyond all of them. */
        double value() {
            return Double.parseDouble(digits);
        }
    }

    record Flag(Place place, boolean value) implements Json {
        @Override
        public String type() {
            return value ? "true" : "false";
        }
    }

    record Nil(Place place) implements Json {
        @Override
        public String type() {
            return "null";
        }
    }
}
