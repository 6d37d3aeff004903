package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.ShapedEngine;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.spi.RowKind;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
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
    void whatWasEnteredLiveTookNoLongerThanSinceTheEntryBefore() throws Refusal {
        assertThat(took(true, 2500)).hasValue(2.5);
        assertThat(took(true, -1)).as("though the clock ran back").hasValue(0);
        assertThat(took(false, 2500)).isEmpty();
    }

    /** A look at a row whose place the maker fixes, as the second entry. */
    private static OptionalDouble took(boolean live, long milliseconds) throws Refusal {
        Situation now = Fold.start(new ShapedEngine()
                        .row("s", RowKind.STATOR, 20, 35, 60, OptionalDouble.of(15))
                        .window("w", "s", 5)
                        .built())
                .with(new Logged(1, NOON, "A", live, "view w", EntryParser.parse("view w")))
                .with(new Logged(2, NOON.plusMillis(milliseconds), "A", live, "look", EntryParser.parse("look")))
                .situation();
        return now.legsOf(now.engine().rows().get("s")).get(0).seconds();
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
