package everyblade.practice.eye;

import everyblade.core.sight.Lens;
import everyblade.core.sight.Pose;

/** A lens as numbers for many points: from the engine's frame to right, up, ahead, and from there to picture elements. */
final class Camera {

    final int size;
    final float radius;
    final float scale;
    /** Rows right, up, ahead of the matrix. */
    private final double[] turn = new double[9];

    private final double[] eye = new double[3];

    Camera(Pose pose, int size) {
        Lens lens = new Lens(pose, size);
        this.size = size;
        this.radius = size / 2f;
        this.scale = (float) (lens.across(new double[] {1, 0, 1}) - lens.across(new double[] {0, 0, 1}));
        double[] origin = lens.seen(0, 0, 0);
        for (int axis = 0; axis < 3; axis++) {
            double[] unit = lens.seen(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
            for (int row = 0; row < 3; row++) {
                turn[3 * row + axis] = unit[row] - origin[row];
            }
        }
        for (int axis = 0; axis < 3; axis++) {
            eye[axis] = -(turn[axis] * origin[0] + turn[3 + axis] * origin[1] + turn[6 + axis] * origin[2]);
        }
    }

    /**
     * The same for points of a solid that stands turned by a clock angle: twelve numbers, row by row, the last of each row the
     * offset.
     */
    float[] of(double clock) {
        double sine = StrictMath.sin(clock);
        double cosine = StrictMath.cos(clock);
        float[] matrix = new float[12];
        for (int row = 0; row < 3; row++) {
            double x = turn[3 * row];
            double y = turn[3 * row + 1];
            double z = turn[3 * row + 2];
            matrix[4 * row] = (float) x;
            // A point (x, y, z) stands at (x, y cos + z sin, z cos − y sin).
            matrix[4 * row + 1] = (float) (y * cosine - z * sine);
            matrix[4 * row + 2] = (float) (y * sine + z * cosine);
            matrix[4 * row + 3] = (float) -(x * eye[0] + y * eye[1] + z * eye[2]);
        }
        return matrix;
    }

    /** The sine and cosine of half the cone. */
    double[] halfCone() {
        double tangent = radius / scale;
        double cosine = 1 / Math.sqrt(1 + tangent * tangent);
        return new double[] {tangent * cosine, cosine};
    }
}
