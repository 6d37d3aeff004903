package everyblade.core.sight;

import everyblade.core.surface.Mesh;

/**
 * A ring of equal airfoils as something that hides. Only one of them is kept; a fan is turned to each that stands between the
 * clock angles that its lines span.
 */
final class RingShade {

    private static final double TURN = 2 * Math.PI;

    private final Hierarchy hierarchy;
    private final int count;
    private final double offset;
    private final double[] cosine;
    private final double[] sine;
    private double least;
    private double most;

    RingShade(Ring ring) {
        this(new Hierarchy(ring.airfoil()), ring.count(), CriteriaCut.radians(ring.offset()));
        span(ring.airfoil());
    }

    private RingShade(Hierarchy hierarchy, int count, double offset) {
        this.hierarchy = hierarchy;
        this.count = count;
        this.offset = offset;
        cosine = new double[count];
        sine = new double[count];
        for (int i = 0; i < count; i++) {
            double at = offset + TURN * i / count;
            cosine[i] = Math.cos(at);
            sine[i] = Math.sin(at);
        }
    }

    /** The same airfoils, the first of them standing at a clock angle, radians. */
    RingShade at(double clock) {
        RingShade moved = new RingShade(hierarchy, count, clock);
        moved.least = least;
        moved.most = most;
        return moved;
    }

    /** Between which clock angles the airfoil extends; all of them, if an edge comes near the axis. */
    private void span(Mesh mesh) {
        for (int face = 0; face < mesh.faceCount(); face++) {
            double from = clock(mesh, mesh.corner(face, 0));
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                double on = wrapped(clock(mesh, mesh.corner(face, k)) - from);
                least = Math.min(least, from + on);
                most = Math.max(most, from + on);
                if (Math.abs(on) > TURN / 4) {
                    least = -TURN;
                    most = TURN;
                }
            }
        }
    }

    private static double clock(Mesh mesh, int point) {
        return Math.atan2(mesh.y(point), mesh.z(point));
    }

    static double wrapped(double angle) {
        return angle - TURN * Math.rint(angle / TURN);
    }

    /**
     * Takes away what the ring shades.
     *
     * @param fan in the frame of the ring
     * @param turned used for the fan as each airfoil sees it
     * @param apex clock angle of the fan's apex, radians
     * @param start clock angle of its arc's first end
     * @param end clock angle of its arc's last end
     * @param open parameters of the arc to which light comes through
     * @param spared a face of the first airfoil that does not hide; −1 for none
     */
    void shade(RayBundle fan, RayBundle turned, double apex, double start, double end, IntervalSet open, int spared) {
        double half = Math.abs(end - start) / 2;
        double middle = wrapped((start + end) / 2 - apex);
        int from = 0;
        int to = count - 1;
        if (Math.abs(middle) + half < TURN / 2 - 1e-9) {
            double low = apex + Math.min(0, middle - half);
            double high = apex + Math.max(0, middle + half);
            from = (int) Math.ceil((low - most - offset) / TURN * count - 1e-9);
            to = Math.min(from + count - 1, (int) Math.floor((high - least - offset) / TURN * count + 1e-9));
        }
        for (int at = from; at <= to && !open.isEmpty(); at++) {
            int i = Math.floorMod(at, count);
            turned.turnedFrom(fan, cosine[i], sine[i]);
            hierarchy.shade(turned, open, i == 0 ? spared : -1);
        }
    }
}
