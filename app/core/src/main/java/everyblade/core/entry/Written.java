package everyblade.core.entry;

import everyblade.core.entry.Entry.Airfoils;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Entry.Size;
import everyblade.core.entry.Entry.Through;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How values stand in the line of an entry; what may be left out begins with a space where it is said. */
final class Written {

    private static final String QUOTE = "\"";

    private Written() {}

    /** In double quotes where it would not be read as one word. */
    static String name(String name) {
        return TypedText.isOneWord(name) ? name : quoted(name);
    }

    /** What ends a line: bare wherever it can be. */
    static String nameToEnd(String name) {
        boolean bare = !name.startsWith(QUOTE)
                && !TypedText.isSpace(name.codePointAt(0))
                && !TypedText.isSpace(name.codePointBefore(name.length()));
        return bare ? name : quoted(name);
    }

    /** The word of an enum's constant. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static String movement(Said<Movement> said) {
        Movement movement = said.value();
        if (movement instanceof Movement.By by) {
            String unit = by.unit() == Unit.DEG ? "" : " " + by.unit().word();
            return sense(by.sense()) + number(by.number()) + unit + plusMinus(by.plusMinus());
        }
        Movement.To to = (Movement.To) movement;
        return sense(to.sense()) + "to " + number(to.angle()) + plusMinus(to.plusMinus());
    }

    static String sense(Optional<Sense> sense) {
        return sense.map(which -> word(which) + " ").orElse("");
    }

    static String number(BigDecimal number) {
        return number.toPlainString();
    }

    static String plusMinus(Optional<BigDecimal> plusMinus) {
        return plusMinus.map(number -> " \u00b1 " + number(number)).orElse("");
    }

    static String seconds(Optional<BigDecimal> seconds) {
        return seconds.map(number -> " in " + number(number) + "s").orElse("");
    }

    static String through(Optional<Through> through) {
        return through.map(way -> " through " + name(way.from()) + " " + name(way.to()))
                .orElse("");
    }

    static String size(Size size) {
        return size.length().map(number -> " length " + number(number)).orElse("")
                + size.depth().map(number -> " depth " + number(number)).orElse("")
                + size.width().map(number -> " width " + number(number)).orElse("")
                + plusMinus(size.plusMinus())
                + (size.unit() == LengthUnit.MM ? "" : " " + size.unit().word());
    }

    static String airfoils(Airfoils airfoils) {
        if (airfoils.first().isEmpty() || airfoils.last().isEmpty()) {
            return "all";
        }
        int first = airfoils.first().get().value();
        int last = airfoils.last().get().value();
        return first == last ? Integer.toString(first) : first + "-" + last;
    }

    static String because(String reason) {
        return " because " + reason;
    }

    static String after(String text) {
        return text.isEmpty() ? "" : " " + text;
    }

    static String row(Optional<Said<String>> row) {
        return row.map(id -> (startsWithDigit(id.value()) ? quoted(id.value()) : name(id)) + " ")
                .orElse("");
    }

    static boolean startsWithDigit(String text) {
        return text.charAt(0) >= '0' && text.charAt(0) <= '9';
    }

    static String names(List<Said<String>> names) {
        return names.stream().map(Written::name).collect(Collectors.joining(" "));
    }

    static String zones(Said<String> zones) {
        return Arrays.stream(zones.value().split(" and ", -1))
                .map(Written::name)
                .collect(Collectors.joining(" and "));
    }

    static String name(Said<String> name) {
        return name(name.value());
    }

    static String nameBeforeHeld(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith("held") ? quoted(name) : nameToEnd(name);
    }

    static String quoted(String text) {
        return QUOTE + text.replace(QUOTE, QUOTE + QUOTE) + QUOTE;
    }
}
