package everyblade.core.finding.photo;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.turning.Engine;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person named with a picture, held against what stood in view when the camera says it was taken. */
class TakenTest {

    private static final Engine ENGINE = new Engines()
            .rotor("c1", 36)
            .stator("s1", 24)
            .view("v", "c1", 0, 2)
            .view("w", "s1", 0, 2)
            .built();

    /** Entries come a second after each other from 08:00:01 on; blade 1 stands in view from the second one on. */
    private static Taken taken(Optional<String> written, String... lines) {
        Job job = new Job(ENGINE).enter("view v", "datum c1 1").enter(lines);
        int entry = 2 + lines.length;
        return Taken.of(job.fold(), List.of(new Taken.Named(entry, written))).get(0);
    }

    private static Taken taken(String... lines) {
        return taken(Optional.of("2026-03-01T08:00:02"), lines);
    }

    @ParameterizedTest
    @CsvSource({
        "photo a.jpg of 1, 1, , false",
        "photo a.jpg of 7, 7, , true",
        "saw all 1 photo a.jpg, 1, , false",
        "saw all 7 photo a.jpg, 7, , true",
        "saw all 5-8 photo a.jpg, 5, 8, true",
        "saw all 1-8 photo a.jpg, 1, 8, false",
        "c1 saw all 7 photo a.jpg, 7, , true"
    })
    void anAirfoilThatWasNotInViewDisagrees(String line, int first, Integer last, boolean disagrees) {
        Taken taken = taken(line);
        assertThat(taken.stated())
                .contains(new Stated(RowKind.ROTOR, first, last == null ? OptionalInt.empty() : OptionalInt.of(last)));
        assertThat(taken.disagrees()).isEqualTo(disagrees);
        assertThat(taken.byCamera()).isTrue();
        assertThat(taken.place().airfoil()).contains(1);
    }

    /** All of a row may be meant, a run over the seam is none of a first to a last, and of another row nothing is known. */
    @ParameterizedTest
    @CsvSource({"photo a.jpg", "saw all all photo a.jpg", "saw all 30-20 photo a.jpg", "s1 saw all 7 photo a.jpg"})
    void whereNoAirfoilInViewWasNamedNothingDisagrees(String line) {
        Taken taken = taken(line);
        assertThat(taken.stated()).isEmpty();
        assertThat(taken.disagrees()).isFalse();
    }

    /** An entry may be typed long after what it tells. */
    @Test
    void withoutATimeOfTheCameraTheEntrysIsTakenAndDisagreesWithNothing() {
        Taken taken = taken(Optional.empty(), "photo a.jpg of 7");
        assertThat(taken.byCamera()).isFalse();
        assertThat(taken.at()).isEqualTo("2026-03-01T08:00:03Z");
        assertThat(taken.disagrees()).isFalse();
        assertThat(taken(Optional.of("long ago"), "photo a.jpg of 7").byCamera())
                .isFalse();
    }

    @Test
    void aVaneIsToldAsAVane() {
        Taken taken =
                taken(Optional.of("2026-03-01T08:00:04"), "view w", "datum s1 3", "note in view", "photo a.jpg of 3");
        assertThat(taken.stated()).contains(new Stated(RowKind.STATOR, 3, OptionalInt.empty()));
        assertThat(taken.disagrees()).isFalse();
    }

    @Test
    void aPictureOfAnEntryThatIsVoidIsNone() {
        Job job = new Job(ENGINE).enter("photo a.jpg", "photo b.jpg", "void 1 because of another engine");
        assertThat(Taken.of(
                        job.fold(),
                        List.of(new Taken.Named(1, Optional.empty()), new Taken.Named(2, Optional.empty()))))
                .extracting(Taken::entry)
                .containsExactly(2);
    }
}
