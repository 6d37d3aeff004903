package everyblade.core.sight;

import static everyblade.core.sight.Plates.FACING;
import static everyblade.core.sight.Plates.UNDIVIDED;
import static everyblade.core.sight.Plates.cylinder;
import static everyblade.core.sight.Plates.facet;
import static everyblade.core.sight.Plates.only;
import static everyblade.core.sight.Plates.pose;
import static everyblade.core.sight.Plates.sight;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.ChordBand;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sight arcs that geometry gives in a line. */
class SightByHandTest {

    private static final Offset<Double> TICK = within(1e-6);

    @Nested
    class Grazing {

        /** A facet that faces the axis 10 mm away, and a scope tip on the axis: the same line of sight all the way round. */
        private boolean seen(double elevation, Criteria criteria, Zoning zoning) {
            double x = 10 / Math.tan(Math.toRadians(elevation));
            SightScene scene = SightScene.of(facet(0, 0, 10, 0, 0, -1), 1, zoning);
            var arcs = sight(scene, pose(-x, 0, 0, 1, 0, 0), criteria).arcs(0);
            assertThat(arcs.isFull() || arcs.isEmpty()).isTrue();
            return arcs.isFull();
        }

        /** ISO 17637:2003 clause 2; ASME BPVC Section V Article 9, T-952. */
        @Test
        void aLineOfSightAt30DegreesToTheSurfacePassesAndOneAt29Point9Fails() {
            assertThat(seen(30.0, Criteria.USUAL, UNDIVIDED)).isTrue();
            assertThat(seen(29.9, Criteria.USUAL, UNDIVIDED)).isFalse();
        }

        @Test
        void theAngleIsCountedFromTheSurfaceNotFromItsNormal() {
            assertThat(seen(59, Criteria.USUAL, UNDIVIDED)).isTrue();
            assertThat(seen(31, Criteria.USUAL, UNDIVIDED)).isTrue();
            assertThat(seen(1, Criteria.USUAL, UNDIVIDED)).isFalse();
        }

        @Test
        void aChordBandMayHaveItsOwn() {
            Zoning leading = new Zoning(List.of(), List.of(), List.of("leading", "middle", "trailing"));
            Zoning trailing = new Zoning(List.of(), List.of(), List.of("trailing"));
            Criteria edges = new Criteria(
                    Turn.ofDegrees(30), Map.of(ChordBand.LEADING, Turn.ofDegrees(5)), OptionalDouble.empty());

            assertThat(seen(5.0, edges, leading)).isTrue();
            assertThat(seen(4.9, edges, leading)).isFalse();
            assertThat(seen(29.9, edges, trailing)).isFalse();
        }

        @Test
        void aFacetTurnedAwayIsNotSeenAtAnyAngle() {
            SightScene scene = SightScene.of(facet(0, 0, 10, 0, 0, 1), 1, UNDIVIDED);

            assertThat(sight(scene, pose(-1, 0, 0, 1, 0, 0), FACING).arcs(0).isEmpty())
                    .isTrue();
        }
    }

    @Nested
    class ABareAnnulus {

        @ParameterizedTest
        @CsvSource({"17.795, 35.083, 59.5208", "32.33, 36.60, 27.9529"})
        void showsTheHubFromTheCasingAsFarAsItsHorizon(double hub, double casing, double horizon) {
            SightScene bare = SightScene.of(facet(0, 0, hub, 0, 0, 1), 1, UNDIVIDED);
            Pose tip = pose(0, casing, 100, 0, 0, -1);

            double[] arc = only(sight(bare, tip, FACING).arcs(0));

            assertThat(arc[0]).isCloseTo(100 - horizon, within(1e-4));
            assertThat(arc[1]).isCloseTo(100 + horizon, within(1e-4));
        }

        @ParameterizedTest
        @CsvSource({"17.795, 35.083, 59.5208", "32.33, 36.60, 27.9529"})
        void isHiddenByItsHubBeyondTheHorizon(double hub, double casing, double horizon) {
            Mesh fin = facet(0, 0, hub, 0, 1, 0);
            SightScene walled = SightScene.of(fin, 1, UNDIVIDED)
                    .withWall(cylinder("hub", hub))
                    .withWall(cylinder("casing", casing));

            double[] arc =
                    only(sight(walled, pose(0, casing, 100, 0, 0, -1), FACING).arcs(0));

            assertThat(arc[0]).isCloseTo(100 - horizon, within(1e-3));
            assertThat(arc[1]).isCloseTo(100, within(1e-3));
        }

