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
        Row plain = row(PLAIN);
        Shape shape = new Shape.Axial(List.of(
                new Shape.Section(0, 40, 0, 0, 0.06, 10),
                new Shape.Section(0.5, 30, 0, 0, 0.06, 10),
                new Shape.Section(0.75, 25, 0, 0, 0.06, 10),
                new Shape.Section(1, 30, 0, 0, 0.06, 10)));
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

    @Test
    void zonesAreAsFarApartAsTheirPointsAndNearerByAnEdge() throws UnusableShape {
        Row row = row(PLAIN);
        Mesh mesh = Surfaces.of(PLAIN, row, Optional.empty()).orElseThrow();
        Zoning zoning = Zoning.of(row);
        ZoneSet root = zoning.span(0);
        ZoneSet tip = zoning.span(1);

        Distances.Span span = new ZoneDistances(PLAIN).between(row, root, tip).orElseThrow();

        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double edge = 0;
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                int a = mesh.corner(face, k);
                int beside = mesh.corner(face, k + 1 == mesh.cornerCount(face) ? 0 : k + 1);
                edge = Math.max(edge, apart(mesh, a, beside));
                for (int other = 0; root.contains(mesh.zone(face)) && other < mesh.faceCount(); other++) {
                    for (int m = 0; tip.contains(mesh.zone(other)) && m < mesh.cornerCount(other); m++) {
                        double distance = apart(mesh, a, mesh.corner(other, m));
                        least = Math.min(least, distance);
                        most = Math.max(most, distance);
                    }
                }
            }
        }
        assertThat(span.most().mm().doubleValue()).isCloseTo(most, within(1e-6));
        assertThat(span.least().mm().doubleValue()).isCloseTo(Math.max(0, least - edge), within(1e-6));
        assertThat(most).isBetween(49.0, 60.0);
        assertThat(least).isZero();
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
