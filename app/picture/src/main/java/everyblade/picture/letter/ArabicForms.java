package everyblade.picture.letter;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Joins Arabic letters: each becomes the presentation form that it has between its neighbours (The Unicode Standard 15,
 * section 9.2, "Arabic Cursive Joining"), for fonts that are used letter by letter. The forms are those that Unicode
 * itself has, blocks FB50 to FDFF and FE70 to FEFF, found by their names.
 */
public final class ArabicForms {

    private static final int LAM = 0x644;
    private static final int TATWEEL = 0x640;

    /** In this order Unicode's names of forms are looked for. */
    private enum Form {
        ISOLATED,
        FINAL,
        INITIAL,
        MEDIAL
    }

    /** What stands for a letter, or for lam and an alef, in each form that there is. */
    private final Map<String, Map<Form, Integer>> forms = new HashMap<>();

    /** Looks for the forms by their names. */
    public ArabicForms() {
        for (int sign = 0xFB50; sign <= 0xFEFC; sign++) {
            String name = Character.isDefined(sign) ? Character.getName(sign) : "";
            boolean letter = name.startsWith("ARABIC LETTER ") || name.startsWith("ARABIC LIGATURE LAM WITH ALEF");
            if (letter) {
                int meant = sign;
                form(name)
                        .ifPresent(form -> forms.computeIfAbsent(
                                        Normalizer.normalize(Character.toString(meant), Normalizer.Form.NFKC),
                                        base -> new HashMap<>())
                                .putIfAbsent(form, meant));
            }
        }
    }

    private static Optional<Form> form(String name) {
        for (Form form : Form.values()) {
            if (name.endsWith(" " + form + " FORM")) {
                return Optional.of(form);
            }
        }
        return Optional.empty();
    }

    /** Whether there is anything to join in a text. */
    public static boolean concerns(String text) {
        return text.codePoints().anyMatch(sign -> Character.UnicodeScript.of(sign) == Character.UnicodeScript.ARABIC);
    }

    /** The text with its letters joined, still in the order in which it is read. */
    public String joined(String text) {
        int[] signs = text.codePoints().toArray();
        StringBuilder result = new StringBuilder();
        for (int i = 0; i < signs.length; i++) {
            String letter = Character.toString(signs[i]);
            int last = i;
            if (signs[i] == LAM
                    && i + 1 < signs.length
                    && forms.containsKey(letter + Character.toString(signs[i + 1]))) {
                last = i + 1;
                letter += Character.toString(signs[last]);
            }
            boolean before = joinsOn(neighbour(signs, i, -1));
            boolean after = forms.getOrDefault(letter, Map.of()).containsKey(Form.INITIAL)
                    && joinsBack(neighbour(signs, last, 1));
            Form form = before ? (after ? Form.MEDIAL : Form.FINAL) : after ? Form.INITIAL : Form.ISOLATED;
            Integer shown = forms.getOrDefault(letter, Map.of()).get(form);
            result.append(shown == null ? letter : Character.toString(shown));
            i = last;
        }
        return result.toString();
    }

    /** The sign beside that counts: marks above and below are passed over; 0 at the end. */
    private static int neighbour(int[] signs, int at, int step) {
        int i = at + step;
        while (i >= 0 && i < signs.length && Character.getType(signs[i]) == Character.NON_SPACING_MARK) {
            i += step;
        }
        return i >= 0 && i < signs.length ? signs[i] : 0;
    }

    private boolean joinsOn(int sign) {
        return sign == TATWEEL
                || forms.getOrDefault(Character.toString(sign), Map.of()).containsKey(Form.INITIAL);
    }

    private boolean joinsBack(int sign) {
        return sign == TATWEEL
                || forms.getOrDefault(Character.toString(sign), Map.of()).containsKey(Form.FINAL);
    }
}
