package everyblade.session.photo;

import everyblade.core.entry.DecimalComma;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a length with its uncertainty as people write it: {@code 38}, {@code 38 ± 0.2 mm}, {@code 1.5in±0.01}. */
public final class KnownLength {

    private static final String NUMBER = "([0-9]{1,9}(?:[.,][0-9]{1,9})?)";
    private static final String UNIT =
            Arrays.stream(LengthUnit.values()).map(LengthUnit::word).collect(Collectors.joining("|", "(", ")?"));
    private static final Pattern LENGTH = Pattern.compile(
            "\\s*" + NUMBER + "\\s*" + UNIT + "\\s*(?:(?:±|\\+-)\\s*" + NUMBER + "\\s*" + UNIT + ")?\\s*");

    private KnownLength() {}

    /** Empty if it is no length above 0, names two units, or has a comma that may stand before thousandths or hundreds. */
    public static Optional<Measured> of(String text) {
        Matcher matcher = LENGTH.matcher(text);
        if (!matcher.matches()
                || unsure(matcher.group(1))
                || unsure(matcher.group(3))
                || matcher.group(2) != null
                        && matcher.group(4) != null
                        && !matcher.group(2).equals(matcher.group(4))) {
            return Optional.empty();
        }
        String word = Optional.ofNullable(matcher.group(2)).orElse(matcher.group(4));
        LengthUnit unit = Optional.ofNullable(word).flatMap(LengthUnit::named).orElse(LengthUnit.MM);
        Length length = Length.of(number(matcher.group(1)), unit);
        return length.compareTo(Length.ZERO) > 0
                ? Optional.of(new Measured(
                        length, Optional.ofNullable(matcher.group(3)).map(said -> Length.of(number(said), unit))))
                : Optional.empty();
    }

    private static boolean unsure(String number) {
        return number != null && DecimalComma.doubt(number).isPresent();
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text.replace(',', '.'));
    }
}
