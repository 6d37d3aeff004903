package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Circle;
import everyblade.core.sight.StationSight;
import everyblade.core.turning.Engine;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 36 blades, in view within ± 5° of the reference; at 10° a second each that passes is in view for a second. */
class GlancesTest {

    private static Job job(double least, String... lines) {
        return new Job(new Engines().rotor("r", 36).view("v", "r", 0, 5).built())
                .leastView(least)
                .enter("view v", "datum r 1 ± 0")
                .enter(lines);
    }

    private static List<Integer> tooFast(Job job) {
        RowCoverage row = job.coverage().row("r");
        return IntStream.rangeClosed(1, 36)
                .filter(n -> row.why(n, 0).filter(Why.FAST::equals).isPresent())
                .boxed()
                .toList();
    }

    /** Blade 1 begins in the middle of the view and blade 28 ends there; the eight between pass all of it. */
    @ParameterizedTest
    @CsvSource({"0.49, 0, 10", "0.51, 2, 8", "0.99, 2, 8", "1, 2, 8", "1.01, 10, 0"})
    void aBladeThatPassesTheWholeViewIsInItForTheTimeThatTakes(double least, int fast, int seen) {
        Job job = job(least, "turn on 90 in 9s");
        assertThat(tooFast(job)).hasSize(fast);
        assertThat(job.airfoils("r", State.SEEN)).hasSize(seen);
    }

    @Test
    void theEndsOfAPassAreInViewForHalfAsLong() {
        assertThat(tooFast(job(0.6, "turn on 90 in 9s"))).containsExactly(1, 28);
        assertThat(tooFast(job(0.6, "turn back 90 in 9s"))).containsExactly(1, 10);
    }

    @Test
    void turnsThatFollowEachOtherAddUp() {
        assertThat(tooFast(job(0.99, "turn on 45 in 4.5s", "turn on 45 in 4.5s")))
                .containsExactly(1, 28);
        assertThat(tooFast(job(0.99, "turn on 45 in 4.5s", "skip on 1", "turn on 44 in 4.4s")))
                .as("what was turned unwatched between begins another pass")
                .contains(1, 28)
                .hasSizeGreaterThan(2);
    }

    @Test
    void whatPassesTwiceIsInViewTwiceAsLong() {
        assertThat(tooFast(job(1.99, "turn on 720 in 72s"))).isEmpty();
        assertThat(tooFast(job(2.01, "turn on 720 in 72s"))).hasSize(36);
    }

    @Test
    void aTurnOfWhichNobodySaysHowLongItTookIsNeverTooFast() {
        assertThat(tooFast(job(100, "turn on 90"))).isEmpty();
        assertThat(job(100, "turn on 90").airfoils("r", State.SEEN)).hasSize(10);
        assertThat(tooFast(job(100, "turn on 90 in 9s", "turn on 90")))
                .as("long enough in the second turn")
                .doesNotContain(28);
    }

    /** While the shaft stands, the blade at the reference is in view and its neighbours, 10° away, are not. */
    @ParameterizedTest
    @CsvSource({"2.9, 0, 1", "3, 0, 1", "3.1, 1, 0"})
    void whatStandsInViewIsInItForAsLongAsIsLooked(double least, int fast, int seen) {
        Job job = job(least, "look in 3s");
        assertThat(tooFast(job)).hasSize(fast);
        assertThat(job.airfoils("r", State.SEEN)).hasSize(seen);
    }

    /** At 300°, on the far side of where the circle is cut. */
    @ParameterizedTest
    @CsvSource({"0.49, 0", "0.51, 2", "0.99, 2", "1.01, 10"})
    void theViewMayLieAnywhereRoundTheEngine(double least, int fast) {
        Job job = new Job(new Engines().rotor("r", 36).view("v", "r", 300, 5).built())
                .leastView(least)
                .enter("view v", "datum r 1 ± 0", "turn on 90 in 9s");
        assertThat(tooFast(job)).hasSize(fast);
    }

    /** The neighbours stand 10° from the reference, ± 3°, and the view ends 8° from it. */
    @Test
    void whatMostLikelyStandsOutsideTheViewIsInItForNoTime() {
        Engine engine = new Engines().rotor("r", 36).view("v", "r", 0, 8).built();
        Job without = new Job(engine).enter("view v", "datum r 1 ± 3", "look in 3s");
        assertThat(without.airfoils("r", State.MAYBE)).containsExactly(2, 36);
        Job job = new Job(engine).leastView(1).enter("view v", "datum r 1 ± 3", "look in 3s");
        assertThat(job.airfoils("r", State.MAYBE)).isEmpty();
        assertThat(job.airfoils("r", State.SEEN)).containsExactly(1);
    }

    @Test
    void whatStandsAtTheVeryEndOfTheViewIsInItAllTheWhile() {
        Job job = new Job(new Engines().rotor("r", 36).view("v", "r", 0, 10).built())
                .leastView(2.9)
                .enter("view v", "datum r 1 ± 0", "look in 3s");
        assertThat(tooFast(job)).isEmpty();
        assertThat(job.airfoils("r", State.SEEN)).containsExactly(1, 2, 36);
    }

    /** At a degree a second each facet is in sight for as many seconds as degrees. */
    @Test
    void beforeAStationEachFacetIsInViewForAsLongAsItsArcsTake() {
        Engine engine = new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .view("v", "r", ShapedEngine.station("s", -15, 135, new Heading(1, 0.3, -0.3), 0, 0))
                .built();
        String[] lines = {"view v", "datum r 1 ± 0", "turn 360 in 360s"};
        RowCoverage untimed = new Job(engine).enter(lines).coverage().row("r");
        StationSight sight = untimed.reach().orElseThrow().stations().get(0).sight();
        double[] seconds = IntStream.range(0, sight.facets())
                .mapToDouble(facet -> sight.arcs(0, facet).arcs().stream()
                        .mapToDouble(arc -> (double) arc.length() / Circle.TICKS_PER_DEGREE)
                        .sum())
                .toArray();
        double[] inView =
                Arrays.stream(seconds).filter(time -> time > 0).sorted().toArray();
        double least = Math.round(inView[inView.length / 2] * 100) / 100.0;
        RowCoverage timed =
                new Job(engine).leastView(least).enter(lines).coverage().row("r");
        int enough = 0;
        for (int facet = 0; facet < seconds.length; facet++) {
            boolean seen = timed.seen(7, facet) > 0;
            assertThat(seen).as("facet %d", facet).isEqualTo(seconds[facet] >= least && untimed.seen(7, facet) > 0);
            enough += seen ? 1 : 0;
        }
        assertThat(enough).isBetween(inView.length / 3, inView.length * 2 / 3);
    }
}
