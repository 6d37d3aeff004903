package everyblade.picture.section;

import everyblade.spi.MeridionalPoint;
import java.util.List;

/** A line of straight pieces in the plane through the axis; lengths are mm. */
record SectionCurve(List<MeridionalPoint> points) {

    SectionCurve {
        points = List.copyOf(points);
    }

    /** The radius where the line first comes to this x; beyond its ends, that of the nearer end. */
    double radiusAt(double x) {
        for (int i = 1; i < points.size(); i++) {
            MeridionalPoint a = points.get(i - 1);
            MeridionalPoint b = points.get(i);
            if (Math.min(a.x(), b.x()) <= x && x <= Math.max(a.x(), b.x()) && a.x() != b.x()) {
                return a.r() + (b.r() - a.r()) * (x - a.x()) / (b.x() - a.x());
            }
        }
        MeridionalPoint first = points.get(0);
        MeridionalPoint last = points.get(points.size() - 1);
        return Math.abs(x - first.x()) <= Math.abs(x - last.x()) ? first.r() : last.r();
    }

    /** The point at a share of the length. */
    MeridionalPoint at(double share) {
        double left = share * length();
        for (int i = 1; i < points.size(); i++) {
            double piece = piece(i);
            if (left <= piece && piece > 0) {
                MeridionalPoint a = points.get(i - 1);
                MeridionalPoint b = points.get(i);
                return new MeridionalPoint(
                        a.x() + (b.x() - a.x()) * left / piece, a.r() + (b.r() - a.r()) * left / piece);
            }
            left -= piece;
        }
        return points.get(points.size() - 1);
    }

    private double length() {
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += piece(i);
        }
        return length;
    }

    private double piece(int i) {
        return StrictMath.hypot(
                points.get(i).x() - points.get(i - 1).x(),
                points.get(i).r() - points.get(i - 1).r());
    }

    /** How far a place lies from the line. */
    double distance(double x, double r) {
        return nearestOf(x, r)[0];
    }

    /** The length from the line's beginning to its point nearest to a place. */
    double nearest(double x, double r) {
        return nearestOf(x, r)[1];
    }

    private double[] nearestOf(double x, double r) {
        double[] best = {Double.POSITIVE_INFINITY, 0};
        double before = 0;
        for (int i = 1; i < points.size(); i++) {
            MeridionalPoint a = points.get(i - 1);
            double dx = points.get(i).x() - a.x();
            double dr = points.get(i).r() - a.r();
            double squared = dx * dx + dr * dr;
            double share = squared == 0 ? 0 : ((x - a.x()) * dx + (r - a.r()) * dr) / squared;
            double at = Math.max(0, Math.min(1, share));
            double off = StrictMath.hypot(x - a.x() - at * dx, r - a.r() - at * dr);
            if (off < best[0]) {
                best = new double[] {off, before + at * piece(i)};
            }
            before += piece(i);
        }
        return best;
    }
}
