package everyblade.core.finding.growth;

import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.RecordEntry;
import everyblade.core.turning.Fold;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What an engine has run, as a record states it.
 *
 * @param cycles as the fact {@code cycles} says
 * @param hours as the fact {@code hours} says
 */
public record Usage(Optional<BigDecimal> cycles, Optional<BigDecimal> hours) {

    /**
     * What was run between two records, in cycles if both state them, else in hours.
     *
     * @param number above 0
     * @param interval cycles or hours
     */
    public record Run(BigDecimal number, Interval interval) {}

    /** As the last facts of a record say; what is no number counts as not stated. */
    public static Usage of(Fold fold) {
        return new Usage(stated(fold, "cycles"), stated(fold, "hours"));
    }

    private static Optional<BigDecimal> stated(Fold fold, String name) {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .filter(logged -> logged.entry() instanceof RecordEntry.Fact fact
                        && fact.name().value().strip().equalsIgnoreCase(name))
                .reduce((earlier, later) -> later)
                .map(logged ->
                        ((RecordEntry.Fact) logged.entry()).value().strip().replace(',', '.'))
                .filter(text -> text.matches("[0-9]{1,12}(\\.[0-9]{1,6})?"))
                .map(BigDecimal::new);
    }

    /** What was run since an earlier record; empty if that cannot be told, or nothing was. */
    public Optional<Run> since(Usage earlier) {
        return run(cycles, earlier.cycles, Interval.CYCLES).or(() -> run(hours, earlier.hours, Interval.HOURS));
    }

    private static Optional<Run> run(Optional<BigDecimal> now, Optional<BigDecimal> then, Interval interval) {
        return now.flatMap(later -> then.map(later::subtract))
                .filter(number -> number.signum() > 0)
                .map(number -> new Run(number, interval));
    }
}
