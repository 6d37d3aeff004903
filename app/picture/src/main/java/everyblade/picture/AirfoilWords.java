package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.GapText;
import everyblade.core.turning.Remark;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What an airfoil or one of its cells looks like, told in words. */
final class AirfoilWords {

    private AirfoilWords() {}

    /** Such as {@code blade 14 of c1, tip/pressure/leading: not inspected}. */
    static String of(RowCoverage coverage, int airfoil, int zone) {
        return name(coverage, airfoil) + ", " + coverage.zoning().names().get(zone) + ": "
                + Look.of(coverage, airfoil, zone).words(MapWords.ENGLISH)
                + (coverage.remarked(Remark.What.FOUND, airfoil, zone) ? ", damaged" : "")
                + (coverage.remarked(Remark.What.RECHECK, airfoil, zone) ? ", to be looked at again" : "")
                + (coverage.remarked(Remark.What.ACCEPTED, airfoil, zone) ? ", accepted as not seen" : "");
    }

    /** Such as {@code blade 14 of c1: inspected root; not inspected tip/pressure/leading}. */
    static String of(RowCoverage coverage, int airfoil) {
        Map<Look, ZoneSet> zones = new EnumMap<>(Look.class);
        ZoneSet damaged = ZoneSet.NONE;
        for (int zone = 0; zone < coverage.zoning().size(); zone++) {
            ZoneSet one = new ZoneSet(1L << zone);
            zones.merge(Look.of(coverage, airfoil, zone), one, ZoneSet::union);
            if (coverage.remarked(Remark.What.FOUND, airfoil, zone)) {
                damaged = damaged.union(one);
            }
        }
        List<String> parts = new ArrayList<>();
        zones.forEach((look, set) -> parts.add(
                look.words(MapWords.ENGLISH) + (zones.size() == 1 ? "" : " " + GapText.zones(coverage.zoning(), set))));
        if (!damaged.isEmpty()) {
            parts.add("damaged " + GapText.zones(coverage.zoning(), damaged));
        }
        return name(coverage, airfoil) + ": " + String.join("; ", parts);
    }

    private static String name(RowCoverage coverage, int airfoil) {
        return coverage.row().kind().airfoil() + " " + airfoil + " of "
                + coverage.row().id();
    }
}
