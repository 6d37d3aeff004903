package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.coverage.State;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A slip breaks the count from there on; that it may have begun earlier is for the person to say. */
class SlipAdviceTest {

    private final Job job = new Job(new Engines()
                    .rotor("c1", 36)
                    .rotor("c2", 20)
                    .stator("s1", 12)
                    .view("v", "c1", 0, 2)
                    .view("w", "c2", 0, 2)
                    .view("still", "s1", 0, 2)
                    .built())
            .enter("view v", "datum c1 1");

    /** What the last of these entries gives rise to say. */
    private List<String> said(String... lines) {
        return English.say(job.enter(lines).fold().warnings());
    }

    @Test
    void afterAWatchedMoveAsksWhetherItSlippedThen() {
        assertThat(said("turn on 35", "slip"))
                .containsExactly("what was turned before stays as it was counted; if the rotor slipped during that"
                        + " move, entry 3, void it and look again");
    }

    @Test
    void afterSeveralNamesAllSinceTheLastIdentification() {
        assertThat(said("turn on 20", "here 35", "turn on 35", "note so far so good", "turn on 35", "slip"))
                .containsExactly("what was turned before stays as it was counted; if the rotor slipped during one of"
                        + " those moves, entries 5 to 7, void that move and look again");
    }

    @Test
    void afterAMoveWatchedInAnotherRowOfTheShaftAsksToo() {
        assertThat(said("view w", "datum c2 1", "turn on 35", "view v", "slip"))
                .singleElement()
                .asString()
                .contains("that move, entry 5");
    }

    @Test
    void afterAnIdentificationGoesWithoutAWord() {
        assertThat(said("turn on 20", "here 35", "slip")).isEmpty();
        assertThat(said("here 35", "round 35", "slip")).isEmpty();
    }

    @Test
    void afterASlipThatBrokeTheCountAlreadyGoesWithoutAWord() {
        assertThat(said("turn on 20", "slip", "slip")).isEmpty();
    }

    @Test
    void afterWhatWasNotWatchedOrDidNotTurnGoesWithoutAWord() {
        assertThat(said("skip on 35", "look", "slip")).isEmpty();
    }

    @Test
    void afterTheScopeTipWasDrawnGoesWithoutAWord() {
        assertThat(said("view still", "datum s1 1", "draw 90", "slip")).isEmpty();
    }

    @Test
    void takesNothingAwayFromWhatWasSeen() {
        List<Integer> before = job.enter("turn on 35").airfoils("c1", State.SEEN);
        assertThat(before).hasSizeGreaterThan(1);
        assertThat(job.enter("slip").airfoils("c1", State.SEEN)).isEqualTo(before);
    }
}
