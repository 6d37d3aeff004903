package everyblade.core.sight;

import static everyblade.core.sight.Plates.FACING;
import static everyblade.core.sight.Plates.UNDIVIDED;
import static everyblade.core.sight.Plates.facet;
import static everyblade.core.sight.Plates.pose;
import static everyblade.core.sight.Plates.sight;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Views;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SightArcsTest {

    private static List<String> text(SightArcs sight) {
        return IntStream.range(0, sight.facetCount())
                .mapToObj(facet -> sight.arcs(facet).toString())
                .toList();
    }

    @Nested
    class Computing {

        @Test
        void givesTheSameOnOneThreadAndOnFour() throws Exception {
            Views views = Views.axial(new Fineness(16, 8));
            List<List<String>> results = new ArrayList<>();
            for (int threads : new int[] {1, 4}) {
                ForkJoinPool pool = new ForkJoinPool(threads);
                try {
                    results.add(pool.submit(() -> text(sight(views.scene(), views.pose(), Criteria.USUAL)))
                            .get());
                } finally {
                    pool.shutdown();
                }
            }

            assertThat(results.get(1)).isEqualTo(results.get(0));
            assertThat(results.get(0)).anyMatch(arcs -> arcs.contains(")"));
        }

        @Test
        void givesOfManyPosesTheSameAsOneByOne() throws UnusableShape {
            Views views = Views.impeller(new Fineness(6, 4));
            List<Pose> poses = PoseFamily.of(views.pose(), new Tolerance(1, 5));

            List<SightArcs> together = SightArcs.compute(views.scene(), poses, Criteria.USUAL, Progress.NONE);

            for (int i = 0; i < poses.size(); i++) {
                assertThat(text(together.get(i))).isEqualTo(text(sight(views.scene(), poses.get(i), Criteria.USUAL)));
            }
        }

        @Test
        void tellsHowFarItIs() throws UnusableShape {
            Views views = Views.axial(new Fineness(6, 4));
            AtomicInteger calls = new AtomicInteger();
            AtomicInteger most = new AtomicInteger();
            Progress progress = new Progress() {
                @Override
                public void done(int parts, int all) {
                    calls.incrementAndGet();
                    assertThat(parts).isBetween(1, all);
                    most.accumulateAndGet(parts, Math::max);
                }
            };

            int facets = SightArcs.compute(views.scene(), views.pose(), Criteria.USUAL, progress)
                    .facetCount();

            assertThat(calls.get()).isPositive().isEqualTo(most.get());
            assertThat(calls.get()).as("sixteen facets a part").isEqualTo((int) Math.ceil(facets / 16.0));
        }

        @Test
        void stopsWhenCancelled() throws UnusableShape {
            Views views = Views.axial(new Fineness(6, 4));
            Progress cancelled = new Progress() {
                @Override
                public boolean cancelled() {
                    return true;
                }
            };

            assertThatThrownBy(() -> SightArcs.compute(views.scene(), views.pose(), Criteria.USUAL, cancelled))
                    .isInstanceOf(CancellationException.class);
        }
    }

    @Nested
    class WhyAFacetIsNeverInSight {

        private final Mesh facing = facet(0, 0, 10, 0, 0, 1);
        private final SightScene scene = SightScene.of(facing, 1, UNDIVIDED);
        private final Pose above = pose(0, 20, 0, 0, 0, -1);

        private Optional<Hindrance> why(SightScene scene, Pose pose, Criteria criteria) {
            return sight(scene, pose, criteria).why(0);
        }

        @Test
        void nothingIfItIsSeenAtSomeAngle() {
            assertThat(why(scene, above, FACING)).isEmpty();
        }

        @Test
        void itLiesOutsideTheConeAllTheWayRound() {
            assertThat(why(scene, Plates.cone(pose(0, 20, 0, 1, 0, 0), 60), FACING))
                    .contains(Hindrance.OUTSIDE_CONE);
        }

        @Test
        void itIsTooFarOrTooNear() {
            assertThat(why(scene, Plates.within(above, 0, 9), FACING)).contains(Hindrance.OUT_OF_RANGE);
            assertThat(why(scene, Plates.within(above, 31, 40), FACING)).contains(Hindrance.OUT_OF_RANGE);
        }

        @Test
        void itIsTurnedAway() {
            assertThat(why(scene, pose(0, 5, 0, 0, 0, 1), FACING)).contains(Hindrance.GRAZING);
        }

        @Test
        void pixelsAreTooLargeOnIt() {
            assertThat(why(scene, above, Criteria.USUAL.withDetail(0.001))).contains(Hindrance.TOO_COARSE);
        }

        @Test
        void itIsHidden() {
            assertThat(why(scene.withWall(Plates.cylinder("liner", 15)), above, FACING))
                    .contains(Hindrance.HIDDEN);
        }

        @Test
        void eachHindranceLeavesLessOfTheTurn() {
            SightArcs sight = sight(scene, Plates.within(Plates.cone(above, 90), 0, 11), Criteria.USUAL);
            double last = 1;
            for (Hindrance hindrance : Hindrance.values()) {
                assertThat(sight.left(0, hindrance)).isBetween(0.001, last);
                last = sight.left(0, hindrance);
            }
            assertThat(last)
                    .isCloseTo(
                            (double) sight.arcs(0).measure()
                                    / sight.arcs(0).circle().ticks(),
                            within(1e-12));
        }
    }

    @Nested
    class APose {

        private final Pose nominal = Pose.of(
                new Station(
                        "mid",
                        12,
                        30,
                        350,
                        new Heading(2, 0, 0),
                        new Heading(0, 0, 5),
                        new Tolerance(1, 10),
                        Optional.empty()),
                new ScopeTip("fwd60", 60, 0, 4, 60, 640, 3.9, OptionalDouble.empty()));

        @Test
        void standsWhereItsStationDoesAndSeesAsItsScopeTipDoes() {
            assertThat(nominal.x()).isEqualTo(12);
            assertThat(nominal.r()).isEqualTo(30);
            assertThat(nominal.clock().degrees()).isEqualTo(350);
            assertThat(nominal.forward()).isEqualTo(new Heading(1, 0, 0));
            assertThat(nominal.up()).isEqualTo(new Heading(0, 0, 1));
            assertThat(nominal.cone().degrees()).isEqualTo(60);
            assertThat(nominal.near()).isEqualTo(4);
            assertThat(nominal.far()).isEqualTo(60);
            assertThat(nominal.pixels()).isEqualTo(640);
        }

        @Test
        void hasAFamilyOf27WithItselfFirst() {
            List<Pose> family = PoseFamily.of(nominal, new Tolerance(1, 10));

            assertThat(family).hasSize(27).doesNotHaveDuplicates();
            assertThat(family.get(0)).isEqualTo(nominal);
            assertThat(family).isEqualTo(PoseFamily.of(nominal, new Tolerance(1, 10)));
        }

        @Test
        void movesInItsFamilyByTheToleranceAlongEachAxis() {
            double clock = nominal.clock().degrees();
            for (Pose pose : PoseFamily.of(nominal, new Tolerance(1, 10))) {
                double turned = Math.toRadians(pose.clock().degrees() - clock);
                double tangential = pose.r() * Math.sin(turned);
                double radial = pose.r() * Math.cos(turned) - 30;
                assertThat(List.of(pose.x() - 12, tangential, radial))
                        .allSatisfy(off -> assertThat(Math.min(Math.abs(off), Math.abs(Math.abs(off) - 1)))
                                .isLessThan(1e-6));
            }
        }

        @Test
        void tiltsInItsFamilyUpAndAcrossByTurns() {
            List<Pose> family = PoseFamily.of(nominal, new Tolerance(0, 10));
            double sine = Math.sin(Math.toRadians(10));

            // It looks aft with its picture's top outward: the right of the picture is anticlockwise.
            assertThat(family.get(1).forward().radial()).isCloseTo(sine, within(1e-12));
            assertThat(family.get(2).forward().tangential()).isCloseTo(-sine, within(1e-12));
            assertThat(family.get(3).forward().radial()).isCloseTo(-sine, within(1e-12));
            assertThat(family.get(4).forward().tangential()).isCloseTo(sine, within(1e-12));
            assertThat(family.subList(1, 27))
                    .allSatisfy(pose ->
                            assertThat(pose.forward().axial()).isCloseTo(Math.cos(Math.toRadians(10)), within(1e-12)));
        }

        @Test
        void isItselfTwentySevenTimesWithoutATolerance() {
            assertThat(PoseFamily.of(nominal, new Tolerance(0, 0))).containsOnly(nominal);
        }

        @Test
        void crossesTheAxisInItsFamilyWhereItStandsNearIt() {
            Pose inner = new Pose(
                    0,
                    0.5,
                    nominal.clock(),
                    nominal.forward(),
                    nominal.up(),
                    nominal.cone(),
                    nominal.near(),
                    nominal.far(),
                    640);

            assertThat(PoseFamily.of(inner, new Tolerance(1, 0)))
                    .filteredOn(pose -> Math.abs(pose.r() - 0.5) < 1e-9)
                    .hasSize(6);
        }

        @Test
        void standsOnOneSideOfTheAxisAndSeesSomewhere() {
            Heading aft = new Heading(1, 0, 0);
            List<ThrowingCallable> wrong = List.of(
                    () -> pose(Double.NaN, 1, 60, 1, 2, 1, aft),
                    () -> pose(0, -1, 60, 1, 2, 1, aft),
                    () -> pose(0, Double.POSITIVE_INFINITY, 60, 1, 2, 1, aft),
                    () -> pose(0, 1, 0, 1, 2, 1, aft),
                    () -> pose(0, 1, 180, 1, 2, 1, aft),
                    () -> pose(0, 1, 60, -1, 2, 1, aft),
                    () -> pose(0, 1, 60, 3, 2, 1, aft),
                    () -> pose(0, 1, 60, 1, Double.POSITIVE_INFINITY, 1, aft),
                    () -> pose(0, 1, 60, 1, 2, 0, aft),
                    () -> pose(0, 1, 60, 1, 2, 1, new Heading(0, 0, 0)),
                    () -> pose(0, 1, 60, 1, 2, 1, new Heading(Double.NaN, 0, 1)));

            assertThat(wrong)
                    .allSatisfy(one -> assertThatThrownBy(one)
                            .isInstanceOf(IllegalArgumentException.class)
                            .hasMessageStartingWith("not a pose of a scope tip: "));
            assertThat(pose(0, 0, 1, 0, 0, 1, aft).far()).isZero();
        }

        private static Pose pose(
                double x, double r, double cone, double near, double far, int pixels, Heading forward) {
            return new Pose(x, r, Turn.ZERO, forward, new Heading(0, 0, 1), Turn.ofDegrees(cone), near, far, pixels);
        }

        @Test
        void hasHeadingsOfUnitLength() {
            Pose slanted = pose(0, 1, 60, 1, 2, 1, new Heading(2, -3, 6));

            assertThat(slanted.forward()).isEqualTo(new Heading(2 / 7.0, -3 / 7.0, 6 / 7.0));
        }
    }
}
