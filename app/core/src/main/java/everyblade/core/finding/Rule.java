package everyblade.core.finding;

import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import java.util.List;
import java.util.Set;

/**
 * One rule of the limits: on what it is, and step by step what it allows. A finding is judged by every rule that is on
 * any of its zones.
 *
 * @param id for people to refer to
 * @param rows ids of the rows that it is on; empty for all
 * @param kinds what it is on; empty for all
 * @param zones in the words of entries, united; empty for all
 * @param bothFaces whether a finding on one side is within only if the other face of the place was seen
 * @param onlyWhile ids of rows: it allows anything only while all findings of these are within the limits
 * @param steps from the mildest; without any nothing of the kind is allowed
 * @param beyond the outcome past the last step, as the manual words it
 */
public record Rule(
        String id,
        List<String> rows,
        Set<Kind> kinds,
        List<String> zones,
        boolean bothFaces,
        List<String> onlyWhile,
        List<Step> steps,
        String beyond) {

    public Rule {
        rows = List.copyOf(rows);
        kinds = Set.copyOf(kinds);
        zones = List.copyOf(zones);
        onlyWhile = List.copyOf(onlyWhile);
        steps = List.copyOf(steps);
    }

    /** Whether the rule is on such a finding. */
    boolean isOn(Finding finding, Zoning zoning) {
        return (rows.isEmpty() || rows.contains(finding.row().id()))
                && (kinds.isEmpty() || kinds.contains(finding.kind()))
                && !finding.zones().intersection(zonesOf(zoning)).isEmpty();
    }

    /** The zones of a row that the rule is on; a word that the row does not know stands for none. */
    ZoneSet zonesOf(Zoning zoning) {
        if (zones.isEmpty()) {
            return zoning.all();
        }
        ZoneSet united = ZoneSet.NONE;
        for (String word : zones) {
            try {
                united = united.union(ZoneWords.zone(zoning, new Said<>(word, 1)));
            } catch (Refusal notOfThisRow) {
                // a rule for several rows may name bands that only some of them have
            }
        }
        return united;
    }
}
