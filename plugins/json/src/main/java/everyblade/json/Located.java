package everyblade.json;

import java.util.List;

/**
 * A record of the model with the object that it was read from.
 *
 * @param <T> type of the record
 * @param value the record
 * @param from null for what is there by default
 * @param sound whether it was read without a mistake; else parts of it are stand-ins
 */
record Located<T>(T value, Json.Obj from, boolean sound) {

    static <T> List<T> values(List<Located<T>> located) {
        return located.stream().map(Located::value).toList();
    }
}
