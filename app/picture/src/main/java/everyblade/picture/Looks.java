package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Remark;
import java.util.ArrayList;
import java.util.List;

/**
 * All that the drawing of one airfoil says: airfoils with equal looks in equal places are drawn alike.
 *
 * @param looks by zone
 * @param damaged zones with a finding
 */
record Looks(List<Look> looks, ZoneSet damaged) {

    static Looks of(RowCoverage coverage, int airfoil) {
        int zones = coverage.zoning().size();
        List<Look> looks = new ArrayList<>(zones);
        long damaged = 0;
        for (int zone = 0; zone < zones; zone++) {
            looks.add(Look.of(coverage, airfoil, zone));
            damaged |= coverage.remarked(Remark.What.FOUND, airfoil, zone) ? 1L << zone : 0;
        }
        return new Looks(looks, new ZoneSet(damaged));
    }
}
