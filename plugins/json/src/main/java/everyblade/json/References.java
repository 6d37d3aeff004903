package everyblade.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Follows the ids by which other parts of a model name those of one list. Where the list itself has mistakes that hide
 * an id, names that lead nowhere are passed over: they would only repeat that mistake.
 *
 * @param <T> what is in the list
 */
final class References<T> {

    private final String kind;
    private final String code;
    private final Map<String, T> byId = new LinkedHashMap<>();
    private final boolean complete;

    /**
     * @param kind what is in the list, for messages
     * @param code of the problem that a name leads nowhere
     * @param key of the list in the model
     * @param records the list as read, of equal ids the first one counts
     * @param needed whether the model has an error already if the list is empty
     */
    References(
            String kind,
            String code,
            Fields model,
            String key,
            List<T> records,
            Function<T, String> idOf,
            boolean needed) {
        this.kind = kind;
        this.code = code;
        records.forEach(one -> byId.putIfAbsent(idOf.apply(one), one));
        boolean readable = model.present(key)
                .map(json -> json instanceof Json.Arr array
                        && array.elements().stream().allMatch(Json.Obj.class::isInstance))
                .orElse(true);
        this.complete = readable && !byId.containsKey("") && !(needed && byId.isEmpty());
    }

    /** The first of the list; empty if there is none. */
    Optional<String> first() {
        return byId.keySet().stream().findFirst();
    }

    /** The id at a key, if one is stated; an error if nothing has that id. */
    Optional<String> ifStated(Fields fields, String key) {
        return fields.stated(key).map(json -> {
            find(fields, key, json);
            return json instanceof Json.Text text ? text.value() : "";
        });
    }

    /** What the id at a key names; empty if nothing has that id, and the log has an error. */
    Optional<T> required(Fields fields, String key) {
        return fields.required(key).flatMap(json -> find(fields, key, json));
    }

    private Optional<T> find(Fields fields, String key, Json json) {
        if (!(json instanceof Json.Text text)) {
            fields.wrongType(key, json, "the id of a " + kind);
            return Optional.empty();
        }
        Optional<T> found = Optional.ofNullable(byId.get(text.value()));
        if (found.isEmpty() && complete) {
            fields.log()
                    .unknown(
                            code,
                            json.place(),
                            Wording.quoted(key) + " of " + fields.subject() + " is " + Wording.quoted(text.value()),
                            "no " + kind + " has that id",
                            text.value(),
                            byId.keySet(),
                            "add the " + kind + " or name another");
        }
        return found;
    }
}
