package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Remark;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What an airfoil or one of its cells looks like, told in words. */
record AirfoilWords(RowCoverage coverage, MapWords words) {

    /** Such as {@code blade 14 of c1, tip/pressure/leading: not seen}. */
    String of(int airfoil, int zone) {
        List<String> states = new ArrayList<>();
        states.add(Look.of(coverage, airfoil, zone).words(words));
        add(states, airfoil, zone, Remark.What.FOUND, "cell.damaged");
        add(states, airfoil, zone, Remark.What.RECHECK, "cell.recheck");
        add(states, airfoil, zone, Remark.What.ACCEPTED, "cell.accepted");
        return words.say(
                "cell",
                words.airfoil(coverage.row()),
                airfoil,
                coverage.row().id(),
                words.zone(coverage.zoning().names().get(zone)),
                String.join(", ", states));
    }

    private void add(List<String> states, int airfoil, int zone, Remark.What what, String key) {
        if (coverage.remarked(what, airfoil, zone)) {
            states.add(words.say(key));
        }
    }

    /** Such as {@code blade 14 of c1: seen root; not seen tip/pressure/leading}. */
    String of(int airfoil) {
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
        zones.forEach((look, set) ->
                parts.add(look.words(words) + (zones.size() == 1 ? "" : " " + words.zones(coverage.zoning(), set))));
        if (!damaged.isEmpty()) {
            parts.add(words.say("cell.damaged") + " " + words.zones(coverage.zoning(), damaged));
        }
        return words.say(
                "airfoil",
                words.airfoil(coverage.row()),
                airfoil,
                coverage.row().id(),
                String.join("; ", parts));
    }
}
