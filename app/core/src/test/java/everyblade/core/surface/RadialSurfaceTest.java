package everyblade.core.surface;

import static everyblade.core.surface.Shapes.annulus;
import static everyblade.core.surface.Shapes.line;
import static everyblade.core.surface.Shapes.wrap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import everyblade.spi.Shape;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RadialSurfaceTest {

    private static final double[] HUB = {0, 20, 20, 24, 40, 45, 46, 80};
    private static final double[] SHROUD = {0, 55, 18, 58, 32, 66, 38, 80};

    private static Shape.Radial blade(double[] hub, double[] shroud, double wrapHub, double wrapShroud, double from) {
        return new Shape.Radial(
                line(hub),
                line(shroud),
                wrap(0, 0, 0.5, wrapHub * 0.75, 1, wrapHub),
                wrap(0, 0, 0.5, wrapShroud * 0.75, 1, wrapShroud),
                1.6,
                0.9,
                from > 0 ? OptionalDouble.of(from) : OptionalDouble.empty());
    }

    private static Shape.Radial backswept() {
        return blade(HUB, SHROUD, -40, -55, 0);
    }

    @Test
    void rootAndTipLieOnTheHubAndTheShroudCurve() throws UnusableShape {
        Solid solid = annulus().solid(backswept());

        assertThat(solid.points(p -> distance(solid, p, HUB) < 1e-9).count()).isEqualTo(32);
        assertThat(solid.points(p -> distance(solid, p, SHROUD) < 1e-9).count()).isEqualTo(32);
    }

    @Test
    void edgesStandAtTheWrapOfTheirEnds() throws UnusableShape {
        Solid solid = annulus().solid(backswept());
        int leadingRoot =
                solid.least(p -> Math.hypot(solid.mesh().x(p), solid.r(p) - 20)).get(0);
        int trailingTip = solid.least(p -> Math.hypot(solid.mesh().x(p) - 38, solid.r(p) - 80))
                .get(0);

        assertThat(solid.clockwise(leadingRoot)).isCloseTo(0, within(1e-9));
        assertThat(Math.toDegrees(solid.clockwise(trailingTip) / 80)).isCloseTo(-55, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 30, -60})
    void theThicknessIsSquareToTheBlade(double wrap) throws UnusableShape {
        double[] hub = {0, 60, 50, 60};
        double[] shroud = {0, 61, 50, 61};
        Shape.Radial blade = new Shape.Radial(
                line(hub), line(shroud), wrap(0, 0, 1, wrap), wrap(0, 0, 1, wrap), 1, 1, OptionalDouble.empty());
        Solid solid = annulus().fineness(64, 1).solid(blade);
        double slope = Math.atan2(60 * Math.toRadians(wrap), 50);

        assertThat(solid.faces("middle").flatMap(solid::corners))
                .allMatch(p -> solid.r(p) > 60.1
                        || Math.abs(Math.abs(solid.clockwise(p) * Math.cos(slope)
                                                - solid.mesh().x(p) * Math.sin(slope))
                                        - 0.5)
                                < 1e-3);
    }

    @Test
    void theSuctionSideIsTheConvexOne() throws UnusableShape {
        assertThat(towardsClockwise(annulus().solid(backswept()), "suction")).isNegative();
        assertThat(towardsClockwise(annulus().solid(blade(HUB, SHROUD, 40, 55, 0)), "suction"))
                .isPositive();
    }

    @Test
    void withoutTurningItIsTheClockwiseOne() throws UnusableShape {
        assertThat(towardsClockwise(annulus().solid(blade(HUB, SHROUD, 0, 0, 0)), "suction"))
                .isPositive();
    }

    private static double towardsClockwise(Solid solid, String side) {
        return solid.faces(side)
                .mapToDouble(f -> solid.facets().area(f)
                        * (solid.facets().normal(f, 1) * solid.facets().centroid(f, 2)
                                - solid.facets().normal(f, 2) * solid.facets().centroid(f, 1)))
                .sum();
    }

    @Test
    void aSplitterBeginsAtItsShareOfTheWayAndItsBandsAreItsOwn() throws UnusableShape {
        double[] hub = {0, 50, 100, 50};
        double[] shroud = {0, 70, 100, 70};
        Solid splitter = annulus().solid(blade(hub, shroud, 0, 0, 0.4));

        assertThat(splitter.points(p -> true).mapToDouble(splitter.mesh()::x).min())
                .hasValue(40);
        assertThat(splitter.points(p -> true).mapToDouble(splitter.mesh()::x).max())
                .hasValue(100);
        assertThat(splitter.faces("leading").flatMap(splitter::corners).mapToDouble(splitter.mesh()::x))
                .allMatch(x -> x <= 40 + 12 + 1e-9);
        assertThat(splitter.faces("trailing").flatMap(splitter::corners).mapToDouble(splitter.mesh()::x))
                .allMatch(x -> x >= 100 - 12 - 1e-9);
    }

    @Test
    void aFlatBladeHasTheAreaOfItsMeridionalPlaneOnEachSide() throws UnusableShape {
        Shape.Radial thin = new Shape.Radial(
                line(0, 50, 100, 50),
                line(0, 70, 100, 90),
                wrap(0, 0, 1, 0),
                wrap(0, 0, 1, 0),
                1e-4,
                1e-4,
                OptionalDouble.empty());
        Solid solid = annulus().solid(thin);

        assertThat(solid.area("pressure")).isCloseTo(100 * (20 + 40) / 2.0, within(0.01));
        assertThat(solid.area("suction")).isCloseTo(100 * (20 + 40) / 2.0, within(0.01));
    }

    @Test
    void itIsClosedButForItsEndsAndFacesOutOfTheMetal() throws UnusableShape {
        for (Shape.Radial shape :
                List.of(backswept(), blade(HUB, SHROUD, 35, 20, 0), blade(HUB, SHROUD, -20, -25, 0.4))) {
            Solid solid = annulus().spanBands(3).solid(shape);

            assertThat(solid.openEdges())
                    .hasSize(64)
                    .allMatch(edge ->
                            distance(solid, edge.get(0), HUB) < 1e-9 || distance(solid, edge.get(0), SHROUD) < 1e-9);
            assertThat(solid.facesThatLookIntoTheMetal())
                    .hasSizeLessThan(solid.mesh().faceCount() / 10);
        }
    }

    @Test
    void anInflowTurbineFacesOutOfTheMetalAsWell() throws UnusableShape {
        Shape.Radial inflow = new Shape.Radial(
                line(0, 80, 8, 45, 30, 25, 50, 20),
                line(8, 80, 14, 66, 30, 58, 50, 55),
                wrap(0, 0, 1, 30),
                wrap(0, 0, 1, 45),
                2,
                1,
                OptionalDouble.empty());

        Solid solid = annulus().solid(inflow);

        assertThat(solid.openEdges()).hasSize(64);
        assertThat(solid.facesThatLookIntoTheMetal())
                .hasSizeLessThan(solid.mesh().faceCount() / 10);
    }

    @Test
    void aBladeThatComesToTheAxisIsRefused() {
        assertThatThrownBy(() -> annulus().solid(blade(new double[] {0, 0, 40, 45}, SHROUD, -40, -55, 0)))
                .extracting(Shapes::told, STRING)
                .startsWith("row c1: the shape has points that lie nowhere");
    }

    /** From a point of the surface to a line in the plane through the axis. */
    private static double distance(Solid solid, int point, double[] xr) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 3 < xr.length; i += 2) {
            double dx = xr[i + 2] - xr[i];
            double dr = xr[i + 3] - xr[i + 1];
            double px = solid.mesh().x(point) - xr[i];
            double pr = solid.r(point) - xr[i + 1];
            double t = Math.max(0, Math.min(1, (px * dx + pr * dr) / (dx * dx + dr * dr)));
            least = Math.min(least, Math.hypot(px - t * dx, pr - t * dr));
        }
        return least;
    }
}
