package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What bounds all places of an airfoil that is turned about the axis by a small angle: the airfoil at both ends of it, and
 * what its edges pass over between, as flat triangles. They cut the corner by r (1 − cos ½ angle), hundredths of a millimetre
 * for a degree or two.
 */
final class Smear {

    private Smear() {}

    /** From where the airfoil stands to so far clockwise, radians; the airfoil itself for no angle. */
    static Mesh of(Mesh airfoil, double angle) {
        if (angle == 0) {
            return airfoil;
        }
        int count = airfoil.pointCount();
        double sine = Math.sin(angle);
        double cosine = Math.cos(angle);
        double[] points = new double[6 * count];
        for (int i = 0; i < count; i++) {
            double y = airfoil.y(i);
            double z = airfoil.z(i);
            points[3 * i] = airfoil.x(i);
            points[3 * i + 1] = y;
            points[3 * i + 2] = z;
            points[3 * (count + i)] = airfoil.x(i);
            points[3 * (count + i) + 1] = y * cosine + z * sine;
            points[3 * (count + i) + 2] = z * cosine - y * sine;
        }
        List<Integer> corners = new ArrayList<>();
        Set<Long> edges = new HashSet<>();
        for (int face = 0; face < airfoil.faceCount(); face++) {
            for (int k = 0; k < airfoil.cornerCount(face); k++) {
                int a = airfoil.corner(face, k);
                int b = airfoil.corner(face, (k + 1) % airfoil.cornerCount(face));
                if (edges.add((long) Math.min(a, b) << Integer.SIZE | Math.max(a, b))) {
                    corners.addAll(List.of(a, b, count + b, a, count + b, count + a));
                }
            }
        }
        for (int point : airfoil.triangles()) {
            corners.add(point);
        }
        for (int point : airfoil.triangles()) {
            corners.add(count + point);
        }
        int triangles = corners.size() / 3;
        return new Mesh(
                points,
                corners.stream().mapToInt(Integer::intValue).toArray(),
                IntStream.rangeClosed(0, triangles).map(i -> 3 * i).toArray(),
                new int[triangles]);
    }
}
