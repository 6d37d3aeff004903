package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Surfaces of revolution about the axis as pieces of their meridional curve: along each piece the square of the radius is a
 * polynomial of degree two in x, which is exact for cones, cylinders and any straight line turned about the axis; or the
 * piece stands square to the axis. The shade on a circle about the axis is in closed form.
 *
 * <p>A line of sight from (x, r) to another such place, apart by the clock angle δ, has at the share t of its way the
 * radius r² = ((1 − t) r₀)² + (t r₁)² + 2 t (1 − t) r₀ r₁ cos δ. It meets a piece where cos δ equals k(t), a quotient
 * of polynomials of degree two; so what a piece hides is the range of k over the piece.
 */
final class Revolved {

    /** Of a line of sight, how much at either end cannot be hidden: a facet may lie on a wall, a scope tip in one. */
    private static final double TOUCH = 1e-6;

    private static final double FLAT = 1e-9;
    /** Of a cosine, far more than rounding. */
    private static final double ROUNDING = 1e-9;

    private static final int WIDTH = 5;

    /** From x, to x, and the constant, linear and quadratic part of r²; of a piece square to the axis x, x, r² from, r² to. */
    private final double[] pieces;

    private Revolved(List<double[]> pieces) {
        this.pieces = pieces.stream().flatMapToDouble(java.util.Arrays::stream).toArray();
    }

    /**
     * Walls, and what the edges of meshes sweep when they turn about the axis: their outline bounds all that a mesh sweeps.
     */
    static Revolved of(List<Wall> walls, List<Mesh> swept) {
        List<double[]> pieces = new ArrayList<>();
        walls.forEach(wall -> addWall(pieces, wall));
        swept.forEach(mesh -> addSwept(pieces, mesh));
        return new Revolved(pieces);
    }

    private static void addWall(List<double[]> pieces, Wall wall) {
        List<MeridionalPoint> curve = wall.curve();
        for (int i = 1; i < curve.size(); i++) {
            MeridionalPoint a = curve.get(i - 1);
            MeridionalPoint b = curve.get(i);
            addLine(pieces, new double[] {a.x(), a.r(), 0}, new double[] {b.x(), b.r(), 0});
        }
    }

