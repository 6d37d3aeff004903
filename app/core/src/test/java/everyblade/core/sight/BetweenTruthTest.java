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
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is called seen past vanes, against what was truly in sight: a scope tip somewhere within its tolerance, vanes
 * somewhere where they leave it its room, a ray for every quarter of a degree.
 */
class BetweenTruthTest {

    private static final boolean CAMPAIGN = Boolean.getBoolean("everyblade.campaign");
    private static final int COURSES = CAMPAIGN ? 60 : 1;
    private static final double DIAMETER = 4;
    /** Of a facet whose middle is in sight, a quarter at the least is as well. */
    private static final double LEAST = 0.25;

    private static final Station.Tolerance TOLERANCE = new Station.Tolerance(0.5, 2);

    /** Surfaces, mm²: called seen, of that not in sight, in sight, and of that not called seen. */
    private static final class Tally {
        private double called;
        private double wrong;
        private double truly;
        private double less;

        /** A facet of which so much is called seen, and whose middle is in sight or not: an edge of sight may run between. */
        void add(double area, double seen, boolean isTruly) {
            boolean all = seen > area * (1 - 1e-3);
            called += all ? area : 0;
            wrong += all && !isTruly ? area : 0;
            truly += isTruly ? area : 0;
            less += isTruly && seen < area * LEAST ? area : 0;
        }

        double wrongly() {
            return called == 0 ? 1 : wrong / called;
        }

        double less() {
            return less / truly;
        }

        void tell(String what) {
            if (CAMPAIGN) {
                System.out.printf(
                        "%s: %d courses, of what is called seen %.3f %% was not in sight, of what was in sight %.1f %% is"
                                + " called less%n",
                        what, COURSES, 100 * wrongly(), 100 * less());
            }
        }
    }

    private static RowCoverage coverage(EngineModel model, String row, String... lines) {
        return new Job(Engine.of(model)).enter(lines).coverage().row(row);
    }

    /** Twelve vanes past 27, both placed by their maker: each fourth of them is alike. */
    @Nested
    class VanesPastVanesOfAnotherCount {

        private static final int VANES = 12;
        private static final double OWN = 3;
        private static final double OTHER = 17;

        private EngineModel model(double mm, double deg) {
            return new ShapedEngine()
                    .row("g", RowKind.STATOR, 27, 20, -36, OptionalDouble.of(OTHER))
                    .row("s", RowKind.STATOR, VANES, 20, 0, OptionalDouble.of(OWN))
                    .view("v", "s", ShapedEngine.station("st", -44, 130, new Heading(1, 0.2, -0.1), mm, deg))
                    .model();
        }

        private Tally tally(EngineModel model, RowCoverage coverage, Pose pose, IntUnaryOperator vane) {
            Tally tally = new Tally();
            add(tally, model, coverage, pose, vane);
            return tally;
        }

        /** What is called seen of a vane in place of each of four. */
        private void add(Tally tally, EngineModel model, RowCoverage coverage, Pose pose, IntUnaryOperator vane) {
            Row own = model.rows().get(1);
            for (int n = 1; n <= 4; n++) {
                double other = OTHER - OWN - 360.0 * (n - 1) / VANES;
                TrueSight sight =
                        new TrueSight(model, own, pose, Map.of(model.rows().get(0), other), Map.of());
                for (int facet = 0; facet < sight.facets(); facet++) {
                    tally.add(
                            sight.area(facet), coverage.seen(vane.applyAsInt(n), facet), sight.sees(facet, 0, 359.75));
                }
            }
        }

        private Pose nominal(EngineModel model) {
            return Pose.of(
                    model.views().get(0).stations().get(0), model.scopeTips().get(0));
        }

        @Test
        void eachHasItsOwnSight() {
            EngineModel model = model(0, 0);
            RowCoverage coverage = coverage(model, "s", "view v", "draw 360");
            Tally own = tally(model, coverage, nominal(model), n -> n);
            assertThat(own.wrongly()).isLessThan(0.005);
            assertThat(own.less()).isLessThan(0.005);
            Tally fifthOn = tally(model, coverage, nominal(model), n -> n + 4);
            assertThat(fifthOn.wrongly()).isEqualTo(own.wrongly());
            assertThat(fifthOn.less()).isEqualTo(own.less());
            assertThat(tally(model, coverage, nominal(model), n -> 2).wrongly()).isGreaterThan(0.1);
        }

        @Test
        void whereverWithinItsToleranceTheScopeTipStands() {
            EngineModel model = model(0.5, 2);
            RowCoverage coverage = coverage(model, "s", "view v", "draw 360");
            SplittableRandom random = new SplittableRandom(9);
            Tally tally = new Tally();
            for (int course = 0; course < Math.max(1, COURSES / 2); course++) {
                add(tally, model, coverage, Displaced.within(nominal(model), TOLERANCE, random), n -> n);
            }
            tally.tell("vanes past vanes of another count");
            assertThat(tally.wrongly()).isLessThan(0.005);
        }
    }

    /** A scope tip that looks past vanes at a rotor behind them, from among the vanes or from ahead of them. */
    @Nested
    class BladesPastVanes {

        private static final int BLADES = 20;
        private static final int VANES = 45;

