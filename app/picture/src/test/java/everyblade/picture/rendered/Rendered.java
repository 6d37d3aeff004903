package everyblade.picture.rendered;

import everyblade.core.finding.measure.Plane;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import java.util.Optional;

/**
 * A picture as a scope tip would take it of the airfoils of one row: for each pixel what was hit, where, and how it
 * faces. Slow and plain; walls and other rows are left out.
 */
public final class Rendered {

    /**
     * What a pixel shows.
     *
     * @param airfoil from 0, clockwise
     * @param zone of the airfoil
     * @param x of the place in the picture's frame, to the right, mm
     * @param y down, mm
     * @param z away from the scope tip, mm
     * @param normal of the surface in the same frame, unit
     */
    public record Hit(int airfoil, int zone, double x, double y, double z, double[] normal) {

        double distanceTo(Hit other) {
            return Math.sqrt(Math.pow(x - other.x, 2) + Math.pow(y - other.y, 2) + Math.pow(z - other.z, 2));
        }
    }

    private final int size;
    private final Plane.Camera camera;
    private final Hit[] hits;

    private Rendered(int size, Plane.Camera camera, Hit[] hits) {
        this.size = size;
        this.camera = camera;
        this.hits = hits;
    }

    /** At the first station of a view, with the first airfoil at this clock angle; empty of a row without a shape. */
    public static Optional<Rendered> of(EngineModel model, View view, double clock, int size) throws UnusableShape {
        Row row = model.rows().stream()
                .filter(each -> each.id().equals(view.row()))
                .findFirst()
                .orElseThrow();
        Optional<Mesh> mesh = Surfaces.of(model, row, Optional.empty());
        Optional<ScopeTip> tip = model.scopeTips().stream()
                .filter(each -> view.scopeTip().filter(each.id()::equals).isPresent())
                .findFirst();
        if (mesh.isEmpty() || tip.isEmpty() || view.stations().isEmpty()) {
            return Optional.empty();
        }
        Station station = view.stations().get(0);
        Plane.Camera camera = new Plane.Camera(tip.get().cone(), size, size / 2.0, size / 2.0);
        Rendered rendered = new Rendered(size, camera, new Hit[size * size]);
        double[][] frame = frame(Pose.of(station, tip.get()));
        for (int airfoil = 0; airfoil < row.count(); airfoil++) {
            rendered.draw(mesh.get(), airfoil, Math.toRadians(clock + 360.0 * airfoil / row.count()), frame, tip.get());
        }
        return Optional.of(rendered);
    }

    /** Eye, right, down and forward in the engine's frame. */
    private static double[][] frame(Pose pose) {
        double clock = Math.toRadians(pose.clock().degrees());
        double sin = Math.sin(clock);
        double cos = Math.cos(clock);
        double[] eye = {pose.x(), pose.r() * sin, pose.r() * cos};
        double[] forward = inEngine(pose.forward(), sin, cos);
        double[] up = inEngine(pose.up(), sin, cos);
        double[] right = unit(cross(forward, up));
        return new double[][] {eye, right, cross(forward, right), forward};
    }

    private static double[] inEngine(Heading heading, double sin, double cos) {
        return unit(new double[] {
            heading.axial(),
            heading.tangential() * cos + heading.radial() * sin,
            -heading.tangential() * sin + heading.radial() * cos
        });
    }

    private void draw(Mesh mesh, int airfoil, double turned, double[][] frame, ScopeTip tip) {
        double sin = Math.sin(turned);
        double cos = Math.cos(turned);
        double[][] points = new double[mesh.pointCount()][];
        for (int i = 0; i < points.length; i++) {
            double[] from = {
                mesh.x(i) - frame[0][0],
                mesh.y(i) * cos + mesh.z(i) * sin - frame[0][1],
                -mesh.y(i) * sin + mesh.z(i) * cos - frame[0][2]
            };
            points[i] = new double[] {dot(from, frame[1]), dot(from, frame[2]), dot(from, frame[3])};
        }
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 2; k < mesh.cornerCount(face); k++) {
                triangle(
                        points[mesh.corner(face, 0)],
                        points[mesh.corner(face, k - 1)],
                        points[mesh.corner(face, k)],
                        airfoil,
                        mesh.zone(face),
                        tip);
            }
        }
    }

    private void triangle(double[] a, double[] b, double[] c, int airfoil, int zone, ScopeTip tip) {
        if (Math.min(a[2], Math.min(b[2], c[2])) < 0.5) {
            return; // behind the scope tip, or nearer than it focuses
        }
        double f = camera.pixels() / 2 / Math.tan(Math.toRadians(camera.cone() / 2));
        double[] normal = unit(cross(minus(b, a), minus(c, a)));
        double level = dot(normal, a);
        double left = size;
        double right = 0;
        double top = size;
        double bottom = 0;
        for (double[] corner : new double[][] {a, b, c}) {
            left = Math.min(left, corner[0] / corner[2] * f + size / 2.0);
            right = Math.max(right, corner[0] / corner[2] * f + size / 2.0);
            top = Math.min(top, corner[1] / corner[2] * f + size / 2.0);
            bottom = Math.max(bottom, corner[1] / corner[2] * f + size / 2.0);
        }
        for (int y = (int) Math.max(0, Math.ceil(top)); y <= Math.min(size - 1, bottom); y++) {
            for (int x = (int) Math.max(0, Math.ceil(left)); x <= Math.min(size - 1, right); x++) {
                double[] sight = {(x - size / 2.0) / f, (y - size / 2.0) / f, 1};
                double z = level / dot(normal, sight);
                double[] place = {sight[0] * z, sight[1] * z, z};
                Hit before = hits[y * size + x];
                if (z > tip.near() && (before == null || z < before.z()) && within(place, a, b, c, normal)) {
                    double[] facing =
                            dot(normal, sight) < 0 ? normal : new double[] {-normal[0], -normal[1], -normal[2]};
                    hits[y * size + x] = new Hit(airfoil, zone, place[0], place[1], place[2], facing);
                }
            }
        }
    }

    private static boolean within(double[] p, double[] a, double[] b, double[] c, double[] normal) {
        double one = dot(cross(minus(b, a), minus(p, a)), normal);
        double two = dot(cross(minus(c, b), minus(p, b)), normal);
        double three = dot(cross(minus(a, c), minus(p, c)), normal);
        return one >= 0 && two >= 0 && three >= 0;
    }

    /** What a pixel shows; empty where no airfoil is. */
    public Optional<Hit> at(int x, int y) {
        boolean inside = x >= 0 && y >= 0 && x < size && y < size;
        return inside ? Optional.ofNullable(hits[y * size + x]) : Optional.empty();
    }

    public int size() {
        return size;
    }

    public Plane.Camera camera() {
        return camera;
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        double length = Math.sqrt(dot(a, a));
        return new double[] {a[0] / length, a[1] / length, a[2] / length};
    }
}
