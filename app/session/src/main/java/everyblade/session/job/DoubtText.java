package everyblade.session.job;

import everyblade.core.doubt.Doubt;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Airfoils;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.util.BitSet;
import java.util.stream.Stream;

/** A doubt as a sentence: the window asks it, the command line warns by it. */
public final class DoubtText {

    private DoubtText() {}

    /** Its places are what one airfoil of the row is called, what several are, the row's id, and then the values. */
    public static String of(Words words, Doubt doubt) {
        Stream<Object> row = doubt.row()
                .map(of -> Stream.<Object>of(words.airfoil(of), words.airfoils(of), of.id()))
                .orElseGet(() -> Stream.of("", "", ""));
        Stream<Object> values = doubt.values().stream()
                .map(value -> doubt.row().map(of -> text(words, of, value)).orElseGet(() -> text(words, value)));
        return words.say(
                "doubt." + doubt.kind().word(), Stream.concat(row, values).toArray());
    }

    private static String text(Words words, Row row, Object value) {
        return value instanceof BitSet airfoils
                ? words.say(Airfoils.of(row, airfoils))
                : value instanceof ZoneSet zones ? words.say(ZonePhrase.of(Zoning.of(row), zones)) : text(words, value);
    }

    private static String text(Words words, Object value) {
        return value instanceof Double || value instanceof BigDecimal
                ? words.number(((Number) value).doubleValue(), 2)
                : value.toString();
    }
}
