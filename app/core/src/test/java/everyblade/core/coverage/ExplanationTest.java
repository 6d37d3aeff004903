package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.turning.Engine;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    private static List<String> explained(Coverage coverage, String row, int airfoil, int zone) {
        return English.say(Explanation.of(coverage, row, airfoil, zone));
    }

    private static Job job(double play) {
        return new Job(new Engines()
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.<ChordBand>of(), false, 0)
                .view("v", "c1", 0, 2)
                .view("roots", "c1", 0, 2, "root")
                .pad("pad", Ratio.ONE, play, 0, 0)
                .built());
    }

    @Test
    void theCountedAndTheAdjustedAngleStandSideBySide() {
        Job job = job(1.9).enter("view v", "datum c1 1");
        Collections.nCopies(9, "turn on 38").forEach(job::enter);
        job.enter("here 3");
        assertThat(explained(job.coverage(), "c1", 3, 0))
                .containsExactly(
                        "entries 3 to 11, through v: counted from 0.0° to 342.0°, adjusted from 0.0° to 340.0°, at the"
                                + " end good to −0.0° +0.0°; surely in sight",
                        "so blade 3 of row c1 (c1), root is seen (declared, by windows)");
    }

    @Test
    void playIsNamedWhereItLeavesACellInDoubt() {
        Job job = job(1.9).enter("view v", "datum c1 1");
        Collections.nCopies(9, "turn on 38").forEach(job::enter);
        assertThat(explained(job.coverage(), "c1", 3, 1).toString())
                .contains("at the end good to −5.7° +5.7°", "only maybe in sight", "too much play");
    }

    @Test
    void aPartThatWasNotWatchedIsSaidToHavePassedUnwatched() {
        Job job = job(0).enter("view v", "datum c1 1", "watch root", "turn on 360");
        assertThat(explained(job.coverage(), "c1", 5, 1))
                .containsExactly(
                        "entry 4, through v: not watched while it was in sight",
                        "so blade 5 of row c1 (c1), tip is not seen: not watched while it was in sight (declared, by"
                                + " windows)");
    }

    @Test
    void aViewThatDoesNotShowThePartIsNamed() {
        Job job = job(0).enter("view roots", "datum c1 1", "turn on 360");
        assertThat(explained(job.coverage(), "c1", 5, 1).get(0))
                .isEqualTo("entry 3, through roots: this view does not show tip");
    }

    @Test
    void aRowThatWasNeverIdentifiedSaysSo() {
        Job job = job(0).enter("view v", "turn on 360");
        assertThat(explained(job.coverage(), "c1", 5, 1).get(0)).contains("no blade of this row was ever identified");
    }

    /** Blades seen past vanes ahead of them; once a vane is identified, and where the vanes are out of the way, nothing is said. */
    @Test
    void vanesThatMayHideAPartAreToBeIdentified() {
        Job past = shaped(-40).enter("view v", "datum r 1", "turn 360");
        assertThat(explained(past.coverage(), "r", 1, 0))
                .filteredOn(line -> line.startsWith("nobody said where the vanes of"))
                .singleElement()
                .asString()
                .contains("datum g N");
        assertThat(explained(past.enter("datum g 1").coverage(), "r", 1, 0).toString())
                .doesNotContain("nobody said where");
        assertThat(explained(shaped(60).enter("view v", "datum r 1", "turn 360").coverage(), "r", 1, 0)
                        .toString())
                .doesNotContain("nobody said where");
    }

    private static Job shaped(double vanesAt) {
        return new Job(Engine.of(new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .row("g", RowKind.STATOR, 12, 20, vanesAt)
                .view("v", "r", ShapedEngine.station("ahead", -50, 130, new Heading(1, 0, -0.1), 0, 0))
                .model()));
    }
}
