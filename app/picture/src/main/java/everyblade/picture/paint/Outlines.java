package everyblade.picture.paint;

import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;

/** The outline of a shape, as Java 2D has it. */
public final class Outlines {

    /** How far an arc may leave its chord to be drawn straight, mm: far less than any device shows. */
    private static final double STRAIGHT = 0.006;

    private Outlines() {}

    /** Of a part of a row, in mm on the sheet. */
    public static Path2D of(Patch patch) {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        if (patch.frame() instanceof Polar polar) {
            double turn = patch.to() - patch.from();
            if (turn >= 360) {
                path.append(circle(polar.centre(), patch.high()), false);
                path.append(circle(polar.centre(), patch.low()), false);
                return path;
            }
            if (patch.high() * (1 - Math.cos(Math.toRadians(turn) / 2)) < STRAIGHT) {
                return corners(patch);
            }
            // Java 2D counts degrees counter-clockwise from 3 o'clock.
            double start = 90 - polar.onSheet(patch.from());
            double extent = polar.mirrored() ? turn : -turn;
            path.append(arc(polar.centre(), patch.high(), start, extent), false);
            path.append(arc(polar.centre(), patch.low(), start + extent, -extent), true);
        } else {
            return corners(patch);
        }
        path.closePath();
        return path;
    }

    private static Path2D corners(Patch patch) {
        return of(List.of(List.of(patch.at(0, 1), patch.at(1, 1), patch.at(1, 0), patch.at(0, 0))), true);
    }

    static Path2D of(List<List<Point>> lines, boolean closed) {
        Path2D.Double path = new Path2D.Double();
        for (List<Point> line : lines) {
            path.moveTo(line.get(0).x(), line.get(0).y());
            for (Point point : line.subList(1, line.size())) {
                path.lineTo(point.x(), point.y());
            }
            if (closed) {
                path.closePath();
            }
        }
        return path;
    }

    static Path2D of(Dots dots) {
        Path2D.Double path = new Path2D.Double();
        dots.centres().forEach(centre -> path.append(circle(centre, dots.radius()), false));
        return path;
    }

    private static Ellipse2D circle(Point centre, double radius) {
        return new Ellipse2D.Double(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
    }

    private static Arc2D arc(Point centre, double radius, double start, double extent) {
        return new Arc2D.Double(
                centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius, start, extent, Arc2D.OPEN);
    }
}
