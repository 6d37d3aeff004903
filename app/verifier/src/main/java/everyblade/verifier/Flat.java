package everyblade.verifier;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** JSON (RFC 8259) laid flat: the text of each value by its path, such as {@code rows.0.id}; null is left out. */
final class Flat {

    private static final Pattern TOKEN = Pattern.compile("\\s*+([\\[\\]{},:]|true|false|null"
            + "|\"(?:[^\"\\\\\\x00-\\x1f]|\\\\[\"\\\\/bfnrt]|\\\\u[0-9a-fA-F]{4})*+\""
            + "|-?(?:0|[1-9][0-9]*+)(?:\\.[0-9]++)?(?:[eE][+-]?[0-9]{1,3})?)\\s*+");

    private final Map<String, String> values = new LinkedHashMap<>();
    private final String text;
    private int at;

    private Flat(String text) {
        this.text = text;
    }

    /** The values of an object; fails with an IllegalArgumentException if it is none, or says something twice. */
    static Map<String, String> of(byte[] utf8) throws CharacterCodingException {
        Flat flat = new Flat(StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(utf8))
                .toString());
        flat.require(flat.token().equals("{"));
        flat.inside("", "}", 0);
        flat.require(flat.at == flat.text.length());
        return flat.values;
    }

    private void inside(String path, String closing, int depth) {
        require(depth < 50);
        String token = token();
        for (int i = 0; !token.equals(closing); i++) {
            boolean named = closing.equals("}");
            String place = path + (named ? unquoted(token) : "" + i);
            require(!named || token.startsWith("\"") && token().equals(":"));
            String value = named ? token() : token;
            require(values.put(place, "") == null);
            switch (value) {
                case "{" -> inside(place + ".", "}", depth + 1);
                case "[" -> inside(place + ".", "]", depth + 1);
                case "null" -> values.remove(place);
                default -> values.put(place, value.startsWith("\"") ? unquoted(value) : value);
            }
            token = token();
            require(token.equals(closing) || token.equals(","));
            token = token.equals(",") ? token() : token;
        }
    }

    private String token() {
        Matcher token = TOKEN.matcher(text).region(at, text.length());
        require(token.lookingAt());
        at = token.end();
        return token.group(1);
    }

    private static String unquoted(String token) {
        String text = token.substring(1, token.length() - 1);
        for (int at = text.indexOf('\\'); at >= 0; at = text.indexOf('\\', at + 1)) {
            boolean coded = text.charAt(at + 1) == 'u';
            int letter = "\"\\/bfnrt".indexOf(text.charAt(at + 1));
            int code = coded ? Integer.parseInt(text.substring(at + 2, at + 6), 16) : "\"\\/\b\f\n\r\t".charAt(letter);
            text = text.substring(0, at) + (char) code + text.substring(at + (coded ? 6 : 2));
        }
        return text;
    }

    private void require(boolean holds) {
        if (!holds) {
            throw new IllegalArgumentException("it is no JSON object, or says something twice, at character " + at);
        }
    }
}
