package everyblade.core.sight;

/**
 * The circle cut into equal pieces, each a rational curve of degree two: of its two ends and the point where the tangents
 * there meet. On a piece a linear function a + b cos α + c sin α, times a weight that is never negative, is a
 * polynomial of degree two, whose coefficients are its values at these three points, the middle one times the cosine of
 * half the piece. Its parameter s runs from 0 to 1 as the angle does.
 */
final class CirclePieces {

    static final int COUNT = 12;
    /** Cosine of half a piece. */
    static final double WEIGHT = Math.cos(Math.PI / COUNT);

    private static final double WIDTH = 2 * Math.PI / COUNT;
    private static final double TANGENT = Math.tan(WIDTH / 4);
    private static final double[] COSINE = new double[2 * COUNT + 1];
    private static final double[] SINE = new double[2 * COUNT + 1];

    static {
        for (int i = 0; i <= 2 * COUNT; i++) {
            COSINE[i] = Math.cos(i * WIDTH / 2);
            SINE[i] = Math.sin(i * WIDTH / 2);
        }
    }

    private CirclePieces() {}

    /** A coefficient, 0 to 2, of a + b cos α + c sin α on a piece. */
    static double coefficient(int piece, int k, double a, double b, double c) {
        int at = 2 * piece + k;
        return (k == 1 ? WEIGHT * a : a) + b * COSINE[at] + c * SINE[at];
    }

    /** The piece on which an angle lies, radians from −2π to 4π. */
    static int at(double angle) {
        return Math.floorMod((int) Math.floor(angle / WIDTH), COUNT);
    }

    /** The angle, radians, at a parameter of a piece. */
    static double angle(int piece, double s) {
        if (s == 0 || s == 1) {
            return (piece + s) * WIDTH;
        }
        return (piece + 0.5) * WIDTH + 2 * Math.atan(TANGENT * (2 * s - 1));
    }
}
