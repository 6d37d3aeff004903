package everyblade.picture.section;

import everyblade.spi.MeridionalPoint;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Optional;

/** What of the plane through the axis a model speaks of, mm; empty until something is added. */
final class SectionBounds {

    private double front = Double.POSITIVE_INFINITY;
    private double rear = Double.NEGATIVE_INFINITY;
    private double inner = Double.POSITIVE_INFINITY;
    private double outer = Double.NEGATIVE_INFINITY;
    private Optional<SectionCurve> casing = Optional.empty();

    static SectionBounds of(Drawn drawn) {
        SectionBounds bounds = new SectionBounds();
        for (Wall wall : drawn.model().walls()) {
            bounds.add(wall.curve());
            if (wall.id().equals("casing")) {
                bounds.casing = Optional.of(new SectionCurve(wall.curve()));
            }
        }
        for (Row row : drawn.model().rows()) {
            if (row.shape().orElse(null) instanceof Shape.Liner liner) {
                bounds.add(liner.outer());
                bounds.add(liner.inner());
            }
        }
        for (RowSurface surface : drawn.surfaces()) {
            surface.outline().forEach(extent -> {
                bounds.add(extent.front(), extent.radius());
                bounds.add(extent.rear(), extent.radius());
            });
        }
        for (View view : drawn.model().views()) {
            for (Station station : view.stations()) {
                bounds.add(station.x(), station.r());
            }
        }
        drawn.model().ports().forEach(port -> port.x().ifPresent(bounds::reach));
        return bounds;
    }

    private void reach(double x) {
        front = Math.min(front, x);
        rear = Math.max(rear, x);
    }

    private void add(List<MeridionalPoint> curve) {
        curve.forEach(point -> add(point.x(), point.r()));
    }

    private void add(double x, double r) {
        reach(x);
        inner = Math.min(inner, r);
        outer = Math.max(outer, r);
    }

    boolean isEmpty() {
        return !(rear > front && outer > inner);
    }

    double front() {
        return front;
    }

    double rear() {
        return rear;
    }

    double inner() {
        return inner;
    }

    double outer() {
        return outer;
    }

    /** The wall {@code casing}, if there is one. */
    Optional<SectionCurve> casing() {
        return casing;
    }
}
