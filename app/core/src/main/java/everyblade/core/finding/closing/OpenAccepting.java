package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.finding.closing.ClosingList.Accepted;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Airfoils;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.fact.Fact;
import everyblade.spi.Row;
import java.util.List;
import java.util.Optional;

/**
 * Acceptances that nobody who was not there can follow: without a reason in words, or with one that is not so.
 *
 * @param fold of the journal
 */
record OpenAccepting(Fold fold) {

    /** All that was accepted as not seen, in the order of the entries. */
    static List<Accepted> accepted(Fold fold, Coverage coverage) {
        return fold.situation().ledger().remarks().stream()
                .filter(remark -> remark.what().says(Remark.What.ACCEPTED))
                .map(remark -> accepted(fold, coverage, remark))
                .filter(accepted -> accepted.against().cells() > 0)
                .toList();
    }

    private static Accepted accepted(Fold fold, Coverage coverage, Remark remark) {
        Engine engine = fold.situation().engine();
        Row row = engine.rows().get(remark.row());
        Where what = new Where.OnAirfoils(
                row.name(), row.id(), Airfoils.of(row, remark.airfoils()), zones(engine, row, remark));
        Logged logged = fold.entries().get(remark.entry() - 1);
        return new Accepted(
                remark.entry(),
                what,
                ((FindingEntry.NoAccess) logged.entry()).reason(),
                logged.by(),
                Acceptance.of(coverage, remark));
    }

    private static Fact zones(Engine engine, Row row, Remark remark) {
        return remark.what() == Remark.What.ACCEPTED_UNSHOWN
                ? Where.Zones.UNSHOWN
                : ZonePhrase.of(engine.zonings().get(row.id()), remark.zones());
    }

    /** The acceptance as a thing that is open, or was answered for; empty if its reason can stand. */
    Optional<OpenItem> doubted(Accepted accepted) {
        Logged logged = fold.entries().get(accepted.entry() - 1);
        ReasonGiven reason = new ReasonGiven(accepted.reason());
        if (!reason.says()) {
            return Optional.of(new OpenItem(
                    Kind.ACCEPTED,
                    Optional.of(logged),
                    new AcceptanceProblem.NoReason(
                            accepted.reason(), accepted.against().told()),
                    Optional.of(accepted.what()),
                    ToDo.Look.ACCEPT_ANEW,
                    "void " + accepted.entry() + " because "));
        }
        return reason.claimsOutOfSight() && accepted.against().givenAway() > 0
                ? Optional.of(new Answered(fold)
                        .item(
                                Kind.ACCEPTED,
                                logged,
                                new AcceptanceProblem.NotSo(
                                        accepted.reason(), accepted.against().told()),
                                Optional.of(accepted.what()),
                                ToDo.Advice.LOOK_THERE))
                : Optional.empty();
    }
}
