package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From half of what lies between two of 36 blades on, 5°, a wide ± hides which of them is in view. */
class OpenCountingTest {

    private static List<OpenItem> items(String... lines) {
        Job job = new Job(new Engines().rotor("r", 36).view("v", "r", 0, 2).built()).enter(lines);
        return new OpenCounting(job.fold()).items();
    }

    @ParameterizedTest
    @CsvSource({"5, false", "5.1, true"})
    void aMoveIsToldAsTooUnsureFromMoreThanHalfAPitchOn(String plusMinus, boolean told) {
        assertThat(items("view v", "datum r 1", "turn on 30 ± " + plusMinus, "note on"))
                .extracting(item -> item.opened().orElseThrow().number())
                .isEqualTo(told ? List.of(3) : List.of());
    }

    /** Blade 31 comes to the reference after 60°; what was counted besides is shared out, within ± 20°. */
    @ParameterizedTest
    @CsvSource({"64.9, false", "65, true", "55, true", "55.1, false"})
    void aCountErrorOfHalfAPitchThatWasSharedOutIsToldByTheEntryThatShowedIt(String turn, boolean told) {
        assertThat(items("view v", "datum r 1 ± 0", "turn on " + turn + " ± 20", "here 31 ± 0", "note on"))
                .filteredOn(item -> item.what() instanceof CountProblem.SharedOut)
                .extracting(item -> item.opened().orElseThrow().number())
                .isEqualTo(told ? List.of(4) : List.of());
    }
}
