package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * All that the drawing of one airfoil says: airfoils with equal looks in equal places are drawn alike.
 *
 * @param looks by zone
 * @param begun zones that are not seen, but some of whose surface is
 */
record PictureLooks(List<Look> looks, BitSet begun) {

    static PictureLooks of(RowCoverage coverage, Remarked stated, int airfoil) {
        int zones = coverage.zoning().size();
        List<Look> looks = new ArrayList<>(zones);
        BitSet begun = new BitSet(zones);
        for (int zone = 0; zone < zones; zone++) {
            Look look = Look.of(coverage, airfoil, zone, stated.has(airfoil, zone));
            looks.add(look);
            begun.set(zone, isBegun(coverage, look, airfoil, zone));
        }
        return new PictureLooks(looks, begun);
    }

    private static boolean isBegun(RowCoverage coverage, Look look, int airfoil, int zone) {
        return look == Look.UNSEEN
                && coverage.basis() == Basis.COMPUTED
                && coverage.areas(airfoil, zone).seen() > 0;
    }

    /** Whether an airfoil looks so; asked of thousands, of which few have changed. */
    boolean holdFor(RowCoverage coverage, Remarked stated, int airfoil) {
        if (coverage.zoning().size() != looks.size()) {
            return false;
        }
        for (int zone = 0; zone < looks.size(); zone++) {
            Look look = Look.of(coverage, airfoil, zone, stated.has(airfoil, zone));
            if (look != looks.get(zone) || isBegun(coverage, look, airfoil, zone) != begun.get(zone)) {
                return false;
            }
        }
        return true;
    }
}
