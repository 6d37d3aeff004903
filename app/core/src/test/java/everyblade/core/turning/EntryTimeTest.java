package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.RecordEntry;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be said of the time of an entry. */
class EntryTimeTest {

    private static final Instant NOON = Instant.parse("2026-03-01T12:00:00Z");
    private static final Instant FIRST = Instant.parse("1980-01-01T00:00:00Z");

    private static Logged logged(Instant at, boolean live, Optional<Instant> written) {
        return new Logged(1, at, "A", live, "note x", new RecordEntry.Note("x"), written);
    }

    @Test
    void nothingIsToldOfATimeBetweenTheOneBeforeAndNow() {
        assertThat(EntryTime.doubts(NOON, NOON, NOON)).isEmpty();
        assertThat(EntryTime.doubts(NOON, NOON.minusSeconds(60), NOON.plusSeconds(60)))
                .isEmpty();
    }

    @Test
    void aTimeBeforeTheOneBeforeIsTold() {
        assertThat(EntryTime.doubts(NOON.minusSeconds(1), NOON, NOON))
                .containsExactly(new TimeWarning.Earlier("2026-03-01T11:59:59Z", "2026-03-01T12:00:00Z"));
    }

    @Test
    void aTimeToComeIsToldOnceARun() {
        Instant late = NOON.plusSeconds(301);
        assertThat(EntryTime.doubts(late, NOON, NOON))
                .containsExactly(new TimeWarning.ToCome("2026-03-01T12:05:01Z", "2026-03-01T12:00:00Z"));
        assertThat(EntryTime.doubts(NOON.plusSeconds(300), NOON, NOON)).isEmpty();
        assertThat(EntryTime.doubts(late, late, NOON)).isEmpty();
    }

    @Test
    void aTimeBeforeAnySuchRecordIsToldOnceARun() {
        Instant before = FIRST.minusSeconds(1);
        assertThat(EntryTime.doubts(before, FIRST, NOON))
                .contains(new TimeWarning.LongAgo("1979-12-31T23:59:59Z"))
                .hasSize(2);
        assertThat(EntryTime.doubts(before, before, NOON)).isEmpty();
        assertThat(EntryTime.doubts(FIRST, FIRST, NOON)).isEmpty();
    }

    @Test
    void somebodySaysWhenItWasIfItWasLiveOrADifferentTimeWasGiven() {
        assertThat(EntryTime.isClaimed(logged(NOON, true, Optional.of(NOON)))).isTrue();
        assertThat(EntryTime.isClaimed(logged(NOON, false, Optional.of(NOON)))).isFalse();
        assertThat(EntryTime.isClaimed(logged(NOON, false, Optional.of(NOON.plusSeconds(9)))))
                .isTrue();
        assertThat(EntryTime.isClaimed(logged(NOON, false, Optional.empty()))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1234, 1.234", "-1500, -1.5", "86400001, 86400.001"})
    void secondsAreCountedToTheMillisecond(long milliseconds, double seconds) {
        assertThat(EntryTime.seconds(NOON, NOON.plusMillis(milliseconds))).isEqualTo(seconds);
    }

    @Test
    void twelveHoursAreAShiftAndMoreIsLongAfter() {
        assertThat(EntryTime.isLongAfter(NOON, NOON.plus(Duration.ofHours(12)))).isFalse();
        assertThat(EntryTime.isLongAfter(NOON, NOON.plus(Duration.ofHours(12)).plusMillis(1)))
                .isTrue();
        assertThat(EntryTime.isLongAfter(NOON, NOON.minusSeconds(1))).isFalse();
    }

    @Test
    void theClockRanBackWhereBothSayWhenTheyWereTypedAndTheSecondEarlier() {
        Logged first = logged(NOON, false, Optional.of(NOON));
        assertThat(EntryTime.clockRanBack(first, logged(NOON, false, Optional.of(NOON.minusMillis(1)))))
                .isTrue();
        assertThat(EntryTime.clockRanBack(first, logged(NOON, false, Optional.of(NOON))))
                .isFalse();
        assertThat(EntryTime.clockRanBack(first, logged(NOON, false, Optional.empty())))
                .isFalse();
        assertThat(EntryTime.clockRanBack(logged(NOON, false, Optional.empty()), first))
                .isFalse();
    }
}
