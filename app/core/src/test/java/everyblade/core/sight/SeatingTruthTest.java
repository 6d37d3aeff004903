package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Displaced;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a scope tip that was moved meanwhile truly showed, against what is called seen. */
class SeatingTruthTest {

    private static final int BLADES = 20;
    private static final int MOVES = 36;

    private final Station ahead = ShapedEngine.station("ahead", -15, 135, new Heading(1, 0.3, -0.3), 2, 5);
    private final EngineModel model = new ShapedEngine()
            .row("r", RowKind.ROTOR, BLADES, 35, 0)
            .view("v", "r", ahead, ShapedEngine.station("exact", -15, 135, new Heading(1, 0.3, -0.3), 0, 0))
            .model();
    private final Row row = model.rows().get(0);
    private final Pose nominal = Pose.of(ahead, model.scopeTips().get(0));
    private final List<TrueSight> family =
            PoseFamily.of(nominal, ahead.within()).stream().map(this::from).toList();

    private Job job(String... lines) {
        return new Job(Engine.of(model)).enter(lines);
    }

    private TrueSight from(Pose pose) {
        return new TrueSight(model, row, pose, Map.of(), Map.of());
    }

    @Nested
    class PutInAmongTheBlades {

        /** Ten millimetres further in, the blade that is looked at shows little of what it shows from its station. */
        @Test
        void theScopeTipIsNotWhereItsStationSays() {
            TrueSight station = from(nominal);
            TrueSight inside = from(Displaced.of(nominal, new double[] {10, 0, 0}, 0, 0));
            double both = 0;
            double stated = 0;
            for (int facet = 0; facet < station.facets(); facet++) {
                for (int n = 0; n < BLADES; n++) {
                    double clock = 360.0 * n / BLADES;
                    boolean shown = station.sees(facet, clock, clock);
                    stated += shown ? station.area(facet) : 0;
                    both += shown && inside.sees(facet, clock, clock) ? station.area(facet) : 0;
                }
            }
            assertThat(both).isLessThan(0.5 * stated);
            Job job = job("view v", "datum r 1", "at exact", "in", "look");
            assertThat(job.warnings()).anyMatch(warning -> warning.contains("among the blades"));
            assertThat(seen(job)).isZero();
            assertThat(seen(job("view v", "datum r 1", "at exact", "look"))).isPositive();
        }

        @Test
        void itIsBackOnceItIsClearOrSaidToBe() {
            double looked = seen(job("view v", "datum r 1", "at exact", "look"));
            assertThat(seen(job("view v", "datum r 1", "at exact", "in", "look", "clear", "look")))
                    .isEqualTo(looked);
            assertThat(seen(job("view v", "datum r 1", "in", "at exact", "look")))
                    .isEqualTo(looked);
        }

        private double seen(Job job) {
            RowCoverage coverage = job.coverage().row("r");
            return coverage.areas(coverage.zoning().all()).seen();
        }
    }

    /**
     * A turn in short moves, after each of which the scope tip stands at another pose of its tolerance: what is called seen was
     * in sight in one of them wherever it stood. Angles are tried a quarter of a degree apart, so a facet that flits by may be missed.
     */
    @ParameterizedTest
    @ValueSource(strings = {"in;clear", "pause held", "handover B. Relief;takeover B. Relief held", "view v"})
    void whatIsCalledSeenWasInSightAlsoIfTheScopeTipStandsElsewhereAfterwards(String between) {
        assertThat(falsely(between.split(";"))).isLessThan(0.001);
    }

    @Test
    void asLongAsNobodyTouchesItItStandsWhereItStood() {
        assertThat(seen()).isGreaterThan(1.02 * seen("at ahead"));
    }

    /** The share of blade 1 that is called seen. */
    private double seen(String... between) {
        Job job = job("view v", "datum r 1");
        for (int move = 0; move < MOVES; move++) {
            job.enter("turn " + 360 / MOVES).enter(between);
        }
        RowCoverage row = job.coverage().row("r");
        return row.areas(row.zoning().all()).seen();
    }

    /** The share of what is called seen that was not in sight if the scope tip stood where it shows least in each move. */
    private double falsely(String... between) {
        Job job = job("view v", "datum r 1");
        for (int move = 0; move < MOVES; move++) {
            job.enter("turn " + 360 / MOVES).enter(between);
        }
        RowCoverage coverage = job.coverage().row("r");
        double called = 0;
        double wrong = 0;
        for (int facet = 0; facet < family.get(0).facets(); facet++) {
            if (coverage.seen(1, facet) > 0.999 * family.get(0).area(facet)) {
                called += family.get(0).area(facet);
                wrong += isSeen(facet) ? 0 : family.get(0).area(facet);
            }
        }
        return wrong / called;
    }

    private boolean isSeen(int facet) {
        return IntStream.range(0, MOVES)
                .mapToDouble(move -> 360.0 * move / MOVES)
                .anyMatch(clock -> family.stream().allMatch(pose -> pose.sees(facet, clock, clock + 360.0 / MOVES)));
    }
}
