package everyblade.core.finding.photo;

import everyblade.core.entry.RecordEntry;
import everyblade.core.turning.Fold;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * The clock of the camera: what it shows is so far ahead of UTC.
 *
 * @param ahead difference, at most 18 hours either way
 */
record CameraClock(ZoneOffset ahead) {

    /** Name of the fact that says how far the camera's clock is ahead of UTC, such as {@code +02:00} or {@code -00:03:20}. */
    public static final String FACT = "camera clock";

    /** As the last fact of that name says; UTC if none does that can be read. */
    static CameraClock of(Fold fold) {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .flatMap(logged -> logged.entry() instanceof RecordEntry.Fact fact
                                && fact.name().value().strip().equalsIgnoreCase(FACT)
                        ? difference(fact.value().strip()).stream()
                        : java.util.stream.Stream.empty())
                .reduce((earlier, later) -> later)
                .map(CameraClock::new)
                .orElse(new CameraClock(ZoneOffset.UTC));
    }

    private static Optional<ZoneOffset> difference(String text) {
        try {
            return Optional.of(ZoneOffset.of(text));
        } catch (DateTimeException noDifference) {
            return Optional.empty();
        }
    }

    /**
     * When a picture was taken, UTC.
     *
     * @param written by the camera: ISO 8601 date and time; a difference from UTC that it wrote itself goes before ours
     * @return empty if it is no such time
     */
    Optional<Instant> taken(String written) {
        try {
            return Optional.of(OffsetDateTime.parse(written).toInstant());
        } catch (DateTimeException noDifference) {
            // then by our own
        }
        try {
            return Optional.of(LocalDateTime.parse(written).toInstant(ahead));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }
}
