package everyblade.core.surface;

import static everyblade.core.surface.Shapes.annulus;
import static everyblade.core.surface.Shapes.prism;
import static everyblade.core.surface.Shapes.section;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import everyblade.spi.EngineModel;
import everyblade.spi.Shape;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class AxialSurfaceTest {

    @Nested
    class WhereItStands {

        @Test
        void tipsStayFromTheCasingByTheClearance() throws UnusableShape {
            for (double clearance : new double[] {0.2, 0.5, 3}) {
                Solid solid = annulus()
                        .solid(new everyblade.spi.Shape.Axial(
                                prism(40, 30, 0, 0.1, 12).sections(), clearance));
                assertThat(solid.mesh().mostRadius()).isCloseTo(150.5 - clearance, within(1e-9));
            }
        }

        @Test
        void theChordIsAsGivenAndRunsFromTheLeadingEdgesXAtTheStagger() throws UnusableShape {
            Solid solid = annulus().solid(prism(40, 30, 0, 0.1, 12));
            int[] edges = solid.farthest(solid.least(solid::r));
            double dx = solid.mesh().x(edges[1]) - solid.mesh().x(edges[0]);
            double dv = solid.clockwise(edges[1]) - solid.clockwise(edges[0]);

            assertThat(solid.mesh().x(edges[0])).isCloseTo(12, within(1e-9));
            assertThat(Math.hypot(dx, dv)).isCloseTo(40, within(1e-9));
            assertThat(Math.toDegrees(Math.atan2(dv, dx))).isCloseTo(30, within(1e-9));
        }

        @Test
        void withPositiveStaggerTheTrailingEdgeLiesClockwiseOfTheLeadingEdge() throws UnusableShape {
            Solid solid = annulus().solid(prism(40, 30, 25, 0.1, 0));

            assertThat(meanClockwise(solid, "trailing")).isGreaterThan(meanClockwise(solid, "leading") + 10);
        }

        @Test
        void withNegativeStaggerItLiesTheOtherWay() throws UnusableShape {
            Solid solid = annulus().solid(prism(40, -30, 25, 0.1, 0));

            assertThat(meanClockwise(solid, "trailing")).isLessThan(meanClockwise(solid, "leading") - 10);
        }

        @Test
        void midChordStandsAtClockZero() throws UnusableShape {
            Solid solid = annulus().solid(prism(40, 50, 0, 0.1, 12));
            int[] edges = solid.farthest(solid.least(solid::r));

            assertThat(solid.clockwise(edges[0]) + solid.clockwise(edges[1])).isCloseTo(0, within(1e-9));
        }

        @Test
        void atEveryXTheRootIsOnTheHubAndTheTipAHalfMillimetreBelowTheCasing() throws UnusableShape {
            Solid solid = annulus()
                    .hub(-10, 80, 20, 100, 60, 104)
                    .casing(-10, 160, 60, 150)
                    .solid(prism(40, 20, 30, 0.1, 0));
            double[] share = new double[solid.mesh().pointCount()];
            for (int p = 0; p < share.length; p++) {
                double x = solid.mesh().x(p);
                double hub = x < 20 ? 80 + (x + 10) / 30 * 20 : 100 + (x - 20) / 40 * 4;
                double casing = 160 - (x + 10) / 70 * 10;
                share[p] = (solid.r(p) - hub) / (casing - 0.5 - hub);
            }

            assertThat(Arrays.stream(share)).allMatch(s -> Math.abs(s * 8 - Math.rint(s * 8)) < 1e-9);
            assertThat(solid.points(p -> Math.abs(share[p]) < 1e-9).count()).isEqualTo(32);
            assertThat(solid.points(p -> Math.abs(share[p] - 1) < 1e-9).count()).isEqualTo(32);
        }

        @Test
        void betweenTwoSectionsEverythingFollowsStraightLines() throws UnusableShape {
            Shape bent = new Shape.Axial(List.of(section(0, 30, 10, 0, 0.1, 0), section(1, 50, 40, 0, 0.1, -8)));
            Solid solid = annulus().solid(bent);
            List<Integer> middle =
                    solid.points(p -> Math.abs(solid.r(p) - 125) < 1e-6).boxed().toList();
            int[] edges = solid.farthest(middle);
            double dx = solid.mesh().x(edges[1]) - solid.mesh().x(edges[0]);
            double dv = solid.clockwise(edges[1]) - solid.clockwise(edges[0]);

            assertThat(solid.mesh().x(edges[0])).isCloseTo(-4, within(1e-9));
            assertThat(Math.hypot(dx, dv)).isCloseTo(40, within(1e-9));
            assertThat(Math.toDegrees(Math.atan2(dv, dx))).isCloseTo(25, within(1e-9));
        }

        @Test
        void theMetalAnglesAreStaggerPlusAndMinusHalfTheCamber() throws UnusableShape {
            Solid solid = annulus().fineness(400, 1).solid(prism(40, 30, 50, 1e-6, 0));
            List<Integer> root = solid.least(solid::r);
            int[] edges = solid.farthest(root);

            assertThat(directionFrom(solid, edges[0], root)).isCloseTo(55, within(0.5));
            assertThat(directionFrom(solid, edges[1], root)).isCloseTo(5 - 180, within(0.5));
        }

        @Test
        void aPositionOfMovableVanesTurnsTheStagger() throws UnusableShape {
            assertThat(annulus().turnedBy(18).solid(prism(40, 12, 20, 0.1, 0)).mesh())
                    .isEqualTo(annulus().solid(prism(40, 30, 20, 0.1, 0)).mesh())
                    .isNotEqualTo(annulus().solid(prism(40, 12, 20, 0.1, 0)).mesh());
        }

        private double meanClockwise(Solid solid, String zone) {
            return solid.faces(zone)
                    .flatMap(solid::corners)
                    .mapToDouble(solid::clockwise)
                    .average()
                    .orElseThrow();
        }

        /** Degrees from the axial direction to the nearest points of a list, away from their foot. */
        private double directionFrom(Solid solid, int foot, List<Integer> among) {
            int nearest = among.stream()
                    .filter(p -> p != foot)
                    .min(Comparator.comparingDouble(p -> Math.hypot(
                            solid.mesh().x(p) - solid.mesh().x(foot), solid.clockwise(p) - solid.clockwise(foot))))
                    .orElseThrow();
            return Math.toDegrees(Math.atan2(
                    solid.clockwise(nearest) - solid.clockwise(foot),
                    solid.mesh().x(nearest) - solid.mesh().x(foot)));
        }
    }

    @Nested
    class Sides {

        @Test
        void theSuctionSideIsTheConvexOne() throws UnusableShape {
            assertThat(towardsClockwise(annulus().solid(prism(40, 0, 40, 0.1, 0)), "suction"))
                    .isPositive();
            assertThat(towardsClockwise(annulus().solid(prism(40, 0, -40, 0.1, 0)), "suction"))
                    .isNegative();
        }

        @Test
        void withoutCamberItIsTheClockwiseOne() throws UnusableShape {
            assertThat(towardsClockwise(annulus().solid(prism(40, 60, 0, 0.1, 0)), "suction"))
                    .isPositive();
            assertThat(towardsClockwise(annulus().solid(prism(40, -60, 0, 0.1, 0)), "suction"))
                    .isPositive();
        }

        @Test
        void thePressureSideIsTheOther() throws UnusableShape {
            assertThat(towardsClockwise(annulus().solid(prism(40, 0, 40, 0.1, 0)), "pressure"))
                    .isNegative();
        }

        @Test
        void theConvexSideBulgesAwayFromTheChord() throws UnusableShape {
            Solid solid = annulus().solid(prism(40, 0, 40, 0.02, 0));

            assertThat(solid.faces("middle").flatMap(solid::corners).mapToDouble(solid::clockwise))
                    .allMatch(v -> v > 1.5);
        }

        private double towardsClockwise(Solid solid, String side) {
            return solid.faces(side)
                    .mapToDouble(f -> solid.facets().area(f) * solid.facets().normal(f, 1))
                    .sum();
        }
    }

    @Nested
    class WhenMirrored {

        @Test
        void withCamberTheMirroredShapeIsTheMirrorImageSideForSide() throws UnusableShape {
            assertThat(placesByZone(annulus().solid(prism(40, -30, -25, 0.1, 0)), -1))
                    .isEqualTo(placesByZone(annulus().solid(prism(40, 30, 25, 0.1, 0)), 1));
        }

        @Test
        void theUncamberedOneAlsoButForTheNamesOfItsSides() throws UnusableShape {
            Shapes undivided = annulus().withoutSides();

            assertThat(placesByZone(undivided.solid(prism(40, -30, 0, 0.1, 0)), -1))
                    .isEqualTo(placesByZone(undivided.solid(prism(40, 30, 0, 0.1, 0)), 1));
        }

        private TreeSet<String> placesByZone(Solid solid, int sense) {
            TreeSet<String> places = new TreeSet<>();
            for (int f = 0; f < solid.mesh().faceCount(); f++) {
                places.add(String.format(
                        Locale.ROOT,
                        "%s %.6f %.6f %.6f",
                        solid.zone(f),
                        solid.facets().centroid(f, 0),
                        0.0 + Math.rint(sense * solid.facets().centroid(f, 1) * 1e6) / 1e6,
                        solid.facets().centroid(f, 2)));
            }
            return places;
        }
    }

    @Nested
    class ThatCannotBe {

        @Test
        void withoutAWallIsRefused() {
            EngineModel whole = annulus().model(prism(40, 0, 0, 0.1, 0));
            EngineModel bare = new EngineModel(
                    "m", "m", Optional.empty(), List.of(), List.of(), whole.rows(), List.of(), List.of(), List.of());

            assertThatThrownBy(() -> Surfaces.of(bare, whole.rows().get(0), Optional.empty()))
                    .extracting(Shapes::told, STRING)
                    .isEqualTo("row c1: the model has no wall hub, between which and its like axial airfoils stand; add"
                            + " the walls hub and casing");
        }

        @Test
        void whereTheWallsLeaveNoRoomIsRefusedWithThePlace() {
            assertThatThrownBy(() -> annulus().hub(0, 100, 40, 160).solid(prism(40, 0, 0, 0.1, 0)))
                    .extracting(Shapes::told, STRING)
                    .startsWith("row c1: at x = ")
                    .contains("leaves no room above the hub");
        }

        @Test
        void aWallWithoutLengthIsRefused() {
            assertThatThrownBy(() -> annulus().hub(5, 100, 5, 100).solid(prism(40, 0, 0, 0.1, 0)))
                    .extracting(Shapes::told, STRING)
                    .contains("the curve of the wall hub has no length");
        }
    }

    @Test
    void shapesOfAllKindsAreClosedButForTheirEndsAndFaceOutOfTheMetal() throws UnusableShape {
        SplittableRandom random = new SplittableRandom(20240601);
        for (int i = 0; i < 25; i++) {
            Shape shape = new Shape.Axial(List.of(randomSection(0, random), randomSection(1, random)));
            Solid solid = annulus().spanBands(1 + i % 4).solid(shape);

            assertThat(solid.openEdges())
                    .hasSize(64)
                    .allSatisfy(edge -> assertThat(solid.r(edge.get(0)))
                            .satisfiesAnyOf(
                                    r -> assertThat(r).isCloseTo(100, within(1e-9)),
                                    r -> assertThat(r).isCloseTo(150, within(1e-9))));
            assertThat(solid.facesThatLookIntoTheMetal()).as("%s", shape).isEmpty();
        }
    }

    private static Shape.Section randomSection(double span, SplittableRandom random) {
        return section(
                span,
                random.nextDouble(20, 60),
                random.nextDouble(20, 50),
                random.nextDouble(-10, 60),
                random.nextDouble(0.03, 0.2),
                random.nextDouble(-3, 3));
    }

    @Test
    void aRowWithoutAShapeHasNoSurface() throws UnusableShape {
        EngineModel model = annulus().model(prism(40, 0, 0, 0.1, 0));

        assertThat(Surfaces.of(model, annulus().row(Optional.empty()), Optional.empty()))
                .isEmpty();
    }
}
