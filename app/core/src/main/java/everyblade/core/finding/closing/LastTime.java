package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.growth.Matching;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Remark;
import everyblade.fact.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Findings of the last record of the same engine that are not in this one, at places that were not looked at again: nobody
 * knows what became of them.
 *
 * @param fold of the journal
 * @param coverage of its situation
 * @param last the journal of the last record
 */
record LastTime(Fold fold, Coverage coverage, Fold last) {

    List<OpenItem> items() {
        List<OpenItem> items = new ArrayList<>();
        for (Finding missing : Matching.of(Findings.of(last), Findings.of(fold)).missing()) {
            Optional<RowCoverage> row = coverage.rows().stream()
                    .filter(one -> one.row().id().equals(missing.row().id()))
                    .filter(one -> one.row().count() >= missing.airfoil()
                            && one.zoning()
                                    .equals(last.situation()
                                            .engine()
                                            .zonings()
                                            .get(missing.row().id())))
                    .findFirst();
            row.filter(one -> !lookedAt(one, missing)).ifPresent(one -> items.add(item(one, missing)));
        }
        return items;
    }

    /** Whether all of where it lay was seen, as far as any view shows it at all. */
    private static boolean lookedAt(RowCoverage row, Finding then) {
        List<Integer> zones = IntStream.range(0, row.zoning().size())
                .filter(zone -> then.zones().contains(zone))
                .boxed()
                .toList();
        boolean anySeen =
                zones.stream().anyMatch(zone -> row.state(then.airfoil(), zone).isDone());
        return anySeen
                && zones.stream()
                        .allMatch(zone -> row.state(then.airfoil(), zone).isDone()
                                || row.why(then.airfoil(), zone)
                                        .filter(Why.NO_ACCESS::equals)
                                        .isPresent());
    }

    private OpenItem item(RowCoverage row, Finding then) {
        Where where = new Where.OnAirfoil(
                row.row().name(),
                row.row().id(),
                row.row().kind(),
                then.airfoil(),
                ZonePhrase.of(row.zoning(), then.zones()));
        boolean accepted = IntStream.range(0, row.zoning().size())
                .filter(zone -> then.zones().contains(zone))
                .allMatch(zone -> row.state(then.airfoil(), zone).isDone()
                        || row.remarked(Remark.What.ACCEPTED, then.airfoil(), zone));
        Fact what = new FindingProblem.NotLookedAgain(
                then.kind(),
                then.entry(),
                last.entries().get(then.entry() - 1).at().toString().substring(0, 10),
                accepted);
        return accepted
                ? OpenItem.told(Kind.FINDING, Optional.empty(), what, Optional.of(where))
                : new OpenItem(
                        Kind.FINDING, Optional.empty(), what, Optional.of(where), ToDo.Look.LOOK_THERE_AGAIN, "");
    }
}
