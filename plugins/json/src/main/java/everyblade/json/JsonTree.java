package everyblade.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes located values of the bytes of a file: strict JSON (RFC 8259) in UTF-8, within limits that keep a hostile file
 * from exhausting the machine. A key that stands twice in one object is an error, the first one counts.
 */
public final class JsonTree {

    /** Largest file, bytes. */
    public static final int LARGEST = 64 << 20;

    /** Deepest nesting of objects and arrays. */
    public static final int DEEPEST = 200;

    /** Longest number, characters. */
    public static final int LONGEST_NUMBER = 100;

    /** Most values in a file. */
    public static final int MOST_VALUES = 1_000_000;

    // Jackson's own limits lie beyond ours, so that ours speak first; without canonical names no table can overflow.
    private static final JsonFactory JACKSON = JsonFactory.builder()
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST + 2)
                    .maxNumberLength(LARGEST)
                    .maxStringLength(LARGEST)
                    .maxNameLength(LARGEST)
                    .build())
            .build();

    private final JsonParser parser;
    private final String what;
    private final ProblemLog log;
    private int values;

    private JsonTree(JsonParser parser, String what, ProblemLog log) {
        this.parser = parser;
        this.what = what;
        this.log = log;
    }

    /**
     * The value in the file; empty if there is none, and the log says why.
     *
     * @param what the file is to hold, for messages, such as "an engine model"
     */
    public static Optional<Json> parse(byte[] bytes, String what, ProblemLog log) {
        if (bytes.length > LARGEST) {
            log.error(
                    "too-large",
                    Place.START,
                    "the file is larger than 64 MB",
                    what + " is a small text",
                    "keep only what belongs in it; surfaces go into mesh files beside a model");
            return Optional.empty();
        }
        Optional<String> text = decode(bytes, what, log);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try (JsonParser parser = JACKSON.createParser(text.get())) {
            return Optional.of(new JsonTree(parser, what, log).whole());
        } catch (Stop stop) {
            log.error(stop.code, stop.place, stop.getMessage(), stop.why, stop.mend);
        } catch (JsonProcessingException e) {
            SyntaxFault fault = SyntaxFault.of(text.get(), e);
            log.error(fault.code(), placeOf(e), "this is not JSON", fault.why(), fault.mend());
        } catch (IOException e) {
            log.error("not-json", Place.START, "the text cannot be read", SyntaxFault.reason(e), "check the file");
        }
        return Optional.empty();
    }

    private Json whole() throws IOException, Stop {
        if (parser.nextToken() == null) {
            throw new Stop("empty-file", Place.START, "the file is empty", what + " is a JSON object", "write one");
        }
        Json json = value(null, "", 1);
        if (parser.nextToken() != null) {
            throw new Stop(
                    "text-after-end",
                    here(null, ""),
                    "something follows the end of " + what,
                    "a file holds one JSON value",
                    "delete what follows or correct the brackets");
        }
        return json;
    }

    private Json value(Place parent, String step, int depth) throws IOException, Stop {
        Place place = here(parent, step);
        if (++values > MOST_VALUES) {
            throw new Stop(
                    "too-many-values",
                    place,
                    "the file holds more than 1,000,000 values",
                    what + " is a small text",
                    "keep only what belongs in it; surfaces go into mesh files beside a model");
        }
        JsonToken token = parser.currentToken();
        if (token.isStructStart() && depth > DEEPEST) {
            throw new Stop(
                    "too-deep",
                    place,
                    "brackets are nested more than 200 deep",
                    what + " needs no such depth",
                    "correct the brackets");
        }
        return switch (token) {
            case START_OBJECT -> object(place, depth);
            case START_ARRAY -> array(place, depth);
            case VALUE_STRING -> new Json.Text(place, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place);
            case VALUE_TRUE, VALUE_FALSE -> new Json.Flag(place, token == JsonToken.VALUE_TRUE);
            default -> new Json.Nil(place);
        };
    }

    private Json number(Place place) throws IOException, Stop {
        String digits = parser.getText();
        if (digits.length() > LONGEST_NUMBER) {
            throw new Stop(
                    "long-number",
                    place,
                    "a number has more than 100 digits",
                    "no measure is that exact",
                    "write fewer digits");
        }
        return new Json.Num(place, digits);
    }

    private Json array(Place place, int depth) throws IOException, Stop {
        List<Json> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(place, Integer.toString(elements.size()), depth + 1));
        }
        return new Json.Arr(place, elements);
    }

    private Json object(Place place, int depth) throws IOException, Stop {
        Map<String, Json.Member> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            Place keyPlace = here(place, key);
            parser.nextToken();
            Json.Member first = members.putIfAbsent(key, new Json.Member(keyPlace, value(place, key, depth + 1)));
            if (first != null) {
                log.error(
                        "duplicate-key",
                        keyPlace,
                        "the key " + Wording.quoted(key) + " stands twice",
                        "its first value is in line " + first.key().line(),
                        "delete one of them");
            }
        }
        return new Json.Obj(place, members);
    }

    private Place here(Place parent, String step) {
        JsonLocation at = parser.currentTokenLocation();
        return new Place(parent, step, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }

    private static Place placeOf(JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        return at == null
                ? Place.START
                : new Place(null, "", Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }

    private static Optional<String> decode(byte[] bytes, String what, ProblemLog log) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer chars = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
        String text = chars.flip().toString();
        if (result.isError()) {
            List<String> lines =
                    text.replace("\r\n", "\n").replace('\r', '\n').lines().toList();
            boolean fresh = text.isEmpty() || text.endsWith("\n") || text.endsWith("\r");
            int line = lines.size() + (fresh ? 1 : 0);
            int column = fresh ? 1 : lines.get(lines.size() - 1).length() + 1;
            log.error(
                    "not-utf-8",
                    new Place(null, "", line, column),
                    "a byte here is not UTF-8",
                    what + " is UTF-8 text",
                    "save the file as UTF-8");
            return Optional.empty();
        }
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    /** Ends the reading of a file: what follows cannot be trusted. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1L;
        private final String code;
        private final transient Place place;
        private final String why;
        private final String mend;

        Stop(String code, Place place, String what, String why, String mend) {
            super(what, null, false, false);
            this.code = code;
            this.place = place;
            this.why = why;
            this.mend = mend;
        }
    }
}
