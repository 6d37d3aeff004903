package everyblade.json;

import java.util.List;

/**
 * A record of the model with the object that it was read from; null for what is there by default.
 *
 * @param <T> type of the record
 */
record Located<T>(T value, Json.Obj from) {

    static <T> List<T> values(List<Located<T>> located) {
        return located.stream().map(Located::value).toList();
    }
}
