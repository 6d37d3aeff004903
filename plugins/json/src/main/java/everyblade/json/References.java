package everyblade.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Follows the ids by which one part of a model names another. */
final class References {

    private References() {}

    /** The records by their ids, the first of those with the same one. */
    static <T> Map<String, T> byId(List<T> records, Function<T, String> idOf) {
        return records.stream()
                .collect(Collectors.toMap(idOf, one -> one, (first, second) -> first, LinkedHashMap::new));
    }

    /** The id at a key, if one is stated; an error if nothing has that id. */
    static Optional<String> ifStated(Fields fields, String key, String kind, Map<String, ?> there) {
        return fields.stated(key).map(json -> {
            find(fields, key, json, kind, there);
            return json instanceof Json.Text text ? text.value() : "";
        });
    }

    /** What the id at a key names; empty if nothing has that id, and the log has an error. */
    static <T> Optional<T> required(Fields fields, String key, String kind, Map<String, T> there) {
        return fields.required(key).flatMap(json -> find(fields, key, json, kind, there));
    }

    private static <T> Optional<T> find(Fields fields, String key, Json json, String kind, Map<String, T> there) {
        if (!(json instanceof Json.Text text)) {
            fields.wrongType(key, json, "the id of a " + kind);
            return Optional.empty();
        }
        Optional<T> found = Optional.ofNullable(there.get(text.value()));
        if (found.isEmpty()) {
            fields.log()
                    .error(
                            "unknown-reference",
                            json.place(),
                            Wording.quoted(key) + " of " + fields.subject() + " is " + Wording.quoted(text.value()),
                            "no " + kind + " has that id",
                            () -> Wording.didYouMean(
                                    text.value(), there.keySet(), "add the " + kind + " or name another"));
        }
        return found;
    }
}
