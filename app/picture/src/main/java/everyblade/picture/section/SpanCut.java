package everyblade.picture.section;

import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An airfoil cut at a share of its span, unrolled: length along the way of the air to the right, length along the circle
 * clockwise, mm.
 *
 * @param radius in the middle of the chord, mm
 * @param pitch from one airfoil to the next along the circle there, mm
 * @param lines pieces of the outline, four numbers each: where it begins and where it ends
 * @param chord the longest way through the outline, from its front to its rear end: four numbers
 */
record SpanCut(double radius, double pitch, List<double[]> lines, double[] chord) {

    /** Empty if the airfoil does not reach there. */
    static Optional<SpanCut> of(RowSurface surface, Channel channel, double share) {
        Mesh mesh = surface.mesh();
        double[] shares = new double[mesh.pointCount()];
        for (int point = 0; point < shares.length; point++) {
            shares[point] = channel.share(mesh.x(point), StrictMath.hypot(mesh.y(point), mesh.z(point)));
        }
        List<double[]> lines = new ArrayList<>();
        List<Double> radii = new ArrayList<>();
        int[] corners = mesh.triangles();
        for (int i = 0; i < corners.length; i += 3) {
            List<double[]> ends = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                int from = corners[i + k];
                int to = corners[i + (k + 1) % 3];
                if (shares[from] > share != shares[to] > share) {
                    ends.add(unrolled(
                            mesh, from, to, (share - shares[from]) / (shares[to] - shares[from]), channel, share));
                }
            }
            if (ends.size() == 2) {
                lines.add(new double[] {ends.get(0)[0], ends.get(0)[1], ends.get(1)[0], ends.get(1)[1]});
                radii.add(ends.get(0)[2]);
            }
        }
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        double least = radii.stream().mapToDouble(r -> r).min().orElseThrow();
        double most = radii.stream().mapToDouble(r -> r).max().orElseThrow();
        double radius = (least + most) / 2;
        double pitch = 2 * Math.PI * radius / surface.row().count();
        return Optional.of(new SpanCut(radius, pitch, List.copyOf(lines), longest(lines)));
    }

    /** Along the way of the air, along the circle, and the radius. */
    private static double[] unrolled(Mesh mesh, int from, int to, double part, Channel channel, double share) {
        double x = mesh.x(from) + part * (mesh.x(to) - mesh.x(from));
        double y = mesh.y(from) + part * (mesh.y(to) - mesh.y(from));
        double z = mesh.z(from) + part * (mesh.z(to) - mesh.z(from));
        double r = StrictMath.hypot(y, z);
        return new double[] {channel.along(x, r, share), r * StrictMath.atan2(y, z), r};
    }

    private static double[] longest(List<double[]> lines) {
        double most = -1;
        double[] chord = new double[4];
        for (double[] one : lines) {
            for (double[] other : lines) {
                double length = StrictMath.hypot(other[0] - one[0], other[1] - one[1]);
                if (length > most) {
                    most = length;
                    double[] front = one[0] <= other[0] ? one : other;
                    double[] rear = one[0] <= other[0] ? other : one;
                    chord = new double[] {front[0], front[1], rear[0], rear[1]};
                }
            }
        }
        return chord;
    }

    /** Length of the chord, mm. */
    double chordLength() {
        return StrictMath.hypot(chord[2] - chord[0], chord[3] - chord[1]);
    }

    /** Angle of the chord from the way of the air, degrees, positive when its rear end lies clockwise of its front end. */
    double stagger() {
        return StrictMath.toDegrees(StrictMath.atan2(chord[3] - chord[1], chord[2] - chord[0]));
    }

    /** Chord over pitch. */
    double solidity() {
        return chordLength() / pitch;
    }
}