        @Test
        void isHiddenByAConeAsByTheLineThatTouchesIt() {
            // From the point (0, 0, 10) on a cone of half angle 45° with its tip at x = −10 one sees all that is before
            // the
            // plane which touches it there: z − 10 ≥ x. A scope tip at x = 5, r = 20 crosses it where 20 cos α = 15.
            SightScene scene = SightScene.of(facet(0, 0, 10 + 1e-6, -1, 0, 1), 1, UNDIVIDED)
                    .withWall(new everyblade.spi.Wall(
                            "hub",
                            java.util.Optional.empty(),
                            List.of(
                                    new everyblade.spi.MeridionalPoint(-10, 0),
                                    new everyblade.spi.MeridionalPoint(90, 100))));

            double[] arc = only(sight(scene, pose(5, 20, 0, -1, 0, -1), FACING).arcs(0));

            assertThat(arc[1]).isCloseTo(Math.toDegrees(Math.acos(15.0 / 20)), within(1e-2));
            assertThat(arc[0]).isCloseTo(-arc[1], within(1e-6));
        }

        @Test
        void isHiddenByAStepSquareToTheAxis() {
            SightScene scene = SightScene.of(facet(0, 0, 10, 1, 0, 0.1), 1, UNDIVIDED)
                    .withWall(new everyblade.spi.Wall(
                            "hub",
                            java.util.Optional.empty(),
                            List.of(
                                    new everyblade.spi.MeridionalPoint(5, 12),
                                    new everyblade.spi.MeridionalPoint(5, 0))));

            // Half-way to a tip at x = 10, r = 20 the line is at r² = (10² + 20² + 400 cos α) / 4, which is 12² at cos
            // α = 0.19.
            double[] arc = only(sight(scene, pose(10, 20, 0, -1, 0, -1), FACING).arcs(0));

            assertThat(arc[1]).isCloseTo(Math.toDegrees(Math.acos(0.19)), TICK);
        }

        @Test
        void isHiddenByARowThatTurnsBetweenFromTheNearestPointOfAStraightEdgeOn() {
            // A plate square to the axis at x = 5: its lower edge is nearest to the axis, 10 mm, in its middle.
            double[] points = {5, -8, 10, 5, 8, 10, 5, 8, 14, 5, -8, 14};
            Mesh plate = new Mesh(points, new int[] {0, 1, 2, 3}, new int[] {0, 4}, new int[] {0});
            SightScene scene =
                    SightScene.of(facet(0, 0, 10, 1, 0, 0.1), 1, UNDIVIDED).withSwept(plate);

            // Half-way the line is at r² = (10² + 20² + 400 cos α) / 4, which is 10² at cos α = −0.25.
            double[] arc =
                    only(sight(scene, pose(10, 20, 180, -1, 0, -1), FACING).arcs(0));

            double edge = Math.toDegrees(Math.acos(-0.25));
            assertThat(arc[0]).isCloseTo(180 + edge - 360, TICK);
            assertThat(arc[1]).isCloseTo(180 - edge, TICK);
        }
    }

    @Nested
    class Distance {

        @Test
        void cutsWhereTheTipIsNearerThanNearOrFartherThanFar() {
            // Both at radius 10: apart by the chord 20 sin(α / 2).
            SightScene scene = SightScene.of(facet(0, 0, 10, 0, 0, -1), 1, UNDIVIDED);
            Pose tip = Plates.within(pose(0, 10, 0, 0, 0, -1), 10, 20 * Math.sin(Math.toRadians(40)));

            var arcs = sight(scene, tip, FACING).arcs(0).arcs();

            assertThat(arcs).hasSize(2);
            assertThat(arcs.get(0).start() / 3.6e6).isCloseTo(60, TICK);
            assertThat(arcs.get(0).length() / 3.6e6).isCloseTo(20, TICK);
            assertThat(arcs.get(1).start() / 3.6e6).isCloseTo(280, TICK);
        }

