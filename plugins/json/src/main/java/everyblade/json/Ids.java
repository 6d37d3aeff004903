package everyblade.json;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The ids of one list of an engine model: each begins with an ASCII letter, goes on with letters, digits, hyphens,
 * underscores and dots, is at most 64 long, differs from the others by more than case, and is no word that an entry
 * would take for something else.
 */
final class Ids {

    private static final Pattern SYNTAX = Pattern.compile("[A-Za-z][A-Za-z0-9._-]{0,63}");

    /** Words that join the parts of an entry. */
    static final Set<String> JOINING = words("""
            all at back because by from held in of on out photo through to with
            """);

    /** Words that may stand first in an entry, where a row's id may stand too, or name a zone. */
    static final Set<String> OPENING = words("""
            view at watch in clear turn skip round look draw feed pad datum here slip find recheck
            photo saw noaccess ask open shut tool lost vanes heat proof condition fact refer again
            pause handover takeover settle void note nick dent crack tear missing burn erosion rub
            coating deposit corrosion curl bow bulge hole spatter discolour loose other root tip
            pressure suction concave convex leading middle trailing outer inner forward aft
            """);

    private static Set<String> words(String text) {
        return Set.of(text.strip().split("\\s+"));
    }

    private final String kind;
    private final Set<String> reserved;
    private final Map<String, Place> taken = new HashMap<>();

    /**
     * @param kind what carries these ids, for messages
     * @param reserved lower-case words that are refused besides {@link #JOINING}
     */
    Ids(String kind, Set<String> reserved) {
        this.kind = kind;
        this.reserved = reserved;
    }

    /** Whether a text can be an id, taken alone. */
    static boolean isFit(String id, Set<String> reserved) {
        String folded = id.toLowerCase(Locale.ROOT);
        return SYNTAX.matcher(id).matches() && !JOINING.contains(folded) && !reserved.contains(folded);
    }

    /** The id of an object that must have one. */
    String required(Fields fields) {
        return fields.required("id")
                .map(json -> checked(fields.log(), json.place(), fields.text("id", json)))
                .orElse("");
    }

    /** The id of an object, or this one if none is written. */
    String orElse(Fields fields, String otherwise) {
        return checked(fields.log(), fields.place("id"), fields.text("id", otherwise));
    }

    /** The same id, if it will do; else the log has an error. */
    String checked(ProblemLog log, Place place, String id) {
        String folded = id.toLowerCase(Locale.ROOT);
        Place first = taken.putIfAbsent(folded, place);
        if (id.isBlank()) {
            return id;
        }
        if (!SYNTAX.matcher(id).matches()) {
            log.error(
                    "bad-id",
                    place,
                    Wording.quoted(id) + " is no id for a " + kind,
                    "ids begin with a letter and go on with at most 63 letters, digits, hyphens, underscores and dots",
                    "choose another id");
        } else if (!isFit(id, reserved)) {
            log.error(
                    "reserved-id",
                    place,
                    Wording.quoted(id) + " is no id for a " + kind,
                    "entries use the word for something else",
                    "choose another id");
        } else if (first != null) {
            log.error(
                    "duplicate-id",
                    place,
                    "a second " + kind + " has the id " + Wording.quoted(id),
                    "the first is in line " + first.line() + " and entries could not tell them apart",
                    "give one of them another id");
        }
        return id;
    }
}
