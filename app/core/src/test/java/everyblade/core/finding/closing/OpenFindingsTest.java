package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.finding.Judging;
import everyblade.core.finding.Limits;
import everyblade.core.finding.LimitsUnderTest;
import everyblade.core.finding.closing.OpenItem.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which findings a lost count puts on another airfoil, and what is asked of whom about the others. */
class OpenFindingsTest {

    private static Limits limits() {
        LimitsUnderTest limits = new LimitsUnderTest();
        return limits.rule(
                        "nicks",
                        "",
                        "nick",
                        "",
                        limits.step("length 0.5"),
                        LimitsUnderTest.again(limits.step("length 1"), 25))
                .built();
    }

    private static List<OpenItem> items(Job job) {
        return new OpenFindings(job.fold(), true, Judging.of(limits(), job.fold(), job.coverage())).items();
    }

    /** Two rotors on one shaft, one on another, and a stator. */
    private static Job lostCount(String findingBetween) {
        return new Job(new Engines()
                        .rotor("a", 12)
                        .rotor("b", 12)
                        .stator("s", 12)
                        .onSpool("other")
                        .rotor("c", 12)
                        .view("va", "a", 0, 2)
                        .built())
                .enter("view va", "a nick 1 all 0.1 ± 0.1", "datum a 1", "turn 120 ± 1", findingBetween)
                .enter("turn 60 ± 1", "here 3 ± 0.5", "a nick 3 all 0.1 ± 0.1");
    }

    @ParameterizedTest
    @CsvSource({"a, true", "b, true", "c, false", "s, false"})
    void aLostCountPutsFindingsOnTheSameShaftInDoubt(String row, boolean doubtful) {
        assertThat(items(lostCount(row + " nick 5 all 0.1 ± 0.1")))
                .extracting(item -> item.opened().orElseThrow().number())
                .isEqualTo(doubtful ? List.of(5) : List.of());
    }

    @Test
    void whatWasFoundBeforeItOrAfterItWasNoticedIsWhereItWasSaid() {
        Job job = lostCount("note on");
        assertThat(job.fold().situation().countErrors()).hasSize(1);
        assertThat(items(job)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2 ± 0.1, true", "1 ± 0.1, false", "0.2, false"})
    void onlyOfWhatIsBeyondTheLimitsNoFurtherLookHelps(String size, boolean beyond) {
        Job job = new Job(LimitsUnderTest.ENGINE).enter("a nick 3 tpl " + size);
        assertThat(items(job))
                .filteredOn(item -> item.kind() == Kind.FINDING)
                .singleElement()
                .satisfies(item -> assertThat(item.toDo()).contains(new ToDo.Decide(beyond, "settle 1 because")));
    }

    @Test
    void aRepeatThatIsVoidIsNotEntered() {
        Job job = new Job(LimitsUnderTest.ENGINE).enter("a nick 3 tpl 0.8 ± 0.1", "again in 25 cycles");
        assertThat(items(job)).isEmpty();
        job.enter("void 2 because mistyped");
        assertThat(items(job)).extracting(OpenItem::kind).containsExactly(Kind.INTERVAL);
    }
}