        @ParameterizedTest
        @ValueSource(doubles = {20, 10, 30})
        void theConeCutsAtHalfItsAngle(double half) {
            // From a tip on the axis that looks along a facet's radius the facet is off the optical axis by its clock.
            SightScene scene = SightScene.of(facet(0, 0, 10, 0, 0, -1), 1, UNDIVIDED);
            Pose tip = Plates.cone(pose(0, 0, 70, 0, 0, 1), 2 * half);

            double[] arc = only(sight(scene, tip, FACING).arcs(0));

            assertThat(arc[0]).isCloseTo(70 - half, TICK);
            assertThat(arc[1]).isCloseTo(70 + half, TICK);
        }
    }

    @Nested
    class Detail {

        /** 640 pixels over 178°, facet seen squarely from 10 mm: three pixels are 3 · 2 · 10 · tan 89° / 640. */
        private static final double THREE_PIXELS = 3 * 2 * 10 * Math.tan(Math.toRadians(89)) / 640;

        private boolean seen(double elevation, double detail) {
            double distance = 10 / Math.sin(Math.toRadians(elevation));
            double x = distance * Math.cos(Math.toRadians(elevation));
            SightScene scene = SightScene.of(facet(0, 0, 10, 0, 0, -1), 1, UNDIVIDED);
            return sight(scene, pose(-x, 0, 0, 1, 0, 1), Criteria.USUAL.withDetail(detail))
                    .arcs(0)
                    .contains(0);
        }

        @Test
        void isFineEnoughIfThreePixelsAreNotLarger() {
            assertThat(seen(90, THREE_PIXELS)).isTrue();
            assertThat(seen(90, 0.999 * THREE_PIXELS)).isFalse();
        }

        /** At 60° from the normal the facet is twice as far here, and a footprint twice as long again. */
        @Test
        void growsWithDistanceAndWithTilt() {
            assertThat(seen(30, 4 * THREE_PIXELS)).isTrue();
            assertThat(seen(30, 3.996 * THREE_PIXELS)).isFalse();
        }
    }

    @Nested
    class AFlatPlateCascade {

        private double seenChord(SightScene scene, Pose pose, Turn at, int facets) {
            SightArcs sight = sight(scene, pose, FACING);
            int seen = 0;
            while (seen < facets && sight.arcs(seen).contains(at.floorTicks())) {
                seen++;
            }
            return (double) seen / facets;
        }

        /** Chord 1, spacing 0.8, no stagger: seen from the leading edge over 0.8 / tan θ. */
        @ParameterizedTest
        @CsvSource({"45, 0.8", "60, 0.461880", "30, 1"})
        void showsToAFarEyeWhatTheNeighbourLeaves(double angle, double chord) {
            double radius = 1e6;
            double far = 800;
            Mesh plate = Plates.plate(200, radius, 20);
            Ring neighbour = new Ring(plate, 1, Turn.ofDegrees(Math.toDegrees(0.8 / radius)));
            SightScene scene = SightScene.of(plate, 1, UNDIVIDED).withMate(neighbour);
            double round = far * Math.sin(Math.toRadians(angle));
            Pose eye = pose(-far * Math.cos(Math.toRadians(angle)), radius, Math.toDegrees(round / radius), 1, -1, 0);

            assertThat(seenChord(scene, eye, Turn.ZERO, 200)).isCloseTo(chord, within(0.006));
        }

        /** Eye at (−1, 2), the neighbour's edge at (0, 0.5): hidden from x = 0.5 · 1 / (2 − 0.5) on. */
        @Test
        void showsToANearEyeWhatTheNeighbourLeaves() {
            double radius = 1e3;
            Mesh plate = Plates.plate(300, radius, 1);
            Ring neighbour = new Ring(plate, 1, Turn.ofDegrees(Math.toDegrees(0.5 / radius)));
            SightScene scene = SightScene.of(plate, 1, UNDIVIDED).withMate(neighbour);
            Pose eye = pose(-1, radius, Math.toDegrees(2 / radius), 1, -1, 0);

            assertThat(seenChord(scene, eye, Turn.ZERO, 300)).isCloseTo(1.0 / 3, within(0.004));
        }
    }

