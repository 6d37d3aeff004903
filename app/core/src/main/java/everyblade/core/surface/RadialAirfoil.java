package everyblade.core.surface;

import everyblade.spi.Shape;
import everyblade.spi.Shape.WrapPoint;
import java.util.List;

/**
 * A blade of an impeller: straight lines from the hub to the shroud curve at equal shares of their lengths, wound round
 * the axis, with half of the thickness on either side. Root and tip follow the two curves exactly. The edges are rounded
 * over a length of one thickness, at most a tenth of the blade. Chord is the share of the meridional length from where
 * the blade begins, which is further on for a splitter. The convex side is found from the metal angles of both edges at mid-span.
 */
final class RadialAirfoil implements Airfoil {

    private static final double STEP = 1e-5;
    private static final double STRAIGHT = 1e-9;

    private final Shape.Radial shape;
    private final Curve hub;
    private final Curve shroud;
    private final double begin;
    private final int suction;
    private final boolean rightHanded;

    RadialAirfoil(Shape.Radial shape) throws UnusableShape {
        this.shape = shape;
        this.hub = new Curve(shape.hub(), CurveName.OfShape.BLADE_HUB);
        this.shroud = new Curve(shape.shroud(), CurveName.OfShape.BLADE_SHROUD);
        this.begin = shape.splitterFrom().orElse(0);
        this.rightHanded = area() > 0;
        double bend = metalAngle(begin) - metalAngle(1);
        this.suction = bend > -STRAIGHT ? 1 : -1;
    }

    /** Area of the blade in the plane through the axis, below 0 if the hub lies on the other hand of the flow. */
    private double area() {
        int steps = 64;
        double twice = 0;
        for (int i = 0; i < steps; i++) {
            double a = (double) i / steps;
            double b = (double) (i + 1) / steps;
            twice += hub.xAt(a) * hub.rAt(b) - hub.xAt(b) * hub.rAt(a);
            twice -= shroud.xAt(a) * shroud.rAt(b) - shroud.xAt(b) * shroud.rAt(a);
        }
        twice += hub.xAt(1) * shroud.rAt(1) - shroud.xAt(1) * hub.rAt(1);
        twice += shroud.xAt(0) * hub.rAt(0) - hub.xAt(0) * shroud.rAt(0);
        return twice;
    }

    /** The angle at mid-span from the meridional direction to the blade, radians, clockwise positive. */
    private double metalAngle(double m) {
        double a = Math.max(begin, m - STEP);
        double b = Math.min(1, m + STEP);
        double along = (b - a) * Between.mix(hub.length(), shroud.length(), 0.5);
        return StrictMath.atan2(r(m, 0.5) * (wrap(b, 0.5) - wrap(a, 0.5)), along);
    }

    @Override
    public Slice slice(double span) {
        return new Slice() {
            @Override
            public double[] at(int side, double chord) {
                double m = Between.mix(begin, 1, chord);
                double off = side * half(chord, span) * obliqueness(m, span) / r(m, span);
                return MeshBuilder.polar(x(m, span), r(m, span), wrap(m, span) + off);
            }

            @Override
            public int suction() {
                return suction;
            }
        };
    }

    /** Half of the thickness square to the blade, mm. */
    private double half(double chord, double span) {
        double thickness = Between.mix(shape.hubThickness(), shape.shroudThickness(), span);
        double length = (1 - begin) * Between.mix(hub.length(), shroud.length(), span);
        double nose = Math.min(thickness, length / 10);
        double fromEdge = Math.min(chord, 1 - chord) * length;
        double in = Math.max(0, 1 - fromEdge / nose);
        return thickness / 2 * Math.sqrt(1 - in * in);
    }

    /** By how much the way through the blade is longer round the axis than square to it. */
    private double obliqueness(double m, double span) {
        double m0 = Math.max(0, m - STEP);
        double m1 = Math.min(1, m + STEP);
        double s0 = Math.max(0, span - STEP);
        double s1 = Math.min(1, span + STEP);
        double r = r(m, span);
        double ax = (x(m1, span) - x(m0, span)) / (m1 - m0);
        double ay = r * (wrap(m1, span) - wrap(m0, span)) / (m1 - m0);
        double az = (r(m1, span) - r(m0, span)) / (m1 - m0);
        double bx = (x(m, s1) - x(m, s0)) / (s1 - s0);
        double by = r * (wrap(m, s1) - wrap(m, s0)) / (s1 - s0);
        double bz = (r(m, s1) - r(m, s0)) / (s1 - s0);
        double nx = ay * bz - az * by;
        double ny = az * bx - ax * bz;
        double nz = ax * by - ay * bx;
        return Math.sqrt(nx * nx + ny * ny + nz * nz) / Math.abs(ny);
    }

    @Override
    public boolean rightHanded() {
        return rightHanded;
    }

    private double x(double m, double span) {
        return Between.mix(hub.xAt(m), shroud.xAt(m), span);
    }

    private double r(double m, double span) {
        return Between.mix(hub.rAt(m), shroud.rAt(m), span);
    }

    private double wrap(double m, double span) {
        return Between.mix(wrap(shape.hubWrap(), m), wrap(shape.shroudWrap(), m), span);
    }

    private static double wrap(List<WrapPoint> points, double m) {
        double[] at = points.stream().mapToDouble(WrapPoint::m).toArray();
        double[] angle = points.stream().mapToDouble(WrapPoint::angle).toArray();
        return StrictMath.toRadians(Between.linear(at, angle, m));
    }
}
