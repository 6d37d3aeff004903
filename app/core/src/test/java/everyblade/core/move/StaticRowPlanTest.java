package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Plans of a row that stands still, by sight: where the scope tip cannot be drawn round it, and where gravity moves it on the way. */
class StaticRowPlanTest {

    private static final int VANES = 12;
    private static final Station AHEAD = ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 0, 0);
    private static final Station LOW = ShapedEngine.station("low", -14, 116, new Heading(1, 0.4, -0.2), 0, 0);
    private static final Station LEFT = ShapedEngine.station("left", -15, 128, new Heading(1, -0.4, -0.1), 0, 0);
    private static final Station[] STATIONS = {LOW, LEFT};

    private static ShapedEngine vanes() {
        return new ShapedEngine().row("s", RowKind.STATOR, VANES, 35, 0);
    }

    private static Plan plan(Job job) {
        return PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
    }

    private static Job followed(Job job) {
        plan(job).moves().forEach(move -> move.entries().forEach(entry -> job.enter(EntryText.of(entry))));
        return job;
    }

    /** The vanes of which a view shows something that was not seen. */
    private static List<Integer> left(Coverage coverage) {
        return IntStream.rangeClosed(1, VANES)
                .filter(n -> !Gaps.within(coverage.row("s"), n).isEmpty())
                .boxed()
                .toList();
    }

    /** Not even round a row of which little is left by looking: what that shows is all there is. */
    @Test
    void aScopeTipThatCannotBeDrawnLooksAtWhatStandsBeforeIt() {
        Job job = fixed();
        List<Integer> before = left(job.coverage());
        assertThat(before).isNotEmpty().hasSizeLessThan(VANES);
        List<Move> moves = plan(job).moves();
        assertThat(moves).isNotEmpty();
        assertThat(moves).extracting(Move::sweep).allMatch(sweep -> sweep.signum() == 0);
        assertThat(moves)
                .extracting(
                        move -> EntryText.of(move.entries().get(move.entries().size() - 1)))
                .containsOnly("look");
        assertThat(moves)
                .flatExtracting(Move::closes)
                .flatExtracting(Move.Closing::airfoils)
                .isSubsetOf(before);
        Job looked = fixed();
        for (Station station : STATIONS) {
            looked.enter("at " + station.id(), "look");
        }
        assertThat(open(followed(job))).isEqualTo(open(looked));
    }

    private static Job fixed() {
        return new Job(vanes().fixedView("f", "s", STATIONS).built()).enter("view f", "datum s 1 ± 0");
    }

    /** By vane, the zones that are left. */
    private static List<ZoneSet> open(Job job) {
        RowCoverage row = job.coverage().row("s");
        return IntStream.rangeClosed(1, VANES)
                .mapToObj(n -> Gaps.within(row, n))
                .toList();
    }

    @Test
    void whereTheVanesStandIsFoundOutFirst() {
        Job job = new Job(vanes().fixedView("f", "s", STATIONS).built());
        assertThat(plan(job).moves().get(0).identifies()).hasValue(1);
    }

    /** Of what two stations show by turns, only what both show is sure to be seen of a vane that either may have passed. */
    @Test
    void whatAScopeTipShowsThatGravityMovesIsWhatAllItsStationsShow() {
        Job job =
                new Job(vanes().view("v", "s", ShapedEngine.holding(AHEAD, 270, 90), ShapedEngine.holding(LOW, 90, 270))
                        .built());
        List<ViewOption> options = ViewOption.of(job.coverage(), job.coverage().row("s"));
        assertThat(options).hasSize(1);
        Job ahead = new Job(vanes().view("v", "s", AHEAD).built());
        Job low = new Job(vanes().view("v", "s", LOW).built());
        assertThat(options.get(0).shows()).satisfies(shown -> {
            BitSet both = (BitSet) option(ahead).shows().clone();
            both.and(option(low).shows());
            assertThat(shown).isEqualTo(both);
        });
        assertThat(options.get(0).wholly()).satisfies(shown -> {
            BitSet both = (BitSet) option(ahead).wholly().clone();
            both.and(option(low).wholly());
            assertThat(shown).isEqualTo(both);
        });
    }

    private static ViewOption option(Job job) {
        return ViewOption.of(job.coverage(), job.coverage().row("s")).get(0);
    }
}