    private static void addSwept(List<double[]> pieces, Mesh mesh) {
        Set<Long> known = new HashSet<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                int a = mesh.corner(face, k);
                int b = mesh.corner(face, (k + 1) % mesh.cornerCount(face));
                if (known.add((long) Math.min(a, b) << Integer.SIZE | Math.max(a, b))) {
                    addLine(pieces, point(mesh, a), point(mesh, b));
                }
            }
        }
    }

    private static double[] point(Mesh mesh, int i) {
        return new double[] {mesh.x(i), mesh.y(i), mesh.z(i)};
    }

    private static void addLine(List<double[]> pieces, double[] a, double[] b) {
        if (a[0] > b[0]) {
            addLine(pieces, b, a);
            return;
        }
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double dz = b[2] - a[2];
        double across = Math.hypot(dy, dz);
        double start = a[1] * a[1] + a[2] * a[2];
        double end = b[1] * b[1] + b[2] * b[2];
        if (dx <= FLAT * across) {
            double foot = across == 0 ? 0 : -(a[1] * dy + a[2] * dz) / (across * across);
            double least = foot > 0 && foot < 1
                    ? Math.pow(a[1] + foot * dy, 2) + Math.pow(a[2] + foot * dz, 2)
                    : Math.min(start, end);
            pieces.add(new double[] {a[0], a[0], least, Math.max(start, end), 0});
            return;
        }
        double y = dy / dx;
        double z = dz / dx;
        double y0 = a[1] - a[0] * y;
        double z0 = a[2] - a[0] * z;
        pieces.add(new double[] {a[0], b[0], y0 * y0 + z0 * z0, 2 * (y0 * y + z0 * z), y * y + z * z});
    }

    /**
     * Takes from these clock angles what is hidden.
     *
     * @param x0 of the place that stands still
     * @param r0 of it
     * @param clock of it, radians
     * @param x1 of the other place
     * @param r1 of it
     * @param light is used
     * @param open clock angles of the other place, within 0 to 2π radians
     */
    void shade(double x0, double r0, double clock, double x1, double r1, IntervalSet light, IntervalSet open) {
        if (open.isEmpty() || pieces.length == 0) {
            return;
        }
        light.set(-1, 1);
        double dx = x1 - x0;
        double square = r0 * r0;
        double ends = square + r1 * r1;
        for (int i = 0; i < pieces.length && !light.isEmpty(); i += WIDTH) {
            double from = TOUCH;
            double to = 1 - TOUCH;
            double a = pieces[i];
            double b = pieces[i + 1];
            if (dx != 0) {
                double atA = (a - x0) / dx;
                double atB = (b - x0) / dx;
                from = Math.max(from, Math.min(atA, atB));
                to = Math.min(to, Math.max(atA, atB));
            } else if (a == b || x0 < a || x0 > b) {
                continue;
            }
            if (from > to) {
                continue;
            }
            double q0 = pieces[i + 2] - square;
            if (a == b) {
                double rest = -ends * from * from + 2 * square * from - square;
                hide(pieces[i + 2] + rest, pieces[i + 3] + rest, 2 * r0 * r1 * from * (1 - from), light);
                continue;
            }
            double g1 = pieces[i + 3];
            double g2 = pieces[i + 4];
            double d0 = q0 + x0 * (g1 + g2 * x0);
            double d1 = dx * (g1 + 2 * g2 * x0) + 2 * square;
            double d2 = g2 * dx * dx - ends;
            along(d0, d1, d2, from, to, 2 * r0 * r1, light);
        }
        keep(light, clock, open);
    }

    /** Hides the range of (d0 + d1 t + d2 t²) / (scale t (1 − t)) between two shares of the way. */
    private static void along(
            double d0, double d1, double d2, double from, double to, double scale, IntervalSet light) {
        double atFrom = d0 + from * (d1 + from * d2);
        double atTo = d0 + to * (d1 + to * d2);
        if (scale <= FLAT) {
            double turning = Math.max(from, Math.min(to, -d1 / (2 * d2)));
            double between = d0 + turning * (d1 + turning * d2);
            double least = Math.min(between, Math.min(atFrom, atTo));
            hide(least, Math.max(between, Math.max(atFrom, atTo)), 0, light);
            return;
        }
        double k0 = atFrom / (from * (1 - from));
        double k1 = atTo / (to * (1 - to));
        double least = Math.min(k0, k1);
        double most = Math.max(k0, k1);
        // Where d0 and d0 + d1 + d2 have one sign the range turns once between 0 and 1, else nowhere: then this is no
        // number.
        double turning = Math.abs(d0) / (Math.abs(d0) + Math.sqrt(d0 * d0 + (d1 + d2) * d0));
        if (turning > from && turning < to) {
            double k = (d0 + turning * (d1 + turning * d2)) / (turning * (1 - turning));
            least = Math.min(least, k);
            most = Math.max(most, k);
        }
        hide(least, most, scale, light);
    }

    /** @param light cosines of the clock angle between the two places at which nothing hides */
    private static void hide(double least, double most, double scale, IntervalSet light) {
        if (scale <= FLAT) {
            if (least <= 0 && most >= 0) {
                light.clear();
            }
            return;
        }
        light.subtract(least / scale, most / scale);
    }

    /** Keeps the clock angles whose cosine lies in the light. */
    private static void keep(IntervalSet light, double clock, IntervalSet open) {
        double least = leastCosine(clock, open) - ROUNDING;
        double most = ROUNDING - leastCosine(clock + Math.PI, open);
        for (int i = 0; i < light.count(); i++) {
            if (light.from(i) <= Math.max(-1, least) && light.to(i) >= Math.min(1, most)) {
                return;
            }
        }
        double hidden = 0;
        for (int i = light.count() - 1; i >= 0; i--) {
            double lit = Math.acos(light.to(i));
            if (lit > hidden) {
                subtractTurned(clock + hidden, clock + lit, open);
                subtractTurned(clock - lit, clock - hidden, open);
            }
            hidden = Math.acos(light.from(i));
        }
        if (hidden < Math.PI) {
            subtractTurned(clock + hidden, clock + 2 * Math.PI - hidden, open);
        }
    }

    /** The least cosine of the angle from a clock to any between the first and the last of these. */
    private static double leastCosine(double clock, IntervalSet open) {
        double from = open.from(0) - clock - Math.PI;
        double width = open.to(open.count() - 1) - open.from(0);
        double turned = from - 2 * Math.PI * Math.floor(from / (2 * Math.PI));
        return turned + width >= 2 * Math.PI ? -1 : -Math.max(Math.cos(turned), Math.cos(turned + width));
    }

    /** Takes away an arc of at most a turn, wherever its turns are counted from. */
    static void subtractTurned(double from, double to, IntervalSet open) {
        double start = from - 2 * Math.PI * Math.floor(from / (2 * Math.PI));
        double end = start + (to - from);
        open.subtract(start, end);
        open.subtract(start - 2 * Math.PI, end - 2 * Math.PI);
    }
}
