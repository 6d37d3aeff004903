package everyblade.core.sight;

/**
 * Where polynomials in Bernstein form are not negative on 0 to 1. A polynomial whose coefficients have one sign has
 * that sign throughout; one change of sign among them is exactly one root (Descartes). So roots are first told apart by
 * halving and then closed in on from both sides; none is missed but a pair nearer than 1e-10.
 *
 * <p>Reference: G. Farin, Curves and Surfaces for CAGD (from memory).
 */
final class Bernstein {

    private static final double NEAR = 1e-10;
    private static final double CLOSE = 1e-13;

    private final IntervalSet found = new IntervalSet();

    /** Keeps of these openings within 0 to 1 where the polynomial of degree two is not negative: c0 (1 − s)² + 2 c1 s (1 − s) + c2 s². */
    static void keepQuadratic(double c0, double c1, double c2, IntervalSet open) {
        double square = c1 * c1 - c0 * c2;
        boolean atStart = c0 >= 0;
        boolean atEnd = c2 >= 0;
        if (square < 0 || atStart == atEnd && c1 >= 0 == atStart) {
            if (!atStart) {
                open.clear();
            }
            return;
        }
        double root = Math.sqrt(square);
        double q = c1 >= 0 ? -(c1 + root) : root - c1;
        double one = q / (q + c2);
        double other = c0 / (c0 + q);
        if (atStart != atEnd) {
            // By signs, for at an end a root that does not count may lie as well.
            double end = c1 >= 0 == atStart ? one : other;
            if (atStart) {
                open.subtract(end, Double.POSITIVE_INFINITY);
            } else {
                open.subtract(Double.NEGATIVE_INFINITY, end);
            }
            return;
        }
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (atStart) {
            open.subtract(low, high);
        } else {
            open.subtract(Double.NEGATIVE_INFINITY, low);
            open.subtract(high, Double.POSITIVE_INFINITY);
        }
    }

    /** Keeps of these openings within 0 to 1 where the polynomial of degree four is not negative. */
    void keepQuartic(double c0, double c1, double c2, double c3, double c4, IntervalSet open) {
        found.clear();
        find(c0, c1, c2, c3, c4, 0, 1);
        open.intersect(found);
    }

    private void find(double c0, double c1, double c2, double c3, double c4, double from, double to) {
        int changes = change(c0, c1) + change(c1, c2) + change(c2, c3) + change(c3, c4);
        if (changes == 0) {
            if (c0 >= 0) {
                found.append(from, to);
            }
            return;
        }
        if (changes == 1) {
            double root = from + (to - from) * root(c0, c1, c2, c3, c4);
            if (c0 >= 0) {
                found.append(from, root);
            } else {
                found.append(root, to);
            }
            return;
        }
        double a0 = (c0 + c1) / 2;
        double a1 = (c1 + c2) / 2;
        double a2 = (c2 + c3) / 2;
        double a3 = (c3 + c4) / 2;
        double b0 = (a0 + a1) / 2;
        double b1 = (a1 + a2) / 2;
        double b2 = (a2 + a3) / 2;
        double d0 = (b0 + b1) / 2;
        double d1 = (b1 + b2) / 2;
        double middle = (d0 + d1) / 2;
        if (to - from < NEAR) {
            if (middle >= 0) {
                found.append(from, to);
            }
            return;
        }
        double half = (from + to) / 2;
        find(c0, a0, b0, d0, middle, from, half);
        find(middle, d1, b2, a3, c4, half, to);
    }

    private static int change(double a, double b) {
        return a >= 0 != b >= 0 ? 1 : 0;
    }

    /** The one root: Newton's steps, held between ends of different signs. */
    private static double root(double c0, double c1, double c2, double c3, double c4) {
        double low = 0;
        double high = 1;
        // Where a straight line would pass, but not from an end, which may be a root that does not count.
        double s = Math.max(0.05, Math.min(0.95, c0 / (c0 - c4)));
        while (high - low > CLOSE) {
            double t = 1 - s;
            double e0 = c0 * t + c1 * s;
            double e1 = c1 * t + c2 * s;
            double e2 = c2 * t + c3 * s;
            double e3 = c3 * t + c4 * s;
            double f0 = e0 * t + e1 * s;
            double f1 = e1 * t + e2 * s;
            double f2 = e2 * t + e3 * s;
            double g0 = f0 * t + f1 * s;
            double g1 = f1 * t + f2 * s;
            double value = g0 * t + g1 * s;
            if (value >= 0 == c0 >= 0) {
                low = s;
            } else {
                high = s;
            }
            double next = s - value / (4 * (g1 - g0));
            if (Math.abs(next - s) < CLOSE) {
                return Math.max(low, Math.min(high, next));
            }
            s = next > low && next < high ? next : (low + high) / 2;
        }
        return (low + high) / 2;
    }
}
