package everyblade.core.surface;

import static everyblade.core.surface.Shapes.annulus;
import static everyblade.core.surface.Shapes.prism;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ZonesTest {

    private static final double SLACK = 1e-9;

    @ParameterizedTest
    @CsvSource({"0, 0.1", "35, 0.1", "-60, 0.18", "110, 0.15"})
    void everyCornerOfAFacetLiesInItsFacetsBandOfTheChord(double camber, double thickness) throws UnusableShape {
        Solid solid = annulus().solid(prism(40, 25, camber, thickness, 0));
        double stagger = Math.toRadians(25);
        double[] middle = {20 * Math.cos(stagger), 0};

        for (int face = 0; face < solid.mesh().faceCount(); face++) {
            String zone = solid.zone(face);
            double least = zone.contains("leading") ? -0.1 : zone.contains("middle") ? 0.2 : 0.8;
            double most = zone.contains("leading") ? 0.2 : zone.contains("middle") ? 0.8 : 1.1;
            assertThat(solid.corners(face)
                            .mapToDouble(p -> 0.5
                                    + ((solid.mesh().x(p) - middle[0]) * Math.cos(stagger)
                                                    + solid.clockwise(p) * Math.sin(stagger))
                                            / 40))
                    .as("%s of face %d", zone, face)
                    .allMatch(share -> share >= least - SLACK && share <= most + SLACK);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 10})
    void everyCornerOfAFacetLiesInItsFacetsBandOfTheSpan(int bands) throws UnusableShape {
        Solid solid = annulus().spanBands(bands).solid(prism(40, 25, 30, 0.1, 0));

        for (int face = 0; face < solid.mesh().faceCount(); face++) {
            int band = solid.mesh().zone(face) / 6;
            assertThat(solid.corners(face).mapToDouble(p -> (solid.r(p) - 100) / 50 * bands))
                    .allMatch(share -> share >= band - SLACK && share <= band + 1 + SLACK);
        }
    }

    @Test
    void everyZoneHasFacetsHoweverTheRowIsDivided() throws UnusableShape {
        for (int bands = 1; bands <= 10; bands++) {
            for (Shapes shapes : new Shapes[] {
                annulus().spanBands(bands),
                annulus().spanBands(bands).withoutSides(),
                annulus().spanBands(bands).withoutChordBands(),
                annulus().spanBands(bands).withoutSides().withoutChordBands()
            }) {
                Solid solid = shapes.fineness(1, 1).solid(prism(40, 25, 30, 0.1, 0));
                Set<Integer> used = IntStream.range(0, solid.mesh().faceCount())
                        .mapToObj(solid.mesh()::zone)
                        .collect(Collectors.toSet());

                assertThat(used)
                        .containsExactlyInAnyOrderElementsOf(
                                IntStream.range(0, solid.zoning().size())
                                        .boxed()
                                        .toList());
            }
        }
    }

    @Test
    void aFlatPlateHasItsChordTimesItsSpanOnEachSideSharedOutByTheBands() throws UnusableShape {
        Solid plate = annulus().solid(prism(40, 0, 0, 1e-4, 0));

        assertThat(plate.area("pressure")).isCloseTo(40 * 50, within(0.01));
        assertThat(plate.area("suction")).isCloseTo(40 * 50, within(0.01));
        assertThat(plate.area("root")).isCloseTo(plate.area("tip"), within(1e-6));
        assertThat(plate.area("leading")).isCloseTo(0.2 * 4000, within(0.01));
        assertThat(plate.area("middle")).isCloseTo(0.6 * 4000, within(0.01));
        assertThat(plate.area("trailing")).isCloseTo(0.2 * 4000, within(0.01));
    }

    @Test
    void anEdgeZoneHoldsBothFacesOfTheEdge() throws UnusableShape {
        Solid solid = annulus().withoutSides().solid(prism(40, 0, 0, 0.1, 0));

        assertThat(solid.faces("leading").mapToDouble(f -> solid.facets().normal(f, 1)))
                .anyMatch(n -> n > 0.5);
        assertThat(solid.faces("leading").mapToDouble(f -> solid.facets().normal(f, 1)))
                .anyMatch(n -> n < -0.5);
    }

    @Test
    void facetsCrowdTowardsTheEdgesAndAreAsManyAsAskedFor() throws UnusableShape {
        Solid solid = annulus().solid(prism(40, 0, 0, 0.1, 0));

        assertThat(solid.mesh().faceCount()).isEqualTo(2 * 16 * 8);
        assertThat(meanArea(solid, "leading")).isLessThan(meanArea(solid, "middle"));
        assertThat(meanArea(solid, "trailing")).isLessThan(meanArea(solid, "middle"));
    }

    private static double meanArea(Solid solid, String zone) {
        return solid.area(zone) / solid.faces(zone).count();
    }

    @Test
    void finerFacetsComeCloserToTheLengthOfACurvedFace() throws UnusableShape {
        double half = Math.toRadians(40);
        double arc = half / Math.sin(half) * 40 * 50;
        Shapes wide = annulus().hub(-500, 10000, 500, 10000).casing(-500, 10050.5, 500, 10050.5);
        double coarse = wide.fineness(8, 1).solid(prism(40, 0, 80, 1e-5, 0)).area("suction");
        double fine = wide.fineness(256, 1).solid(prism(40, 0, 80, 1e-5, 0)).area("suction");

        assertThat(Math.abs(fine - arc)).isLessThan(Math.abs(coarse - arc) / 10);
    }
}
