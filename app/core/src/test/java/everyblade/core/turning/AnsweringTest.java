package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** For which entries that are no question a person may answer by {@code settle}. */
class AnsweringTest {

    private static final Instant NOON = Instant.parse("2026-03-01T12:00:00Z");

    private static Job job() {
        return new Job(Engines.of(12, 2))
                .enter("view v", "datum c1 1", "note quiet", "skip on 30", "void 4 because not so");
    }

    private static boolean maySettle(Job job, int number) {
        try {
            job.tryEnter("settle " + number + " because I looked");
            return true;
        } catch (Refusal nothingToSettle) {
            return false;
        }
    }

    @Test
    void forAViewOrAnIdentificationAndNotForANote() {
        assertThat(maySettle(job(), 1)).isTrue();
        assertThat(maySettle(job(), 2)).isTrue();
        assertThat(maySettle(job(), 3)).isFalse();
    }

    @Test
    void notForWhatIsVoidOrStillToCome() {
        assertThat(maySettle(job(), 4)).isFalse();
        assertThat(maySettle(job(), 6)).isFalse();
        assertThat(maySettle(job(), 7)).isFalse();
    }

    /** Its time is odd, so that it would be a question if it were another entry. */
    @Test
    void notForTheAnswerItself() throws Refusal {
        Fold fold = noted(NOON, Optional.of(NOON));
        Logged settle = line(3, NOON.minusSeconds(1), Optional.of(NOON), "settle 3 because of the clock");

        assertThatThrownBy(() -> fold.with(settle)).isInstanceOf(Refusal.class);
    }

    private static Fold noted(Instant at, Optional<Instant> written) throws Refusal {
        Fold fold = Fold.start(Engines.of(12, 2));
        fold = fold.with(line(1, NOON, Optional.of(NOON), "note first"));
        return fold.with(line(2, at, written, "note second"));
    }

    private static Logged line(int number, Instant at, Optional<Instant> written, String text) throws Refusal {
        return new Logged(number, at, "A", false, text, EntryParser.parse(text), written);
    }

    private static void settles(Fold fold, boolean may) throws Refusal {
        Logged settle = line(3, NOON, Optional.of(NOON.plusSeconds(60)), "settle 2 because of the clock");
        if (may) {
            assertThat(fold.with(settle).warnings()).isNotEmpty();
        } else {
            assertThatThrownBy(() -> fold.with(settle)).isInstanceOf(Refusal.class);
        }
    }

    @Test
    void forANoteWhoseTimeIsOdd() throws Refusal {
        settles(noted(NOON, Optional.of(NOON)), false);
        settles(noted(NOON.minusSeconds(1), Optional.of(NOON)), true);
        settles(noted(NOON, Optional.of(NOON.minusSeconds(1))), true);
        settles(noted(NOON.plusSeconds(301), Optional.of(NOON)), true);
        settles(noted(NOON.plusSeconds(300), Optional.of(NOON)), false);
        settles(noted(NOON, Optional.of(NOON.plusSeconds(43_201))), true);
        settles(noted(NOON, Optional.of(NOON.plusSeconds(43_200))), false);
        settles(noted(NOON, Optional.empty()), false);
    }

    /** A move that is entered live took no longer than since the entry before; one from a file may have taken any time. */
    @Test
    void nothingEnteredLiveTookLongerThanSinceTheEntryBefore() throws Refusal {
        for (boolean live : new boolean[] {true, false}) {
            Fold fold = Fold.start(Engines.of(12, 2));
            String[] lines = {"view v", "datum c1 1", "turn on 90", "turn on 30 in 4s"};
            for (int i = 0; i < lines.length; i++) {
                fold = fold.with(new Logged(
                        i + 1, NOON.plusSeconds(7L * i * i), "A", live, lines[i], EntryParser.parse(lines[i])));
            }
            var legs = fold.situation().legsOf(fold.situation().engine().rows().get("c1"));
            assertThat(legs.get(0).seconds().isPresent()).isEqualTo(live);
            legs.get(0).seconds().ifPresent(seconds -> assertThat(seconds).isEqualTo(21));
            assertThat(legs.get(1).seconds()).hasValue(4);
        }
    }
}
