package everyblade.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.fact.Fact;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** JSON as commands print it: one value, indented, numbers in plain digits. */
final class JsonText {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final int SHARE_DIGITS = 4;
    private static final BigDecimal NEARLY_ALL = BigDecimal.ONE.subtract(BigDecimal.valueOf(1, SHARE_DIGITS));
    private static final double ROUNDING = 1e-9;
    private static final int DEGREE_DIGITS = 5;
    private static final BigDecimal TURN = BigDecimal.valueOf(360);

    private JsonText() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** The text, without a newline at its end. */
    static String of(JsonNode value) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        try {
            return MAPPER.writer(printer).writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of JSON can always be written", impossible);
        }
    }

    /** A word out of a fixed set, the same in every language, for programs to know it again. */
    static String token(Fact fact) {
        return Words.of(Locale.ENGLISH).say(fact);
    }

    /** A part of a whole, to four decimals; one only if nothing is missing. */
    static BigDecimal share(int part, int whole) {
        if (whole == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal share =
                BigDecimal.valueOf(part).divide(BigDecimal.valueOf(whole), SHARE_DIGITS, RoundingMode.HALF_EVEN);
        return part < whole ? share.min(NEARLY_ALL) : share;
    }

    /** A share from 0 to 1, to four decimals; one only if nothing is missing but rounding. */
    static BigDecimal share(double share) {
        BigDecimal rounded = BigDecimal.valueOf(share).setScale(SHARE_DIGITS, RoundingMode.HALF_EVEN);
        return share < 1 - ROUNDING ? rounded.min(NEARLY_ALL) : rounded;
    }

    /** A share from 0 to 1 that is missing, to four decimals; zero only if nothing is missing but rounding. */
    static BigDecimal rest(double share) {
        return BigDecimal.valueOf(Math.max(0, share - ROUNDING)).setScale(SHARE_DIGITS, RoundingMode.CEILING);
    }

    /** Degrees to five decimals. */
    static BigDecimal degrees(double degrees) {
        return plain(BigDecimal.valueOf(degrees).setScale(DEGREE_DIGITS, RoundingMode.HALF_EVEN));
    }

    /** A position on the circle, degrees to five decimals, from 0 to less than 360. */
    static BigDecimal position(double degrees) {
        BigDecimal rounded = degrees(degrees);
        return rounded.compareTo(TURN) < 0 ? rounded : plain(rounded.subtract(TURN));
    }

    private static BigDecimal plain(BigDecimal number) {
        return number.signum() == 0 ? new BigDecimal("0.0") : number.stripTrailingZeros();
    }
}
