package everyblade.core.surface;

import static everyblade.core.surface.Shapes.annulus;
import static everyblade.core.surface.Shapes.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import everyblade.core.entry.Zoning;
import everyblade.spi.Shape;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class RevolutionTest {

    /** The part of a cylinder that a polygon with corners on it has. */
    private static double polygonShare(double radiansPerSide) {
        return Math.sin(radiansPerSide / 2) / (radiansPerSide / 2);
    }

    @Nested
    class Liners {

        private final Shape cylinders = new Shape.Liner(line(10, 200, 110, 200), line(10, 120, 110, 120));

        @Test
        void aSectorOfACylinderHasItsShareOfTheArea() throws UnusableShape {
            Solid sector = annulus().count(20).solid(cylinders);
            double share = polygonShare(2 * Math.PI / 20 / 8);

            assertThat(sector.area("outer")).isCloseTo(2 * Math.PI * 200 * 100 / 20 * share, within(1e-6));
            assertThat(sector.area("inner")).isCloseTo(2 * Math.PI * 120 * 100 / 20 * share, within(1e-6));
            assertThat(share).isGreaterThan(0.9998);
        }

        @Test
        void itIsCentredAtClockZeroAndReachesHalfwayToTheNext() throws UnusableShape {
            Solid sector = annulus().count(20).solid(cylinders);

            assertThat(sector.points(p -> true)
                            .mapToDouble(p -> Math.toDegrees(sector.clockwise(p) / sector.r(p)))
                            .max()
                            .orElseThrow())
                    .isCloseTo(9, within(1e-9));
            assertThat(sector.points(p -> true)
                            .mapToDouble(p -> Math.toDegrees(sector.clockwise(p) / sector.r(p)))
                            .min()
                            .orElseThrow())
                    .isCloseTo(-9, within(1e-9));
        }

        @Test
        void theOuterWallFacesTheAxisAndTheInnerOneAwayFromIt() throws UnusableShape {
            Solid sector = annulus().solid(cylinders);

            assertThat(sector.faces("outer").mapToDouble(f -> sector.facets().normal(f, 2)))
                    .allMatch(n -> n < -0.9);
            assertThat(sector.faces("inner").mapToDouble(f -> sector.facets().normal(f, 2)))
                    .allMatch(n -> n > 0.9);
        }

        @Test
        void theHalvesAreThoseOfItsLengthAndNoFacetLiesInBoth() throws UnusableShape {
            Solid sector = annulus().fineness(5, 2).solid(cylinders);

            assertThat(sector.area("forward")).isCloseTo(sector.area("aft"), within(1e-6));
            assertThat(sector.faces("forward").flatMap(sector::corners).mapToDouble(sector.mesh()::x))
                    .allMatch(x -> x <= 60 + 1e-9);
            assertThat(sector.faces("aft").flatMap(sector::corners).mapToDouble(sector.mesh()::x))
                    .allMatch(x -> x >= 60 - 1e-9);
        }

        @Test
        void aCurveWrittenFromTheRearGivesTheSameHalves() throws UnusableShape {
            Shape fromTheRear = new Shape.Liner(line(110, 200, 10, 200), line(110, 120, 10, 120));

            assertThat(annulus().solid(fromTheRear).mesh())
                    .isEqualTo(annulus().solid(cylinders).mesh());
        }

        @Test
        void oneSectorAloneGoesAllTheWayRoundInFacetsOfFiveDegreesAtMost() throws UnusableShape {
            Solid whole = annulus().count(1).solid(cylinders);

            assertThat(whole.mesh().faceCount()).isEqualTo(2 * 16 * 72);
            assertThat(whole.openEdges()).hasSize(4 * 72);
        }

        @Test
        void aBentWallHasAFacetBorderAtEachBend() throws UnusableShape {
            Solid sector = annulus()
                    .fineness(3, 1)
                    .solid(new Shape.Liner(line(0, 150, 20, 200, 110, 200), line(0, 120, 110, 120)));

            assertThat(sector.points(
                                    p -> Math.abs(sector.mesh().x(p) - 20) < 1e-9 && Math.abs(sector.r(p) - 200) < 1e-9)
                            .count())
                    .isPositive();
        }

        @Test
        void anUndividedOneHasOneZone() throws UnusableShape {
            Solid sector = annulus().spanBands(1).withoutChordBands().solid(cylinders);

            assertThat(sector.faces("all").count()).isEqualTo(sector.mesh().faceCount());
        }
    }

    @Nested
    class WallsOfRevolution {

        private Solid wall(String id, double... xr) throws UnusableShape {
            return new Solid(
                    Walls.of(new Wall(id, Optional.empty(), line(xr))), new Zoning(List.of(), List.of(), List.of()));
        }

        @Test
        void aCylinderAndAConeHaveTheirAreas() throws UnusableShape {
            assertThat(wall("hub", 0, 150, 80, 150).facets().area())
                    .isCloseTo(2 * Math.PI * 150 * 80, within(2 * Math.PI * 150 * 80 * 2e-4));
            assertThat(wall("hub", 0, 100, 30, 140).facets().area())
                    .isCloseTo(Math.PI * (100 + 140) * 50, within(Math.PI * 240 * 50 * 3e-4));
        }

        @Test
        void cornersLieOnTheWallAndFacetsStandOffItByTheStatedErrorAtMost() throws UnusableShape {
            Solid wall = wall("casing", 0, 400, 50, 300);

            assertThat(wall.points(p -> true)
                            .mapToDouble(p -> wall.r(p) - (400 - 2 * wall.mesh().x(p))))
                    .allMatch(off -> Math.abs(off) < 1e-9);
            for (int face = 0; face < wall.mesh().faceCount(); face++) {
                double x = wall.facets().centroid(face, 0);
                double r = Math.hypot(
                        wall.facets().centroid(face, 1), wall.facets().centroid(face, 2));
                assertThat(400 - 2 * x - r).isBetween(0.0, 0.002);
            }
        }

        @Test
        void theCasingFacesTheAxisAndTheHubAwayFromIt() throws UnusableShape {
            assertThat(outward(wall("casing", 0, 200, 50, 190))).isNegative();
            assertThat(outward(wall("hub", 0, 100, 50, 110))).isPositive();
        }

        @Test
        void theHubOfAnImpellerLooksForwardWhereItRunsOutward() throws UnusableShape {
            Solid disc = wall("hub", 50, 60, 52, 200);

            assertThat(disc.faces("all").mapToDouble(f -> disc.facets().normal(f, 0)))
                    .allMatch(n -> n < -0.9);
        }

        @Test
        void itClosesAllTheWayRoundAndOnTheAxis() throws UnusableShape {
            Solid nose = wall("hub", -30, 0, 0, 50, 40, 60);
            List<Integer> ends =
                    nose.openEdges().stream().map(edge -> edge.get(0)).toList();

            assertThat(ends).isNotEmpty().allMatch(p -> nose.mesh().x(p) == 40);
            assertThat(nose.points(p -> nose.r(p) == 0).count()).isEqualTo(1);
        }

        @Test
        void twoPointsInOnePlaceAreOneAndAWallOfOnlyThemIsRefused() throws UnusableShape {
            assertThat(wall("hub", 0, 10, 0, 10, 5, 10).mesh())
                    .isEqualTo(wall("hub", 0, 10, 5, 10).mesh());
            assertThatThrownBy(() -> wall("shelf", 3, 10, 3, 10))
                    .extracting(Shapes::told, STRING)
                    .contains("the wall shelf has no length");
        }

        private double outward(Solid wall) {
            return wall.faces("all")
                    .mapToDouble(f -> wall.facets().normal(f, 1) * wall.facets().centroid(f, 1)
                            + wall.facets().normal(f, 2) * wall.facets().centroid(f, 2))
                    .sum();
        }
    }
}
