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

    private Job job = job("datum c1 1 ±4");

    private static Job job(String... begun) {
        return new Job(new Engines()
                        .row("c1", RowKind.ROTOR, 36, Direction.CW, 1, List.of(), false, 0)
                        .row("loose", RowKind.ROTOR, 20, Direction.CW, 1, List.of(), false, 1.5)
                        .view("v", "c1", 0, 2)
                        .view("w", "loose", 0, 2)
                        .pad("pad", Ratio.ONE, 3, 2, 0.5)
                        .pad("exact", Ratio.ONE, 0, 0, 0)
                        .built())
                .enter("view v")
                .enter(begun);
    }

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

    /** Rows on one shaft keep their distance: who sees one well knows the others as well as they were tied to it. */
    @Test
    void aRowIsKnownThroughAnotherOneThatItWasTiedToIfThatIsBetterThanCounting() {
        job = job("datum c1 1 ±1", "view w", "datum loose 1 ±0", "turn 10");
        assertOff("loose", 3 + 0.5 + 1.5, 3 + 1.5);
        job.enter("view v", "here 36 ±0");
        assertOff("loose", 1 + 1.5, 1 + 1.5);
        job = job("datum c1 1 ±4", "view w", "datum loose 1 ±0", "turn 10", "view v", "here 36 ±0");
        assertOff("loose", 3 + 0.5 + 1.5, 3 + 1.5);
    }

    /** The first row may have fallen short of where it was counted when the other was seen; so that one may lie beyond. */
    @Test
    void whatFellShortOnOneRowLiesBeyondOnTheOther() {
        job = job("datum c1 1 ±0", "turn 10", "view w", "datum loose 1 ±0", "slip", "view v", "here 5 ±0");
        assertOff("loose", 3 + 1.5, 3 + 0.5 + 1.5);
    }

    /** Blade 33 is seen 2° from where it was counted, ± 5°, to ± 1°: a 26th of that is left, and nothing to tell again. */
    @Test
    void aSecondLookAtTheSameBladeFindsWhatTheFirstHasLeftOfTheError() {
        job.enter("pad exact", "turn 38 ±3", "here 33 ±1", "here 33 ±1");
        assertThat(job.fold().situation().countErrors())
                .extracting(CountError::degrees)
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(-2, within(1e-6)),
                        second -> assertThat(second).isCloseTo(-2.0 / 26, within(1e-6)));
    }

    @Test
    void withoutAReadingMovesToAReadingAddUp() {
        job = job("datum c1 1 ±0", "slip", "here 1 ±0", "skip to 60", "skip to 120");
        assertOff("c1", Math.sqrt(18), Math.sqrt(18));
    }

    @Test
    void anIdentificationIsAsGoodAsTheViewAllowsUnlessSomeoneSaysBetter() {
        Job aimed = new Job(new Engines()
                        .rotor("c1", 36)
                        .aim(1.5)
                        .view("v", "c1", 0, 2)
                        .built())
                .enter("view v", "datum c1 1");
        Situation now = aimed.fold().situation();
        Row row = now.engine().rows().get("c1");
        SmoothedTrack.Place place =
                now.placing(row).at("c1", 0, now.stop(row)).place().orElseThrow();
        assertThat(place.high().minus(place.best()).degrees()).isCloseTo(1.5, TICK);
    }

    @Test
    void nothingIsSaidOfACountThatASlipHasBroken() {
        Job fine = new Job(new Engines()
                        .rotor("c1", 94)
                        .view("v", "c1", 0, 1)
                        .pad("pad", Ratio.ONE, 1, 0, 0)
                        .built())
                .enter("view v", "datum c1 1", "slip");
        int told = fine.warnings().size();
        fine.enter("skip on 20", "skip on 20", "skip on 20", "skip on 20", "skip on 20");
        assertThat(fine.warnings()).hasSize(told);
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

    @Test
    void aScopeTipIsDrawnAsExactlyAsItIsSaidSoNothingIsTakenForGrantedOfARowThatStandsStill() {
        Job still = new Job(new Engines().stator("s1", 20).view("w", "s1", 0, 2).built())
                .enter("view w", "datum s1 1", "draw 20");
        assertThat(TakenAsExact.of(still.fold().situation())).isEmpty();
    }
}
