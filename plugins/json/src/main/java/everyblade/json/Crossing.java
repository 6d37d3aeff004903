package everyblade.json;

import everyblade.spi.MeridionalPoint;
import java.util.List;

/** Whether curves of straight pieces cross: a piece of one passes through the inside of a piece of the other. */
final class Crossing {

    private Crossing() {}

    /** @param most pieces that each may have; longer curves are not held against each other */
    static boolean of(List<MeridionalPoint> one, List<MeridionalPoint> other, int most) {
        if (one.size() > most || other.size() > most) {
            return false;
        }
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                if (cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** @param most pieces that it may have; a longer curve is not held against itself */
    static boolean ofItself(List<MeridionalPoint> curve, int most) {
        for (int i = 1; i < curve.size() && curve.size() <= most; i++) {
            for (int j = i + 2; j < curve.size(); j++) {
                if (cross(curve.get(i - 1), curve.get(i), curve.get(j - 1), curve.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean cross(MeridionalPoint a, MeridionalPoint b, MeridionalPoint c, MeridionalPoint d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    /** Above 0 on one hand of the way from a to b, below 0 on the other, 0 on its line. */
    private static double side(MeridionalPoint a, MeridionalPoint b, MeridionalPoint c) {
        return Math.signum((b.x() - a.x()) * (c.r() - a.r()) - (b.r() - a.r()) * (c.x() - a.x()));
    }
}
