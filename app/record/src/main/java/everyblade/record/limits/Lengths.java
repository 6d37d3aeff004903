package everyblade.record.limits;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Length;
import everyblade.json.Fields;
import everyblade.json.Json;
import everyblade.json.Range;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Lengths and other numbers as they are written, exactly.
 *
 * @param unit of the file
 */
record Lengths(LengthUnit unit) {

    /** Most decimals, so that exact sums stay short. */
    private static final int DECIMALS = 12;

    /** The length at a key, if one is there. */
    Optional<Length> ifStated(Fields fields, String key) {
        return fields.stated(key)
                .flatMap(json -> exact(fields, key, json, Range.LENGTH))
                .map(number -> Length.of(number, unit));
    }

    /** The number, if it is one within the range; else the log has an error. */
    static Optional<BigDecimal> exact(Fields fields, String key, Json json, Range range) {
        long errors = fields.log().errorCount();
        fields.number(key, json, range);
        if (fields.log().errorCount() > errors || !(json instanceof Json.Num number)) {
            return Optional.empty();
        }
        BigDecimal value = new BigDecimal(number.digits());
        if (value.scale() > DECIMALS) {
            fields.log()
                    .error(
                            "out-of-range",
                            json.place(),
                            "\"" + key + "\" of " + fields.subject() + " has more than " + DECIMALS + " decimals",
                            "no measure is that exact",
                            "write fewer digits");
            return Optional.empty();
        }
        return Optional.of(value);
    }
}
