package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a place may be off, −below to +above, after the moves of a pad with play 3, backlash 2 and drift 0.5. */
class ErrorsTest {

    private static final Offset<Double> TICK = within(1e-6);

    private final Job job = new Job(new Engines()
                    .row("c1", RowKind.ROTOR, 36, Direction.CW, 1, List.of(), false, 0)
                    .row("loose", RowKind.ROTOR, 20, Direction.CW, 1, List.of(), false, 1.5)
                    .view("v", "c1", 0, 2)
                    .view("w", "loose", 0, 2)
                    .pad("pad", Ratio.ONE, 3, 2, 0.5)
                    .pad("exact", Ratio.ONE, 0, 0, 0)
                    .built())
            .enter("view v", "datum c1 1 ±4");

    private void assertOff(String rowId, double below, double above) {
        Situation now = job.fold().situation();
        Row row = now.engine().rows().get(rowId);
        SmoothedTrack.Place place =
                now.placing(row).at(rowId, row.rock(), now.stop(row)).place().orElseThrow();
        assertThat(place.best().minus(place.low()).degrees()).as("below").isCloseTo(below, TICK);
        assertThat(place.high().minus(place.best()).degrees()).as("above").isCloseTo(above, TICK);
    }

    @Test
    void anIdentificationIsAsGoodAsItsPlusMinus() {
        assertOff("c1", 4, 4);
    }

    @Test
    void playAddsInQuadratureAndDriftGoesAgainstThePush() {
        job.enter("turn 10");
        assertOff("c1", 5.5, 5);
        job.enter("skip 10");
        assertOff("c1", Math.sqrt(16 + 18) + 1, Math.sqrt(16 + 18));
    }

    @Test
    void theFirstMoveAfterAReversalMayFallShort() {
        job.enter("turn 10", "turn -10");
        assertOff("c1", Math.sqrt(34) + 0.5, Math.sqrt(34) + 2.5);
        job.enter("turn -10");
        assertOff("c1", Math.sqrt(43) + 0.5, Math.sqrt(43) + 3);
    }

    @Test
    void aStatedPlusMinusReplacesAllThreeOfThePad() {
        job.enter("turn 10", "turn -10 ±3");
        assertOff("c1", Math.sqrt(34) + 0.5, Math.sqrt(34));
    }

    @Test
    void movesInBladesAreCountedByEyeAndHaveNone() {
        job.enter("turn 5 blades");
        assertOff("c1", 4, 4);
    }

    @Test
    void anAbsoluteReadingErrsByItsOwnPlay() {
        job.enter("turn 10", "turn 10", "turn 10", "turn to 60");
        assertOff("c1", 5, 5);
    }

    @Test
    void looseBladesLeanOnceARow() {
        job.enter("view w", "datum loose 1 ±0", "turn 10", "turn 10");
        assertOff("loose", Math.sqrt(18) + 1 + 1.5, Math.sqrt(18) + 1.5);
    }

    @Test
    void aBetterIdentificationStartsTheErrorAfresh() {
        job.enter("pad exact", "turn 10", "here 36 ±1", "turn 10");
        assertOff("c1", 1, 1);
    }

    @Test
    void aCountErrorThatIsNoLossIsSharedOutWithAWarning() {
        Job exact = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn 38", "turn 38", "here 29 ±0.1");
        assertThat(exact.coverage().lostCount()).isFalse();
        assertThat(exact.warnings())
                .singleElement()
                .asString()
                .contains("off by 4.0°", "more than the stated errors allow for", "shared out");
    }

    @Test
    void whatNobodyStatedAnErrorOfIsTakenAsExactAndSaidSo() {
        assertThat(TakenAsExact.of(job.fold().situation())).isEmpty();
        Job silent = new Job(Engines.of(36, 2)).enter("view v");
        assertThat(TakenAsExact.of(silent.fold().situation())).isEmpty();
        silent.enter("datum c1 1");
        assertThat(TakenAsExact.of(silent.fold().situation()).map(English::say))
                .hasValue("Nobody stated what a move may be off, so each is taken as exact unless it says ±, in: c1.");
    }
}
