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
            damaged |= isDamaged(coverage, airfoil, zone) ? 1L << zone : 0;
        }
        return new Looks(looks, new ZoneSet(damaged));
    }

    /** Whether an airfoil looks so; asked of thousands, of which few have changed. */
    boolean holdFor(RowCoverage coverage, int airfoil) {
        if (coverage.zoning().size() != looks.size()) {
            return false;
        }
        for (int zone = 0; zone < looks.size(); zone++) {
            if (Look.of(coverage, airfoil, zone) != looks.get(zone)
                    || isDamaged(coverage, airfoil, zone) != damaged.contains(zone)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDamaged(RowCoverage coverage, int airfoil, int zone) {
        return coverage.remarked(Remark.What.FOUND, airfoil, zone);
    }
}
