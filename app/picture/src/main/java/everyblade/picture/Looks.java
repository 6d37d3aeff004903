package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import java.util.ArrayList;
import java.util.List;

/**
 * All that the drawing of one airfoil says: airfoils with equal looks in equal places are drawn alike.
 *
 * @param looks by zone
 * @param shares by zone what of its surface is seen, where it is drawn in part; 0 elsewhere
 * @param damaged zones with a finding
 */
record Looks(List<Look> looks, List<Double> shares, ZoneSet damaged) {

    static Looks of(RowCoverage coverage, Remarked remarked, int airfoil) {
        int zones = coverage.zoning().size();
        List<Look> looks = new ArrayList<>(zones);
        List<Double> shares = new ArrayList<>(zones);
        long damaged = 0;
        for (int zone = 0; zone < zones; zone++) {
            Look look = Look.of(coverage, airfoil, zone, remarked.isStated(airfoil, zone));
            looks.add(look);
            shares.add(share(look, coverage, airfoil, zone));
            damaged |= remarked.isDamaged(airfoil, zone) ? 1L << zone : 0;
        }
        return new Looks(looks, shares, new ZoneSet(damaged));
    }

    /** Whether an airfoil looks so; asked of thousands, of which few have changed. */
    boolean holdFor(RowCoverage coverage, Remarked remarked, int airfoil) {
        if (coverage.zoning().size() != looks.size()) {
            return false;
        }
        for (int zone = 0; zone < looks.size(); zone++) {
            Look look = Look.of(coverage, airfoil, zone, remarked.isStated(airfoil, zone));
            if (look != looks.get(zone)
                    || share(look, coverage, airfoil, zone) != shares.get(zone)
                    || remarked.isDamaged(airfoil, zone) != damaged.contains(zone)) {
                return false;
            }
        }
        return true;
    }

    private static double share(Look look, RowCoverage coverage, int airfoil, int zone) {
        return look.pattern() == Pattern.FILLED_UP
                ? coverage.areas(airfoil, zone).seen()
                : 0;
    }
}
