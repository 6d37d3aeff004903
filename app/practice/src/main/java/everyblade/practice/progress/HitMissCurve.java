package everyblade.practice.progress;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * The share of damage found over its size: a logistic curve over the logarithm of the size, by maximum likelihood, as in
 * MIL-HDBK-1823A (2009), appendix G, for hits and misses (from memory).
 *
 * <p>The bound on the size found nine times of ten is that of the likelihood ratio over both parameters together (R. C. H. Cheng,
 * T. C. Iles, Technometrics 30 (1988) 77–86, from memory): the largest such size of any curve within the region that is
 * 90 % sure. Since sizes below it do not matter, it is surer than 95 % (held by simulation).
 *
 * @param intercept of the log odds
 * @param slope of the log odds over the natural logarithm of the size in mm, above 0
 * @param points from which it was made
 */
public record HitMissCurve(double intercept, double slope, List<Point> points) {

    /** So many points are needed for a curve (MIL-HDBK-1823A, 4.5.2.2, from memory). */
    public static final int LEAST_POINTS = 60;

    private static final double NINE_OF_TEN = StrictMath.log(9);
    private static final int STEPS = 60;
    private static final double FARTHEST = 50;

    /**
     * One piece of damage.
     *
     * @param size mm, above 0
     * @param found whether it was
     */
    public record Point(double size, boolean found) {}

    public HitMissCurve {
        points = List.copyOf(points);
    }

    /**
     * The curve of these points; empty if there are too few, or if they do not make one: where all were found or none, where all
     * that was found is larger than all that was missed, or where larger damage was found less often.
     */
    public static Optional<HitMissCurve> of(List<Point> points) {
        if (points.size() < LEAST_POINTS) {
            return Optional.empty();
        }
        double largestMissed = largest(points, false);
        double smallestFound = -largest(
                points.stream()
                        .filter(Point::found)
                        .map(point -> new Point(-point.size(), true))
                        .toList(),
                true);
        if (!(smallestFound < largestMissed)) {
            return Optional.empty();
        }
        double[] b = fit(points);
        return b[1] > 1e-6 ? Optional.of(new HitMissCurve(b[0], b[1], points)) : Optional.empty();
    }

    private static double largest(List<Point> points, boolean found) {
        return points.stream()
                .filter(point -> point.found() == found)
                .mapToDouble(Point::size)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** Newton's method, each step halved until it is one upward; the likelihood has one top. */
    private static double[] fit(List<Point> points) {
        double[] b = {0, 0};
        double best = likelihood(points, b[0], b[1]);
        for (int step = 0; step < STEPS; step++) {
            double g0 = 0;
            double g1 = 0;
            double h00 = 0;
            double h01 = 0;
            double h11 = 0;
            for (Point point : points) {
                double x = StrictMath.log(point.size());
                double p = share(b[0] + b[1] * x);
                double rest = (point.found() ? 1 : 0) - p;
                g0 += rest;
                g1 += rest * x;
                h00 += p * (1 - p);
                h01 += p * (1 - p) * x;
                h11 += p * (1 - p) * x * x;
            }
            double whole = h00 * h11 - h01 * h01;
            if (!(whole > 0)) {
                return b;
            }
            double d0 = (h11 * g0 - h01 * g1) / whole;
            double d1 = (h00 * g1 - h01 * g0) / whole;
            double part = 1;
            double next = likelihood(points, b[0] + d0, b[1] + d1);
            while (next < best && part > 1e-6) {
                part /= 2;
                next = likelihood(points, b[0] + part * d0, b[1] + part * d1);
            }
            if (next - best < 1e-12) {
                return b;
            }
            b[0] += part * d0;
            b[1] += part * d1;
            best = next;
        }
        return b;
    }

    private static double share(double odds) {
        return 1 / (1 + StrictMath.exp(-odds));
    }

    private static double likelihood(List<Point> points, double intercept, double slope) {
        double sum = 0;
        for (Point point : points) {
            double odds = intercept + slope * StrictMath.log(point.size());
            double against = point.found() ? -odds : odds;
            sum -= against > 30 ? against : StrictMath.log1p(StrictMath.exp(against));
        }
        return sum;
    }

    /** The share found of damage of this size, mm. */
    public double share(Point at) {
        return share(intercept + slope * StrictMath.log(at.size()));
    }

    /** The size of which nine of ten are found, mm. */
    public double a90() {
        return StrictMath.exp((NINE_OF_TEN - intercept) / slope);
    }

    /** The size of which surely (95 %) nine of ten are found, mm; empty if no size is so within all reason. */
    public OptionalDouble a90Surely() {
        double most = likelihood(points, intercept, slope);
        double allowed = new ChiSquaredDistribution(2).inverseCumulativeProbability(0.90) / 2;
        double low = StrictMath.log(a90());
        double high = low + 0.05;
        while (most - through(high) < allowed) {
            high += 0.1 * (1 + high - low);
            if (high - low > StrictMath.log(FARTHEST)) {
                return OptionalDouble.empty();
            }
        }
        for (int i = 0; i < STEPS; i++) {
            double middle = (low + high) / 2;
            if (most - through(middle) < allowed) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(StrictMath.exp(high));
    }

    /** The likelihood of the best curve that finds nine of ten of this size (its logarithm): one with one parameter left. */
    private double through(double logSize) {
        double low = 0;
        double high = 8 * slope + 1;
        double golden = (StrictMath.sqrt(5) - 1) / 2;
        for (int i = 0; i < STEPS; i++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (likelihood(points, NINE_OF_TEN - left * logSize, left)
                    < likelihood(points, NINE_OF_TEN - right * logSize, right)) {
                low = left;
            } else {
                high = right;
            }
        }
        return likelihood(points, NINE_OF_TEN - low * logSize, low);
    }
}
