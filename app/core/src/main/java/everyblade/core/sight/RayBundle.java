package everyblade.core.sight;

/**
 * The lines of sight from one point, the apex, to a piece of a circle. The piece is a rational curve of degree two: of its two ends and the point where the tangents there meet. So each condition
 * for a line to pass through a triangle, being linear in the far end of the line, is a polynomial of degree two on the piece,
 * and what a triangle shades has up to four ends, in closed form. One thread's; used again and again.
 */
final class RayBundle {

    private static final int AXES = 5;
    private static final double ROUNDING = 1e-12;

    private final IntervalSet shaded = new IntervalSet();
    private double weight;
    private double reach;

    private double px;
    private double py;
    private double pz;
    private double ux;
    private double uy;
    private double uz;
    private double tx;
    private double ty;
    private double tz;
    private double vx;
    private double vy;
    private double vz;

    private double middleX;
    private double middleY;
    private double middleZ;
    private double halfX;
    private double halfY;
    private double halfZ;
    /** Directions, and how far the fan reaches along each: direction, from, to. */
    private final double[] axes = new double[5 * AXES];

    /**
     * From a point to an arc about the axis, of less than half a turn.
     *
     * @param x of the apex, with y and z
     * @param arcX of the arc
     * @param arcR its radius
     * @param start clock angle of its first end, radians
     * @param end clock angle of its last end, on either side of the first
     */
    void aim(double x, double y, double z, double arcX, double arcR, double start, double end) {
        double middle = (start + end) / 2;
        weight = Math.cos((end - start) / 2);
        px = x;
        py = y;
        pz = z;
        ux = arcX - x;
        uy = arcR * Math.sin(start) - y;
        uz = arcR * Math.cos(start) - z;
        tx = ux;
        ty = arcR * Math.sin(middle) / weight - y;
        tz = arcR * Math.cos(middle) / weight - z;
        vx = ux;
        vy = arcR * Math.sin(end) - y;
        vz = arcR * Math.cos(end) - z;
    }

    /** Makes this what the other looks like from a frame further on by a clock angle, given by its cosine and sine. */
    void turnedFrom(RayBundle other, double cosine, double sine) {
        weight = other.weight;
        px = other.px;
        py = other.py * cosine - other.pz * sine;
        pz = other.pz * cosine + other.py * sine;
        ux = other.ux;
        uy = other.uy * cosine - other.uz * sine;
        uz = other.uz * cosine + other.uy * sine;
        tx = other.tx;
        ty = other.ty * cosine - other.tz * sine;
        tz = other.tz * cosine + other.ty * sine;
        vx = other.vx;
        vy = other.vy * cosine - other.vz * sine;
        vz = other.vz * cosine + other.vy * sine;
        bound();
    }

    /** The fan lies within the tetrahedron of its apex and the three points: its box, and its reach along directions across it. */
    private void bound() {
        double lowX = Math.min(0, ux);
        double highX = Math.max(0, ux);
        double lowY = Math.min(Math.min(0, uy), Math.min(ty, vy));
        double highY = Math.max(Math.max(0, uy), Math.max(ty, vy));
        double lowZ = Math.min(Math.min(0, uz), Math.min(tz, vz));
        double highZ = Math.max(Math.max(0, uz), Math.max(tz, vz));
        middleX = px + (lowX + highX) / 2;
        middleY = py + (lowY + highY) / 2;
        middleZ = pz + (lowZ + highZ) / 2;
        halfX = (highX - lowX) / 2;
        halfY = (highY - lowY) / 2;
        halfZ = (highZ - lowZ) / 2;
        reach = Math.abs(px) + Math.abs(py) + Math.abs(pz) + halfX + halfY + halfZ;
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        axis(0, nx, ny, nz);
        axis(1, uy * nz - uz * ny, uz * nx - ux * nz, ux * ny - uy * nx);
        axis(2, vy * nz - vz * ny, vz * nx - vx * nz, vx * ny - vy * nx);
        axis(3, uy * tz - uz * ty, uz * tx - ux * tz, ux * ty - uy * tx);
        axis(4, ty * vz - tz * vy, tz * vx - tx * vz, tx * vy - ty * vx);
    }

