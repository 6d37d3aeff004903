package everyblade.picture.report;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A signature of the record, as the report shows it.
 *
 * @param number in the order in which they were made
 * @param inspector whether it is of who did the inspection, and not of who went through the record
 * @param told what it says, such as {@code inspected by}
 * @param name of who signed
 * @param licence kind and number
 * @param at when, as they say; UTC
 * @param because why, if they say so
 * @param covers how many entries
 * @param after how many came after them
 * @param key fingerprint of the key that made it
 * @param wrong why it counts for nothing; none if it is sound
 */
public record SignedAccount(
        int number,
        boolean inspector,
        String told,
        String name,
        Optional<String> licence,
        Optional<Instant> at,
        Optional<String> because,
        int covers,
        int after,
        String key,
        List<String> wrong) {

    private static final int SHORT = 12;

    /** The key as it stands in a table; the whole of it stands under How to check this report. */
    String shortKey() {
        return key.length() > SHORT ? key.substring(0, SHORT) + "…" : key;
    }
}
