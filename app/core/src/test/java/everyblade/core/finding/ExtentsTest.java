package everyblade.core.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.ShapedEngine;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.measure.Extent;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How large airfoils are and how far apart their places, from shapes. */
class ExtentsTest {

    private static final EngineModel PLAIN =
            new ShapedEngine().row("r", RowKind.ROTOR, 24, 0, 10).model();

    private static Row row(EngineModel model) {
        return model.rows().get(0);
    }

    /** A plain blade reaches from the hub, 100 mm, to half a millimetre below the casing, 150 mm. */
    @Test
    void theSpanIsFromTheLeastRadiusToTheGreatest() {
        assertThat(Extent.span(PLAIN, row(PLAIN)).orElseThrow().mm().doubleValue())
                .isCloseTo(49.5, within(0.2));
    }

    @Test
    void theChordIsReadBetweenTheSectionsInTheMiddleOfTheBands() {
        Row row = tapered();
        Zoning zoning = Zoning.of(row);
        assertThat(chord(row, zoning.span(0))).isCloseTo(40 - 0.25 * 20, within(1e-9));
        assertThat(chord(row, zoning.span(1))).isCloseTo(20 + 0.5 * 10, within(1e-9));
        assertThat(chord(row, zoning.all())).isCloseTo(40 - 0.5 * 20, within(1e-9));
    }

    @Test
    void noZoneHasNoChord() {
        assertThat(Extent.chord(tapered(), ZoneSet.NONE)).isEmpty();
    }

    private static double chord(Row row, ZoneSet zones) {
        return Extent.chord(row, zones).orElseThrow().mm().doubleValue();
    }

    /** Two span bands; the chord goes from 40 over 30 in half the span to 20, then to 30 at the very tip. */
    private static Row tapered() {
        return shaped(
                new Shape.Section(0, 40, 0, 0, 0.06, 10),
                new Shape.Section(0.5, 30, 0, 0, 0.06, 10),
                new Shape.Section(0.75, 25, 0, 0, 0.06, 10),
                new Shape.Section(1, 30, 0, 0, 0.06, 10));
    }

    private static Row shaped(Shape.Section... sections) {
        Row plain = row(PLAIN);
        Shape shape = new Shape.Axial(List.of(sections));
        return new Row(
                plain.id(),
                plain.name(),
                plain.kind(),
                plain.spool(),
                plain.count(),
                plain.numbering(),
                plain.rock(),
                plain.spanBands(),
                plain.chordBands(),
                plain.sides(),
                plain.landmarks(),
                plain.ring(),
                plain.ringOffset(),
                plain.phase(),
                Optional.of(shape),
                plain.positions(),
                plain.source());
    }

    private record Naive(double least, double most, double longestEdge) {

        /** Every corner of some facets with every corner of others. */
        static Naive of(Mesh mesh, ZoneSet one, ZoneSet other) {
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            double edge = 0;
            for (int face = 0; face < mesh.faceCount(); face++) {
                for (int k = 0; k < mesh.cornerCount(face); k++) {
                    int a = mesh.corner(face, k);
                    int beside = mesh.corner(face, k + 1 == mesh.cornerCount(face) ? 0 : k + 1);
                    edge = Math.max(edge, apart(mesh, a, beside));
                    for (int f = 0; one.contains(mesh.zone(face)) && f < mesh.faceCount(); f++) {
                        for (int m = 0; other.contains(mesh.zone(f)) && m < mesh.cornerCount(f); m++) {
                            double distance = apart(mesh, a, mesh.corner(f, m));
                            least = Math.min(least, distance);
                            most = Math.max(most, distance);
                        }
                    }
                }
            }
            return new Naive(least, most, edge);
        }
    }

    private static void assertApart(EngineModel model, ZoneSet one, ZoneSet other) throws UnusableShape {
        Row row = row(model);
        Naive naive = Naive.of(Surfaces.of(model, row, Optional.empty()).orElseThrow(), one, other);
        Distances.Span span = new ZoneDistances(model).between(row, one, other).orElseThrow();
        assertThat(span.most().mm().doubleValue()).isCloseTo(naive.most(), within(1e-6));
        assertThat(span.least().mm().doubleValue())
                .isCloseTo(Math.max(0, naive.least() - naive.longestEdge()), within(1e-6));
    }

    @Test
    void zonesAreAsFarApartAsTheirPointsAndNearerByAnEdge() throws UnusableShape {
        Zoning zoning = Zoning.of(row(PLAIN));
        assertApart(PLAIN, zoning.span(0), zoning.span(1));
        Mesh mesh = Surfaces.of(PLAIN, row(PLAIN), Optional.empty()).orElseThrow();
        Naive naive = Naive.of(mesh, zoning.span(0), zoning.span(1));
        assertThat(naive.most()).isBetween(49.0, 60.0);
        assertThat(naive.least()).isZero();
    }

    /** Staggered by 35°, so that the edges lie apart along the engine and round it. */
    @Test
    void edgesAreAsFarApartAsTheyLieInSpace() throws UnusableShape {
        EngineModel staggered =
                new ShapedEngine().row("r", RowKind.ROTOR, 24, 35, 10).model();
        List<String> names = Zoning.of(row(staggered)).names();
        for (EngineModel model : List.of(PLAIN, staggered)) {
            assertApart(model, zones(names, "/leading"), zones(names, "/trailing"));
        }
    }

    @Test
    void ofOneSectionTheChordIsTheSameAllOver() {
        Row row = row(PLAIN);
        Zoning zoning = Zoning.of(row);
        assertThat(chord(row, zoning.span(0))).isEqualTo(30);
        assertThat(chord(row, zoning.span(1))).isEqualTo(30);
    }

    @Test
    void beforeTheFirstSectionTheChordIsThatOfTheFirst() {
        Row row = shaped(new Shape.Section(0.5, 30, 0, 0, 0.06, 10), new Shape.Section(1, 20, 0, 0, 0.06, 10));
        assertThat(chord(row, Zoning.of(row).span(0))).isEqualTo(30);
        assertThat(chord(row, Zoning.of(row).span(1))).isEqualTo(25);
    }

    /** The leading and the trailing edge are a good part of the chord apart. */
    @Test
    void placesThatDoNotTouchAreSomeDistanceApart() {
        Row row = row(PLAIN);
        Zoning zoning = Zoning.of(row);
        List<String> names = zoning.names();
        ZoneSet leading = zones(names, "/leading");
        ZoneSet trailing = zones(names, "/trailing");
        Distances.Span span =
                new ZoneDistances(PLAIN).between(row, leading, trailing).orElseThrow();
        assertThat(span.least().mm().doubleValue()).isBetween(1.0, 30.0);
        assertThat(span.most().mm().doubleValue()).isBetween(49.0, 60.0);
    }

    private static ZoneSet zones(List<String> names, String end) {
        long bits = 0;
        for (int zone = 0; zone < names.size(); zone++) {
            bits |= names.get(zone).endsWith(end) ? 1L << zone : 0;
        }
        return new ZoneSet(bits);
    }

    private static double apart(Mesh mesh, int a, int b) {
        return Math.hypot(Math.hypot(mesh.x(a) - mesh.x(b), mesh.y(a) - mesh.y(b)), mesh.z(a) - mesh.z(b));
    }
}
