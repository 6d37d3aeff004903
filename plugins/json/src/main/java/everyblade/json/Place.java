package everyblade.json;

/**
 * Where a value begins in its file.
 *
 * @param parent of what holds the value; null for the whole file
 * @param step key or index within the parent; empty for the whole file
 * @param line from 1
 * @param column from 1
 */
public record Place(Place parent, String step, int line, int column) {

    /** The beginning of the file. */
    public static final Place START = new Place(null, "", 1, 1);

    /** JSON pointer (RFC 6901). */
    public String pointer() {
        StringBuilder pointer = new StringBuilder();
        for (Place place = this; place.parent != null; place = place.parent) {
            pointer.insert(0, "/" + place.step.replace("~", "~0").replace("/", "~1"));
        }
        return pointer.toString();
    }
}
