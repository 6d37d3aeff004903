package everyblade.core.finding.measure;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Length;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** How large an airfoil is at a place, to tell a length as a share of it. */
public final class Extent {

    private Extent() {}

    /** The chord in the middle of the span bands of these zones, between the sections given; only of axial shapes. */
    public static Optional<Length> chord(Row row, ZoneSet zones) {
        if (!(row.shape().orElse(null) instanceof Shape.Axial axial) || zones.isEmpty()) {
            return Optional.empty();
        }
        Zoning zoning = Zoning.of(row);
        int bands = Math.max(1, zoning.spans().size());
        double middle = zoning.spans().isEmpty()
                ? 0.5
                : IntStream.range(0, bands)
                        .filter(band -> !zones.intersection(zoning.span(band)).isEmpty())
                        .mapToDouble(band -> (band + 0.5) / bands)
                        .average()
                        .orElse(0.5);
        return Optional.of(Length.ofMillimetres(chordAt(axial.sections(), middle)));
    }

    private static double chordAt(List<Shape.Section> sections, double span) {
        Shape.Section below = sections.get(0);
        for (Shape.Section above : sections) {
            if (above.span() >= span) {
                double width = above.span() - below.span();
                double share = width > 0 ? (span - below.span()) / width : 0;
                return below.chord() + share * (above.chord() - below.chord());
            }
            below = above;
        }
        return below.chord();
    }

    /** From the least to the greatest radius of the airfoil's surface; empty without a shape. */
    public static Optional<Length> span(EngineModel model, Row row) {
        try {
            return Surfaces.of(model, row, Optional.empty()).map(Extent::span);
        } catch (UnusableShape noSurface) {
            return Optional.empty();
        }
    }

    private static Length span(Mesh mesh) {
        double[] radii = IntStream.range(0, mesh.pointCount())
                .mapToDouble(point -> Math.hypot(mesh.y(point), mesh.z(point)))
                .sorted()
                .toArray();
        return Length.ofMillimetres(radii[radii.length - 1] - radii[0]);
    }
}
