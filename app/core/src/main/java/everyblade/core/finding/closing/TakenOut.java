package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.closing.Removal.Weighty;
import everyblade.core.turning.CountError;
import everyblade.core.turning.EntryTime;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was taken out of the record or of the task: what weighs that was void and not said anew, whatever showed a lost
 * count, and parts of a row that are no longer asked for.
 *
 * @param fold of the journal
 */
record TakenOut(Fold fold) {

    List<OpenItem> items() {
        Answered answered = new Answered(fold);
        List<OpenItem> items = new ArrayList<>();
        Map<Integer, CountError> lost = lostCounts();
        for (Logged logged : fold.entries()) {
            if (logged.entry() instanceof RecordEntry.Void struck && !fold.isVoid(logged.number())) {
                Logged gone = fold.entries().get(struck.entry().value() - 1);
                if (lost.containsKey(logged.number())) {
                    items.add(item(answered, logged, lostCount(gone, lost.get(logged.number()), struck.reason())));
                } else if (fold.isVoid(gone.number())) {
                    weighty(gone.entry())
                            .filter(what -> !saidAnew(logged, gone.entry(), what))
                            .ifPresent(what -> items.add(item(
                                    answered, logged, new Removal.Struck(what, EntryLine.of(gone), struck.reason()))));
                }
            }
        }
        fold.situation()
                .ledger()
                .asked()
                .forEach((row, zones) -> narrowed(answered, row, zones).ifPresent(items::add));
        return items;
    }

    /** How many of these things are voids that took out something that weighs. */
    static int voided(List<OpenItem> items) {
        return (int) items.stream().filter(item -> item.kind() == Kind.VOIDED).count();
    }

    private static Optional<Weighty> weighty(Entry entry) {
        return EntryKind.of(entry).weight().map(weight -> switch (weight) {
            case FINDING -> Weighty.FINDING;
            case IDENTIFICATION -> Weighty.IDENTIFICATION;
            case SLIP -> Weighty.SLIP;
            case OPENING -> Weighty.OPENING;
            case TOOL -> Weighty.TOOL;
            case LOST -> Weighty.LOST;
            case QUESTION -> Weighty.QUESTION;
        });
    }

    /** Whether what counts next after a void is of the same sort: then it was a slip of the tongue, and mended. */
    private boolean saidAnew(Logged strike, Entry gone, Weighty what) {
        return fold.entries().stream()
                .skip(strike.number())
                .filter(later -> !fold.isVoid(later.number()) && !(later.entry() instanceof RecordEntry.Void))
                .findFirst()
                .map(Logged::entry)
                .filter(later -> weighty(later).filter(what::equals).isPresent())
                .filter(later -> !(gone instanceof FindingEntry.Find one) || isOneOf(one, (FindingEntry.Find) later))
                .isPresent();
    }

    /** Who mends the kind of a finding leaves the airfoil, and the other way round; else it is another finding. */
    private static boolean isOneOf(FindingEntry.Find gone, FindingEntry.Find later) {
        return gone.kind() == later.kind()
                || gone.airfoil().value().equals(later.airfoil().value());
    }

    private static OpenItem item(Answered answered, Logged strike, Removal what) {
        return answered.item(Kind.VOIDED, strike, what, Optional.empty(), ToDo.Advice.SAY_ANEW);
    }

    private Removal lostCount(Logged gone, CountError error, String reason) {
        return new Removal.LostCount(
                gone.number() == error.entry(),
                error.airfoils(),
                fold.situation().engine().rows().get(error.row()).kind(),
                error.since(),
                error.entry(),
                EntryLine.of(gone),
                reason);
    }

    /** The lost counts that voids took out of the record, by the void that did. Cost: as of entering the journal again. */
    private Map<Integer, CountError> lostCounts() {
        Map<Integer, CountError> gone = new HashMap<>();
        boolean any = fold.entries().stream().anyMatch(logged -> logged.entry() instanceof RecordEntry.Void);
        if (!any) {
            return gone;
        }
        try {
            Fold then = Fold.start(fold.situation().engine());
            for (Logged logged : fold.entries()) {
                Fold after = then.with(logged);
                if (logged.entry() instanceof RecordEntry.Void && !fold.isVoid(logged.number())) {
                    then.situation().countErrors().stream()
                            .filter(error -> error.lost()
                                    && after.situation().countErrors().stream()
                                            .noneMatch(other -> other.lost() && other.entry() == error.entry()))
                            .findFirst()
                            .ifPresent(error -> gone.put(logged.number(), error));
                }
                then = after;
            }
            return gone;
        } catch (Refusal impossible) {
            throw new IllegalStateException("the journal was folded once, and now it cannot be", impossible);
        }
    }

    private Optional<OpenItem> narrowed(Answered answered, String id, ZoneSet zones) {
        Row row = fold.situation().engine().rows().get(id);
        var zoning = fold.situation().engine().zonings().get(id);
        ZoneSet left = zoning.all().minus(zones);
        return fold.entries().stream()
                .filter(logged -> logged.entry() instanceof FindingEntry.Ask ask
                        && ask.row().value().equals(id)
                        && !fold.isVoid(logged.number()))
                .reduce((earlier, later) -> later)
                .filter(ask -> !left.isEmpty())
                .map(ask -> answered.item(
                        Kind.NARROWED,
                        ask,
                        new Removal.Narrowed(
                                Optional.of(zones)
                                        .filter(some -> !some.isEmpty())
                                        .map(some -> ZonePhrase.of(zoning, some)),
                                ZonePhrase.of(zoning, left),
                                ask.by(),
                                EntryTime.told(ask.at())),
                        Optional.of(new Where.OfRow(row.name(), id)),
                        new ToDo.AskAll("ask " + id + " all")));
    }
}
