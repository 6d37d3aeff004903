package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.surface.Facets;
import java.util.Arrays;

/**
 * The clock angles α of the scope tip, seen from an airfoil at clock 0, at which nothing but hiding keeps a facet out of
 * sight. Distance, facing and footprint are linear in cos α and sin α; cone and incidence compare a linear function with
 * the root of another, so their squares make polynomials of degree four. One thread's; used again and again.
 */
final class CriteriaCut {

    /** A line of sight exactly at a limit passes, whatever the last digit of its computation. */
    private static final double SLACK = 1e-12;

    private static final int PIECES = CirclePieces.COUNT;
    private static final int ALL = (1 << PIECES) - 1;

    private final Pose pose;
    private final double nearest;
    private final double farthest;
    private final double coneShare;
    private final double detailShare;
    private final double footprint;

    private final Linear distance = new Linear();
    private final Linear ahead = new Linear();
    private final Linear facing = new Linear();
    private final Linear fine = new Linear();
    private final IntervalSet open = new IntervalSet();
    private final Bernstein bernstein = new Bernstein();

    CriteriaCut(Pose pose, Criteria criteria) {
        this.pose = pose;
        this.nearest = pose.near() * pose.near() * (1 - SLACK);
        this.farthest = pose.far() * pose.far() * (1 + SLACK);
        double half = radians(pose.cone()) / 2;
        this.coneShare = Math.cos(half) * Math.cos(half) * (1 - SLACK);
        this.detailShare = criteria.detail().orElse(Double.POSITIVE_INFINITY) * (1 + SLACK);
        this.footprint = criteria.finest(pose);
    }

    static double radians(Turn turn) {
        return Math.toRadians(turn.degrees());
    }

    /** The square of the sine of a least angle between line of sight and surface. */
    static double share(Turn grazing) {
        double sine = Math.sin(radians(grazing));
        return sine * sine * (1 - SLACK);
    }

    /**
     * Finds the angles.
     *
     * @param grazing the share that {@link #share} gives of the least angle between line of sight and surface
     * @param result where the angles go, from 0 to 2π radians
     * @param left where the share of the turn goes that is left after each hindrance but the last; null if nobody asks
     */
    void find(Facets facets, int facet, double grazing, IntervalSet result, double[] left) {
        if (left != null) {
            Arrays.fill(left, 0);
        }
        find(facets, facet, grazing, result, left, ALL);
    }

    /**
     * Finds the angles on the pieces of the circle that an arc shorter than one of them meets, and does not say why there are
     * no others.
     *
     * @param from where the arc begins, radians
     * @param to where it ends
     */
    void findNear(double from, double to, Facets facets, int facet, double grazing, IntervalSet result) {
        find(facets, facet, grazing, result, null, 1 << CirclePieces.at(from) | 1 << CirclePieces.at(to));
    }

    private void find(Facets facets, int facet, double grazing, IntervalSet result, double[] left, int pieces) {
        prepare(facets, facet);
        result.clear();
        for (int piece = 0; piece < PIECES; piece++) {
            if ((pieces & 1 << piece) == 0) {
                continue;
            }
            open.set(0, 1);
            ahead.to(piece);
            facing.to(piece);
            if (left == null && (ahead.isBehind() || facing.isBehind())) {
                continue;
            }
            distance.to(piece);
            ahead.keepAtLeast(coneShare, distance, bernstein, open);
            if (noted(piece, Hindrance.OUTSIDE_CONE, left)) {
                continue;
            }
            distance.keepBetween(nearest, farthest, open);
            if (noted(piece, Hindrance.OUT_OF_RANGE, left)) {
                continue;
            }
            facing.keepAtLeast(grazing, distance, bernstein, open);
            if (noted(piece, Hindrance.GRAZING, left)) {
                continue;
            }
            if (detailShare < Double.POSITIVE_INFINITY) {
                fine.to(piece);
                fine.keepNotNegative(open);
            }
            if (noted(piece, Hindrance.TOO_COARSE, left)) {
                continue;
            }
            for (int i = 0; i < open.count(); i++) {
                result.append(CirclePieces.angle(piece, open.from(i)), CirclePieces.angle(piece, open.to(i)));
            }
        }
    }

    /** Adds up what is left, if that is asked; whether it is nothing. */
    private boolean noted(int piece, Hindrance hindrance, double[] left) {
        if (left == null) {
            return open.isEmpty();
        }
        double sum = 0;
        for (int i = 0; i < open.count(); i++) {
            sum += CirclePieces.angle(piece, open.to(i)) - CirclePieces.angle(piece, open.from(i));
        }
        left[hindrance.ordinal()] += sum / (2 * Math.PI);
        return open.isEmpty();
    }

    private void prepare(Facets facets, int facet) {
        double x = facets.centroid(facet, 0);
        double y = facets.centroid(facet, 1);
        double z = facets.centroid(facet, 2);
        double r = pose.r();
        double along = pose.x() - x;
        distance.set(along * along + y * y + z * z + r * r, -2 * r * z, -2 * r * y);
        double fx = pose.forward().axial();
        double fy = pose.forward().tangential();
        double fz = pose.forward().radial();
        ahead.set(-fx * along - fz * r, fy * y + fz * z, fz * y - fy * z);
        double nx = facets.normal(facet, 0);
        double ny = facets.normal(facet, 1);
        double nz = facets.normal(facet, 2);
        facing.set(nx * along - ny * y - nz * z, nz * r, ny * r);
        if (detailShare < Double.POSITIVE_INFINITY) {
            fine.set(
                    detailShare * facing.a - footprint * distance.a,
                    detailShare * facing.b - footprint * distance.b,
                    detailShare * facing.c - footprint * distance.c);
        }
    }

    /** a + b cos α + c sin α, and its coefficients on one piece of the circle. */
    private static final class Linear {
        private static final double W = CirclePieces.WEIGHT;
        private double a;
        private double b;
        private double c;
        private double c0;
        private double c1;
        private double c2;

        void set(double constant, double ofCosine, double ofSine) {
            a = constant;
            b = ofCosine;
            c = ofSine;
        }

        void to(int piece) {
            c0 = CirclePieces.coefficient(piece, 0, a, b, c);
            c1 = CirclePieces.coefficient(piece, 1, a, b, c);
            c2 = CirclePieces.coefficient(piece, 2, a, b, c);
        }

        /** Whether it is negative on all of the piece. */
        boolean isBehind() {
            return c0 < 0 && c1 < 0 && c2 < 0;
        }

        void keepNotNegative(IntervalSet open) {
            Bernstein.keepQuadratic(c0, c1, c2, open);
        }

        void keepBetween(double low, double high, IntervalSet open) {
            Bernstein.keepQuadratic(c0 - low, c1 - W * low, c2 - low, open);
            Bernstein.keepQuadratic(high - c0, W * high - c1, high - c2, open);
        }

        /** Where this is not negative and its square at least a share of the other. */
        void keepAtLeast(double share, Linear other, Bernstein bernstein, IntervalSet open) {
            if (isBehind()) {
                open.clear();
                return;
            }
            keepNotNegative(open);
            if (share == 0) {
                return;
            }
            double q0 = share * other.c0;
            double q1 = share * other.c1;
            double q2 = share * other.c2;
            bernstein.keepQuartic(
                    c0 * c0 - q0,
                    c0 * c1 - (q0 * W + q1) / 2,
                    (c0 * c2 + 2 * c1 * c1) / 3 - (q0 + 4 * q1 * W + q2) / 6,
                    c1 * c2 - (q1 + q2 * W) / 2,
                    c2 * c2 - q2,
                    open);
        }
    }
}