    private void axis(int i, double x, double y, double z) {
        double u = x * ux + y * uy + z * uz;
        double t = x * tx + y * ty + z * tz;
        double v = x * vx + y * vy + z * vz;
        double apex = x * px + y * py + z * pz;
        double pad = ROUNDING * (Math.abs(x) + Math.abs(y) + Math.abs(z)) * reach;
        int at = 5 * i;
        axes[at] = x;
        axes[at + 1] = y;
        axes[at + 2] = z;
        axes[at + 3] = apex - pad + Math.min(Math.min(0, u), Math.min(t, v));
        axes[at + 4] = apex + pad + Math.max(Math.max(0, u), Math.max(t, v));
    }

    /** Whether no line of the fan can come near a box, given by its middle and half widths. */
    boolean misses(double x, double y, double z, double hx, double hy, double hz) {
        if (Math.abs(x - middleX) > hx + halfX
                || Math.abs(y - middleY) > hy + halfY
                || Math.abs(z - middleZ) > hz + halfZ) {
            return true;
        }
        for (int at = 0; at < axes.length; at += 5) {
            double ax = axes[at];
            double ay = axes[at + 1];
            double az = axes[at + 2];
            double middle = ax * x + ay * y + az * z;
            double half = Math.abs(ax) * hx + Math.abs(ay) * hy + Math.abs(az) * hz;
            if (middle + half < axes[at + 3] || middle - half > axes[at + 4]) {
                return true;
            }
        }
        return false;
    }

    /**
     * Takes away what a triangle shades.
     *
     * @param corners among others the triangle's nine coordinates
     * @param at where they begin
     * @param open parameters of the piece, 0 to 1, to which light comes through
     */
    void shade(double[] corners, int at, IntervalSet open) {
        double ax = corners[at] - px;
        double ay = corners[at + 1] - py;
        double az = corners[at + 2] - pz;
        double bx = corners[at + 3] - px;
        double by = corners[at + 4] - py;
        double bz = corners[at + 5] - pz;
        double cx = corners[at + 6] - px;
        double cy = corners[at + 7] - py;
        double cz = corners[at + 8] - pz;
        double abx = ay * bz - az * by;
        double aby = az * bx - ax * bz;
        double abz = ax * by - ay * bx;
        double volume = abx * cx + aby * cy + abz * cz;
        double sign = volume > 0 ? 1 : -1;
        double ab0 = sign * (abx * ux + aby * uy + abz * uz);
        double ab1 = sign * weight * (abx * tx + aby * ty + abz * tz);
        double ab2 = sign * (abx * vx + aby * vy + abz * vz);
        if (ab0 < 0 && ab1 < 0 && ab2 < 0) {
            return;
        }
        double bcx = by * cz - bz * cy;
        double bcy = bz * cx - bx * cz;
        double bcz = bx * cy - by * cx;
        double bc0 = sign * (bcx * ux + bcy * uy + bcz * uz);
        double bc1 = sign * weight * (bcx * tx + bcy * ty + bcz * tz);
        double bc2 = sign * (bcx * vx + bcy * vy + bcz * vz);
        if (bc0 < 0 && bc1 < 0 && bc2 < 0) {
            return;
        }
        double cax = cy * az - cz * ay;
        double cay = cz * ax - cx * az;
        double caz = cx * ay - cy * ax;
        double ca0 = sign * (cax * ux + cay * uy + caz * uz);
        double ca1 = sign * weight * (cax * tx + cay * ty + caz * tz);
        double ca2 = sign * (cax * vx + cay * vy + caz * vz);
        if (ca0 < 0 && ca1 < 0 && ca2 < 0) {
            return;
        }
        // The triangle's own normal is the sum of the three; behind its plane is where the line passes through it.
        double depth = Math.abs(volume);
        double be0 = ab0 + bc0 + ca0 - depth;
        double be1 = ab1 + bc1 + ca1 - weight * depth;
        double be2 = ab2 + bc2 + ca2 - depth;
        if (volume == 0 || be0 < 0 && be1 < 0 && be2 < 0) {
            return;
        }
        shaded.set(0, 1);
        Bernstein.keepQuadratic(ab0, ab1, ab2, shaded);
        Bernstein.keepQuadratic(bc0, bc1, bc2, shaded);
        Bernstein.keepQuadratic(ca0, ca1, ca2, shaded);
        Bernstein.keepQuadratic(be0, be1, be2, shaded);
        for (int i = 0; i < shaded.count(); i++) {
            open.subtract(shaded.from(i), shaded.to(i));
        }
    }
}
