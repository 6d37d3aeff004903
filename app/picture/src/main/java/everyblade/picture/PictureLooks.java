package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import java.util.ArrayList;
import java.util.List;

/**
 * All that the drawing of one airfoil says: airfoils with equal looks in equal places are drawn alike.
 *
 * @param looks by zone
 */
record PictureLooks(List<Look> looks) {

    static PictureLooks of(RowCoverage coverage, Remarked stated, int airfoil) {
        int zones = coverage.zoning().size();
        List<Look> looks = new ArrayList<>(zones);
        for (int zone = 0; zone < zones; zone++) {
            looks.add(Look.of(coverage, airfoil, zone, stated.has(airfoil, zone)));
        }
        return new PictureLooks(looks);
    }

    /** Whether an airfoil looks so; asked of thousands, of which few have changed. */
    boolean holdFor(RowCoverage coverage, Remarked stated, int airfoil) {
        if (coverage.zoning().size() != looks.size()) {
            return false;
        }
        for (int zone = 0; zone < looks.size(); zone++) {
            if (Look.of(coverage, airfoil, zone, stated.has(airfoil, zone)) != looks.get(zone)) {
                return false;
            }
        }
        return true;
    }
}
