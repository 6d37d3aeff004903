package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.spi.Ratio;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A whole turn shows every airfoil, wherever it began, as far as its length is known. */
class WholeTurnTest {

    private static final int BLADES = 60;

    /** 60 blades, 6° a blade, seen within ± 1.5°; a pad with ± 1° of play. */
    private final Job job = new Job(new Engines()
            .rotor("r", BLADES)
            .stator("w", BLADES)
            .view("v", "r", 0, 1.5)
            .view("a", "w", 0, 0.2)
            .pad("pad", Ratio.ONE, 1, 0, 0)
            .built());

    @Nested
    class Round {

        /** Both ends are off by ± 2°, so the length by ± 2.8°, and each blade is in sight for 3°. */
        @Test
        void showsEveryBladeWhereItsLengthIsKnownBetterThanABladeIsInSight() {
            job.enter("view v", "round 1 ±2");
            assertThat(job.airfoils("r", State.SEEN)).hasSize(BLADES);
            assertThat(job.warnings()).isEmpty();
        }

        @Test
        void elseSaysHowMuchFurtherToTurn() {
            job.enter("view v", "round 1 ±3");
            assertThat(job.airfoils("r", State.MAYBE)).containsExactly(1);
            assertThat(job.warnings()).singleElement().asString().contains("turn a little further", "turn on 1.4");
            job.enter("turn on 1.3");
            assertThat(job.airfoils("r", State.MAYBE)).containsExactly(1);
            assertThat(job.enter("void 3 because too short", "turn on 1.4").airfoils("r", State.SEEN))
                    .hasSize(BLADES);
        }
    }

    @Test
    void anExactDrawShowsEveryVaneHoweverItWasPutToTheReference() {
        job.enter("view a", "datum w 1 ±0.5", "draw 360");
        assertThat(job.airfoils("w", State.SEEN)).hasSize(BLADES);
        List<String> why = English.say(Explanation.of(job.coverage(), "w", 1, 0));
        assertThat(why).first().asString().contains(", 360.0° in all").contains("surely in sight");
    }

    @Test
    void aDrawThatMayHaveFallenShortDoesNot() {
        job.enter("view a", "datum w 1 ±0.5", "draw 360 ±0.5");
        assertThat(job.airfoils("w", State.MAYBE)).containsExactly(1);
    }
}
