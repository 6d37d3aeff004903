package everyblade.core.check;

import everyblade.core.surface.Mesh;
import everyblade.spi.Shape;
import java.util.List;

/** Judges airfoils that come from mesh files, which say nothing of their frame and of which side is out. */
final class MeshCheck {

    private MeshCheck() {}

    static void of(CheckedSurface surface, List<Flaw> flaws) {
        boolean fromFile =
                surface.row().shape().filter(Shape.Mesh.class::isInstance).isPresent();
        if (!fromFile || !surface.isAirfoil()) {
            return;
        }
        if (volume(surface.mesh()) < 0) {
            flaws.add(new Flaw(
                    Flaw.Kind.MESH_INSIDE_OUT,
                    surface.part(),
                    new Wrong.InsideOut(surface.id()),
                    Wrong.Because.METAL_SEEN,
                    Wrong.Mend.TURN_FACES));
        }
        if (!spansClockZero(surface.mesh())) {
            flaws.add(new Flaw(
                    Flaw.Kind.MESH_OFF_CLOCK,
                    surface.part(),
                    new Wrong.OffClock(surface.id()),
                    Wrong.Because.CLOCK_OFF,
                    Wrong.Mend.TURN_MESH));
        }
    }

    /** About its middle, so that what root and tip leave open counts little; below 0 if it is inside out. */
    private static double volume(Mesh mesh) {
        double[] middle = new double[3];
        for (int point = 0; point < mesh.pointCount(); point++) {
            middle[0] += mesh.x(point) / mesh.pointCount();
            middle[1] += mesh.y(point) / mesh.pointCount();
            middle[2] += mesh.z(point) / mesh.pointCount();
        }
        double six = 0;
        int[] corners = mesh.triangles();
        for (int i = 0; i < corners.length; i += 3) {
            double[] a = from(middle, mesh, corners[i]);
            double[] b = from(middle, mesh, corners[i + 1]);
            double[] c = from(middle, mesh, corners[i + 2]);
            six += a[0] * (b[1] * c[2] - b[2] * c[1])
                    + a[1] * (b[2] * c[0] - b[0] * c[2])
                    + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
        return six;
    }

    private static double[] from(double[] middle, Mesh mesh, int point) {
        return new double[] {mesh.x(point) - middle[0], mesh.y(point) - middle[1], mesh.z(point) - middle[2]};
    }

    private static boolean spansClockZero(Mesh mesh) {
        boolean before = false;
        boolean after = false;
        for (int point = 0; point < mesh.pointCount(); point++) {
            before |= mesh.z(point) > 0 && mesh.y(point) <= 0;
            after |= mesh.z(point) > 0 && mesh.y(point) >= 0;
        }
        return before && after;
    }
}
