package everyblade.record;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is fixed when a job starts, and never changes after.
 *
 * @param at when it started, UTC, cut to milliseconds
 * @param by who started it
 * @param model id of the engine model
 * @param serial number of the engine
 * @param task what was to be done, in words
 * @param settings by name, sorted; each in the unit of its name
 * @param previous the job that this one is compared with
 */
public record Beginning(
        Instant at,
        String by,
        String model,
        String serial,
        String task,
        SortedMap<String, BigDecimal> settings,
        Optional<String> previous) {

    public Beginning {
        at = at.truncatedTo(ChronoUnit.MILLIS);
        settings = Collections.unmodifiableSortedMap(new TreeMap<>(settings));
    }
}