    @Nested
    class ASphere {

        private Mesh sphere(int round, int along) {
            double[] points = new double[3 * round * (along + 1)];
            int[] corners = new int[4 * round * along];
            int[] start = new int[round * along + 1];
            for (int j = 0; j <= along; j++) {
                double polar = Math.PI * (0.02 + 0.96 * j / along);
                for (int i = 0; i < round; i++) {
                    int at = 3 * (j * round + i);
                    points[at] = -Math.cos(polar);
                    points[at + 1] = Math.sin(polar) * Math.sin(2 * Math.PI * i / round);
                    points[at + 2] = Math.sin(polar) * Math.cos(2 * Math.PI * i / round);
                }
            }
            for (int j = 0; j < along; j++) {
                for (int i = 0; i < round; i++) {
                    int face = j * round + i;
                    int next = (i + 1) % round;
                    int[] around = {j * round + i, (j + 1) * round + i, (j + 1) * round + next, j * round + next};
                    System.arraycopy(around, 0, corners, 4 * face, 4);
                    start[face + 1] = 4 * (face + 1);
                }
            }
            return new Mesh(points, corners, start, new int[round * along]);
        }

        /** Share of a sphere of radius r seen from the distance d of its centre: (1 − r/d) / 2. */
        @ParameterizedTest
        @CsvSource({"2, 0.25", "3, 0.333333"})
        void showsAShareThatDependsOnTheDistanceAlone(double distance, double share) {
            Mesh sphere = sphere(80, 60);
            Facets facets = Facets.of(sphere);
            SightArcs sight = sight(SightScene.of(sphere, 1, UNDIVIDED), pose(0, distance, 0, 0, 0, -1), FACING);
            double seen = 0;
            for (int facet = 0; facet < facets.count(); facet++) {
                seen += sight.arcs(facet).contains(0) ? facets.area(facet) : 0;
            }

            assertThat(seen / (4 * Math.PI)).isCloseTo(share, within(0.01));
        }
    }

    @Nested
    class AFacet {

        /** Folded to a ridge, its middle lies behind its own two triangles. */
        @Test
        void neverHidesItself() {
            double[] points = {-1, 0, 12, 0, -1, 10, 1, 0, 12, 0, 1, 10};
            Mesh warped = new Mesh(points, new int[] {0, 1, 2, 3}, new int[] {0, 4}, new int[] {0});
            Facets facets = Facets.of(warped);
            double[] middle = {facets.centroid(0, 0), facets.centroid(0, 1), facets.centroid(0, 2)};
            double[] eye = {middle[0], 0.1, 40};

            assertThat(!Double.isNaN(Ray.meets(eye, middle, at(points, 0), at(points, 1), at(points, 2)))
                            || !Double.isNaN(Ray.meets(eye, middle, at(points, 0), at(points, 2), at(points, 3))))
                    .as("a ray to its middle meets it")
                    .isTrue();
            assertThat(sight(SightScene.of(warped, 1, UNDIVIDED), pose(middle[0], 40, 0, 0, 0, -1), FACING)
                            .arcs(0)
                            .contains(0))
                    .isTrue();
        }

        @Test
        void isHiddenByAnotherOfItsOwnAirfoil() {
            double[] points = {-1, -1, 10, 1, -1, 10, 1, 1, 10, -1, 1, 10, -1, -1, 12, 1, -1, 12, 1, 1, 12, -1, 1, 12};
            Mesh shelves = new Mesh(points, new int[] {0, 1, 2, 3, 4, 5, 6, 7}, new int[] {0, 4, 8}, new int[] {0, 0});

            SightArcs sight = sight(SightScene.of(shelves, 1, UNDIVIDED), pose(0, 40, 0, 0, 0, -1), FACING);

            assertThat(sight.arcs(0).contains(0)).isFalse();
            assertThat(sight.arcs(1).contains(0)).isTrue();
        }

        private double[] at(double[] points, int i) {
            return new double[] {points[3 * i], points[3 * i + 1], points[3 * i + 2]};
        }
    }
}
