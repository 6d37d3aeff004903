package everyblade.fact;

import java.time.Instant;

/** The years that calendars, charts and people can hold. */
public final class CalendarYears {

    private static final Instant EARLIEST = Instant.parse("0001-01-02T00:00:00Z");
    private static final Instant LATEST = Instant.parse("9999-12-30T00:00:00Z");

    private CalendarYears() {}

    /** The same time, or the nearest one within the years 1 to 9999. */
    public static Instant within(Instant at) {
        return at.isBefore(EARLIEST) ? EARLIEST : at.isAfter(LATEST) ? LATEST : at;
    }
}
