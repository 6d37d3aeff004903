package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import everyblade.core.sight.Progress;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans where sight is computed: whoever does what they say has closed what stations can show, from as few as can be. */
class ComputedPlanTest {

    private static final List<Station> STATIONS = List.of(
            ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3),
            ShapedEngine.station("low", -14, 116, new Heading(1, 0.4, -0.2), 0.5, 2),
            ShapedEngine.station("left", -15, 128, new Heading(1, -0.4, -0.1), 0.5, 2),
            ShapedEngine.station("outer", -10, 140, new Heading(1, 0.1, -0.6), 0.5, 2));

    private static Job job(double play) {
        return new Job(new ShapedEngine()
                .row("r", RowKind.ROTOR, 12, 35, 0)
                .play(play)
                .view("front", "r", STATIONS.toArray(Station[]::new))
                .built());
    }

    private static Plan plan(Job job) {
        return PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
    }

    private static int left(Job job) {
        return Gaps.of(job.coverage()).stream()
                .filter(gap -> gap.reach().isPresent())
                .mapToInt(gap -> gap.airfoils().size())
                .sum();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5})
    void itClosesWhatItSays(double play) {
        Job job = job(play).enter("view front", "datum r 1 ± 0", "turn 100");
        Plan plan = plan(job);
        assertThat(plan.moves()).isNotEmpty();
        for (Move move : plan.moves()) {
            int before = job.warnings().size();
            move.entries().forEach(entry -> job.enter(EntryText.of(entry)));
            assertThat(job.warnings()).hasSize(before);
            for (Move.Closing closing : move.closes()) {
                for (int airfoil : closing.airfoils()) {
                    assertThat(Gaps.within(job.coverage().row("r"), airfoil).intersection(closing.zones()))
                            .matches(zones -> zones.isEmpty());
                }
            }
        }
        assertThat(left(job)).isZero();
        assertThat(plan.unsure()).isZero();
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.minutes() + 1e-6);
    }

    @Test
    void aRowThatNobodyIdentifiedIsIdentifiedFirst() {
        Job job = job(0.5).enter("view front");
        Plan plan = plan(job);
        assertThat(EntryText.of(plan.moves().get(0).entries().get(0))).isIn("round 1", "at low", "at left", "at outer");
        assertThat(plan.moves().get(0).identifies()).hasValue(1);
        plan.moves().forEach(move -> move.entries().forEach(entry -> job.enter(EntryText.of(entry))));
        assertThat(left(job)).isZero();
    }

    /** All sets of stations are tried, each with a whole turn, through fold and coverage. */
    @Test
    void noFewerWholeTurnsWouldDo() {
        Job fresh = job(0.5);
        Plan plan = plan(fresh.enter("view front"));
        int least = Integer.MAX_VALUE;
        for (int set = 1; set < 1 << STATIONS.size(); set++) {
            List<String> lines = new ArrayList<>(List.of("view front"));
            for (int station = 0; station < STATIONS.size(); station++) {
                if ((set >> station & 1) != 0) {
                    lines.addAll(List.of("at " + STATIONS.get(station).id(), "round 1"));
                }
            }
            Job tried = fresh.another().enter(lines.toArray(String[]::new));
            least = left(tried) == 0 ? Math.min(least, Integer.bitCount(set)) : least;
        }
        assertThat(least).isLessThanOrEqualTo(STATIONS.size());
        assertThat(plan.moves().stream().map(Move::station).distinct()).hasSize(least);
        assertThat(plan.turning().doubleValue()).isGreaterThanOrEqualTo(360.0 * least);
    }

    /**
     * What a set of stations is said to show of an airfoil is enough just if it is so for whoever turns it past all of them, also
     * where patches along an edge of sight decide that are shown as a whole.
     */
    @ParameterizedTest
    @ValueSource(doubles = {20, 35, 50})
    void aSetOfStationsIsEnoughJustIfItIsSoOnceWatched(double stagger) {
        Job fresh = new Job(new ShapedEngine()
                .row("r", RowKind.ROTOR, 12, stagger, 0)
                .view("front", "r", STATIONS.toArray(Station[]::new))
                .built());
        Coverage coverage = fresh.enter("view front").coverage();
        RowNeeds needs = RowNeeds.of(
                coverage, coverage.row("r").row(), OptionalDouble.empty(), ViewOption.of(coverage, coverage.row("r")));
        assertThat(needs.kinds()).hasSize(1);
        RowNeeds.Kind kind = needs.kinds().get(0);
        for (int set = 1; set < 1 << needs.options().size(); set++) {
            Job turned = fresh.another().enter("view front");
            for (int option = 0; option < needs.options().size(); option++) {
                if ((set >> option & 1) != 0) {
                    turned.enter("at " + needs.options().get(option).station().orElseThrow(), "round 1 ± 0");
                }
            }
            assertThat(needs.covers(set, kind))
                    .as("stations %s", Integer.toBinaryString(set))
                    .isEqualTo(Gaps.within(turned.coverage().row("r"), 6)
                            .intersection(kind.open())
                            .isEmpty());
        }
    }

    /**
     * What is unsure at the seam of a whole turn is seen by going a little further, and not by coming back for it. Whoever
     * asks again after each move is sent through the plan that was made at the beginning.
     */
    @Test
    void nobodyComesBackToAStationForTheSeamOfItsTurn() {
        Job job = job(0.5).enter("view front");
        double promised = plan(job).minutes();
        double taken = 0;
        double watched = 0;
        List<String> stations = new ArrayList<>();
        for (Plan plan = plan(job); !plan.moves().isEmpty(); plan = plan(job)) {
            Move first = plan.moves().get(0);
            assertThat(PlanBuilder.next(job.fold(), job.coverage(), Prices.of(Settings.USUAL), Progress.NONE))
                    .contains(first);
            first.entries().forEach(entry -> job.enter(EntryText.of(entry)));
            String station = first.station().orElseThrow();
            if (stations.isEmpty() || !stations.get(stations.size() - 1).equals(station)) {
                stations.add(station);
            }
            taken += first.minutes();
            watched += first.sweep().abs().doubleValue();
        }
        assertThat(left(job)).isZero();
        assertThat(stations).doesNotHaveDuplicates();
        assertThat(watched).isBetween(360.0 * stations.size(), (360.0 + 30) * stations.size());
        assertThat(taken).isLessThanOrEqualTo(promised + 1e-6);
    }
}
