package everyblade.core.surface;

import everyblade.core.surface.MeshFile.Damaged;
import java.util.ArrayList;
import java.util.List;

/** Gathers what a mesh file says; faces without area are left out. */
final class MeshGatherer {

    private final MeshBuilder mesh = new MeshBuilder();
    private final List<double[]> points = new ArrayList<>();
    private int faces;

    int point(double x, double y, double z) throws Damaged {
        if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
            throw new Damaged(new FileDamage.PointNowhere(points.size()));
        }
        points.add(new double[] {x, y, z});
        return mesh.point(x, y, z);
    }

    void face(int... corners) throws Damaged {
        if (corners.length < 3) {
            throw new Damaged(FileDamage.Plain.FEW_CORNERS);
        }
        for (int corner : corners) {
            if (corner < 0 || corner >= points.size()) {
                throw new Damaged(new FileDamage.NoSuchPoint(corner, points.size()));
            }
        }
        if (hasArea(corners)) {
            mesh.face(0, corners.clone());
            faces++;
        }
    }

    private boolean hasArea(int[] corners) {
        double[] vector = new double[3];
        double[] a = points.get(corners[0]);
        for (int k = 2; k < corners.length; k++) {
            double[] b = points.get(corners[k - 1]);
            double[] c = points.get(corners[k]);
            for (int i = 0; i < 3; i++) {
                int j = (i + 1) % 3;
                int l = (i + 2) % 3;
                vector[i] += (b[j] - a[j]) * (c[l] - a[l]) - (b[l] - a[l]) * (c[j] - a[j]);
            }
        }
        return vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2] > 0;
    }

    Mesh built() throws Damaged, UnusableShape {
        if (faces == 0) {
            throw new Damaged(FileDamage.Plain.NO_AREA);
        }
        return mesh.built();
    }

    static double number(String word) throws Damaged {
        try {
            return Double.parseDouble(word);
        } catch (NumberFormatException e) {
            throw new Damaged(new FileDamage.NoNumber(word));
        }
    }
}
