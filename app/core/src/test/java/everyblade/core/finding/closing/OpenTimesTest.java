package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.closing.TimeProblem.Later;
import everyblade.core.finding.closing.TimeProblem.LongAfter;
import everyblade.core.finding.closing.TimeProblem.OneTimeOnly;
import everyblade.core.finding.closing.TimeProblem.TooSoon;
import everyblade.core.finding.closing.TimeProblem.Unit;
import everyblade.core.finding.closing.TimeProblem.Untimed;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How soon after the one before an entry may come, how late it may be typed, and what of its time is told. */
class OpenTimesTest {

    private static ToldRecord record() {
        return new ToldRecord(PlantedFaults.engine()).enter("open p1", "view v", "datum c1 1");
    }

    private static List<OpenItem> times(ToldRecord record) {
        return new OpenTimes(record.fold(), record.coverage()).items();
    }

    private static <T extends TimeProblem> List<T> problems(ToldRecord record, Class<T> kind) {
        return times(record).stream()
                .map(OpenItem::what)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** Nobody turns a shaft by hand faster than 60° a second while watching, or 180° otherwise. */
    @ParameterizedTest
    @CsvSource({
        "turn on 120, 2000, false",
        "turn on 120, 1999, true",
        "turn back 120, 1999, true",
        "skip on 180, 1000, false",
        "skip on 180, 999, true",
        "skip on 180, 0, true",
        "turn on 30 in 60s, 43000, false",
        "turn on 30 in 60s, 42999, true",
        "turn on 120 in 3s, 2000, false",
        "turn on 120 in 3s, 1999, true",
        "note well, 0, false"
    })
    void aMoveTakesAsLongAsATurnByHandAndMostOfWhatIsSaid(String line, long milliseconds, boolean tooSoon) {
        ToldRecord record =
                record().after(Duration.ofMillis(milliseconds)).at(line).enter("note on");
        assertThat(problems(record, TooSoon.class)).hasSize(tooSoon ? 1 : 0);
    }

    @Test
    void whatComesTooSoonIsToldAfterTheEntryThatCountsBeforeIt() {
        ToldRecord record = record().enter("note so far")
                .after(Duration.ofSeconds(2))
                .at("note so much")
                .after(Duration.ofSeconds(1))
                .at("round 1")
                .enter("void 5 because said twice", "note on");
        assertThat(problems(record, TooSoon.class)).singleElement().satisfies(soon -> {
            assertThat(soon.first()).isEqualTo(new EntryLine(6, "round 1"));
            assertThat(soon.before()).isEqualTo(4);
            assertThat(soon.seconds()).isEqualByComparingTo("3");
        });
    }

    @ParameterizedTest
    @CsvSource({"13, 13, HOURS", "47, 47, HOURS", "48, 2, DAYS", "71, 2, DAYS", "72, 3, DAYS"})
    void howLongAfterIsToldInHoursUpToTwoDays(long hours, long number, Unit unit) {
        ToldRecord record = record().typed(Duration.ofHours(hours)).enter("note later");
        assertThat(problems(record, LongAfter.class))
                .singleElement()
                .satisfies(late -> assertThat(late.later()).isEqualTo(new Later(number, unit)));
    }

    @Test
    void whatIsTypedWithinTheShiftIsNotLate() {
        assertThat(problems(record().typed(Duration.ofHours(12)).enter("note later"), LongAfter.class))
                .isEmpty();
    }

    /** The round says how long it took, the turn after it does not. */
    @Test
    void watchingIsToldAsUntimedWhereABladeIsToBeInViewForSoLongAndNobodySaysHowLong() {
        ToldRecord record = new ToldRecord(PlantedFaults.engine())
                .leastView("0.5")
                .typed(Duration.ZERO)
                .enter("open p1", "view v", "datum c1 1", "round 1 in 60s", "turn on 30", "note on");
        assertThat(problems(record, Untimed.class)).singleElement().satisfies(untimed -> {
            assertThat(untimed.count()).isEqualTo(1);
            assertThat(untimed.entries()).isEqualTo(new EntryNumbers(List.of(5), 0));
            assertThat(untimed.seconds()).isEqualByComparingTo(new BigDecimal("0.5"));
        });
        assertThat(problems(record().typed(Duration.ZERO).enter("turn on 30"), Untimed.class))
                .isEmpty();
    }

    @Test
    void entriesThatKeepOneTimeAreToldAndNotOpen() {
        ToldRecord record = record().undated("note old").live().enter("note new");
        assertThat(times(record)).singleElement().satisfies(item -> {
            assertThat(item.kind()).isEqualTo(Kind.TIME);
            assertThat(item.open()).isFalse();
            assertThat(item.what()).isEqualTo(new OneTimeOnly(new EntryNumbers(List.of(4), 0)));
        });
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 0", "3, 3, 0", "4, 3, 1", "9, 3, 6"})
    void ofManyEntriesTheFirstThreeAreNamed(int entries, int named, int more) {
        ToldRecord record = new ToldRecord(PlantedFaults.engine());
        for (int i = 0; i < entries; i++) {
            record.enter("note " + i);
        }
        EntryNumbers numbers = EntryNumbers.of(record.fold().entries());
        assertThat(numbers.numbers()).isEqualTo(List.of(1, 2, 3).subList(0, named));
        assertThat(numbers.more()).isEqualTo(more);
    }
}