        private final Station among = new Station(
                "among",
                -20,
                130,
                180.0 / VANES,
                new Heading(1, -0.3, -0.2),
                new Heading(0, 0, 1),
                TOLERANCE,
                Optional.empty());
        private final EngineModel model = new ShapedEngine()
                .row("r", RowKind.ROTOR, BLADES, 35, 0)
                .row("g", RowKind.STATOR, VANES, 20, -40)
                .view("v", "r", among)
                .model();
        private final EngineModel bare = new ShapedEngine()
                .row("r", RowKind.ROTOR, BLADES, 35, 0)
                .view("v", "r", among)
                .model();

        private void add(Tally tally, EngineModel model, RowCoverage coverage, Pose pose, double vane, double turned) {
            Map<Row, Double> still = Map.of(model.rows().get(1), vane);
            add(tally, coverage, new TrueSight(model, model.rows().get(0), pose, Map.of(), still), turned);
        }

        private void add(Tally tally, RowCoverage coverage, TrueSight sight, double turned) {
            for (int n = 1; n <= (turned < 360 ? BLADES : 1); n++) {
                double clock = 360.0 * (n - 1) / BLADES;
                for (int facet = 0; facet < sight.facets(); facet++) {
                    tally.add(
                            sight.area(facet),
                            coverage.seen(n, facet),
                            sight.sees(facet, clock, clock + Math.min(359.75, turned)));
                }
            }
        }

        /** Random courses, and those in which a vane all but touches the scope tip from the one side or the other. */
        private Tally courses(EngineModel model, RowCoverage coverage, double turned, int courses) {
            Pose nominal = Pose.of(
                    model.views().get(0).stations().get(0), model.scopeTips().get(0));
            Row vanes = model.rows().get(1);
            SplittableRandom random = new SplittableRandom(5);
            Tally tally = new Tally();
            double pitch = 360.0 / vanes.count();
            double[] free = IntStream.range(0, 100)
                    .mapToDouble(i -> i / 50.0 * pitch)
                    .filter(vane -> TrueSight.hasRoom(model, vanes, vane, nominal, DIAMETER))
                    .toArray();
            for (int i = 0; i < free.length; i++) {
                boolean first = i == 0 || free[i] - free[i - 1] > 0.03 * pitch;
                boolean last = i == free.length - 1 || free[i + 1] - free[i] > 0.03 * pitch;
                if (free[i] > 0.5 * pitch && free[i] < 1.5 * pitch && (first || last)) {
                    add(tally, model, coverage, nominal, free[i], turned);
                }
            }
            for (int course = 0; course < courses; ) {
                Pose pose = Displaced.within(nominal, TOLERANCE, random);
                double vane = pitch * random.nextDouble();
                if (TrueSight.hasRoom(model, vanes, vane, pose, DIAMETER)) {
                    add(tally, model, coverage, pose, vane, turned);
                    course++;
                }
            }
            return tally;
        }

        private RowCoverage turned(EngineModel of, double turned, String... more) {
            return new Job(Engine.of(of))
                    .enter("view v", "datum r 1", "turn " + Math.round(turned))
                    .enter(more)
                    .coverage()
                    .row("r");
        }

        @ParameterizedTest
        @ValueSource(doubles = {360, 40})
        void fromAmongThemTheyHideWhereverTheyMayStandThatLeavesTheScopeTipItsRoom(double turned) {
            Tally tally = courses(model, turned(model, turned), turned, COURSES);
            tally.tell("between two vanes, turned by " + turned);
            assertThat(tally.wrongly()).isLessThan(0.005);
            assertThat(courses(model, turned(bare, turned), turned, 0).wrongly())
                    .as("as if they were not there")
                    .isGreaterThan(0.05);
        }

        @Test
        void fromAheadTheyHideWhereverTheyMayStand() {
            EngineModel few = new ShapedEngine()
                    .row("r", RowKind.ROTOR, BLADES, 35, 0)
                    .row("g", RowKind.STATOR, 12, 20, -40)
                    .view("v", "r", ShapedEngine.station("ahead", -50, 130, new Heading(1, 0, -0.1), 0.5, 2))
                    .model();
            RowCoverage coverage = turned(few, 360);
            assertThat(seen(coverage)).isPositive();
            Tally tally = courses(few, coverage, 360, COURSES);
            tally.tell("ahead of vanes that may stand anywhere");
            assertThat(tally.wrongly()).isLessThan(0.005);
        }

        @Test
        void oneOfThemNamedSettlesWhereTheyStandForAllThatWasWatched() {
            RowCoverage settled = turned(model, 360, "datum g 1");
            assertThat(seen(settled)).isGreaterThan(seen(turned(model, 360)));
            Pose nominal = Pose.of(among, model.scopeTips().get(0));
            Tally tally = new Tally();
            SplittableRandom random = new SplittableRandom(6);
            for (int course = 0; course < COURSES; course++) {
                add(tally, model, settled, Displaced.within(nominal, TOLERANCE, random), 0, 360);
            }
            tally.tell("between two vanes that are known");
            assertThat(tally.wrongly()).isLessThan(0.005);
        }

        @Test
        void namedWithADoubtTheyStandWithinIt() {
            double close = seen(turned(model, 360, "datum g 1 ± 1"));
            double useless = seen(turned(model, 360, "datum g 1 ± 20"));
            assertThat(close).isLessThan(seen(turned(model, 360, "datum g 1"))).isGreaterThan(useless);
            assertThat(useless).isEqualTo(seen(turned(model, 360)));
        }

        private double seen(RowCoverage coverage) {
            return coverage.areas(coverage.zoning().all()).seen();
        }
    }
}
