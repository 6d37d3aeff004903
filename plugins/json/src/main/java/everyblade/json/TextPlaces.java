package everyblade.json;

import java.util.Optional;

/** Tells where the values of a JSON text stand, by their JSON pointers (RFC 6901). Never changes. */
public final class TextPlaces {

    private final Optional<Json> whole;

    private TextPlaces(Optional<Json> whole) {
        this.whole = whole;
    }

    /** The places of a text; of one that is no JSON, every place is its beginning. */
    public static TextPlaces of(byte[] text) {
        return new TextPlaces(JsonTree.parse(text, "the file", new ProblemLog("")));
    }

    /**
     * The problem of a value, or of the nearest thing around it that the text has.
     *
     * @param file its name, for messages
     * @param pointer of the value
     */
    public Problem problem(
            String code, Severity severity, String file, String pointer, String what, String why, String mend) {
        Place place = whole.map(json -> json.placeAt(pointer)).orElse(Place.START);
        return new Problem(
                code, severity, file, place.line(), place.column(), place.pointer(), what, why, mend, Optional.empty());
    }
}
