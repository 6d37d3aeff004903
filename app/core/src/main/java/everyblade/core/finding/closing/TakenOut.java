package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.gap.GapText;
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

    /** What weighs enough to be asked for when it is taken out. */
    private enum Weighty {
        FINDING("a finding"),
        IDENTIFICATION("an identification"),
        SLIP("a slip"),
        OPENING("something opened"),
        TOOL("a tool that was out"),
        LOST("a thing that was lost"),
        QUESTION("a question");

        private final String words;

        Weighty(String words) {
            this.words = words;
        }

        static Optional<Weighty> of(Entry entry) {
            if (entry instanceof Entry.Find) {
                return Optional.of(FINDING);
            }
            if (entry instanceof Entry.Datum || entry instanceof Entry.Here || entry instanceof Entry.Round) {
                return Optional.of(IDENTIFICATION);
            }
            if (entry instanceof Entry.Open) {
                return Optional.of(OPENING);
            }
            if (entry instanceof Entry.Recheck || entry instanceof Entry.Refer || entry instanceof Entry.Again) {
                return Optional.of(QUESTION);
            }
            return entry instanceof Entry.ToolOut
                    ? Optional.of(TOOL)
                    : entry instanceof Entry.Lost
                            ? Optional.of(LOST)
                            : entry instanceof Entry.Slip ? Optional.of(SLIP) : Optional.empty();
        }
    }

    List<OpenItem> items() {
        Answered answered = new Answered(fold);
        List<OpenItem> items = new ArrayList<>();
        Map<Integer, CountError> lost = lostCounts();
        for (Logged logged : fold.entries()) {
            if (logged.entry() instanceof Entry.Void struck && !fold.isVoid(logged.number())) {
                Logged gone = fold.entries().get(struck.entry().value() - 1);
                if (lost.containsKey(logged.number())) {
                    items.add(item(answered, logged, lostCount(gone, lost.get(logged.number()), struck.reason())));
                } else if (fold.isVoid(gone.number())) {
                    Weighty.of(gone.entry())
                            .filter(what -> !saidAnew(logged, gone.entry(), what))
                            .ifPresent(
                                    what -> items.add(item(answered, logged, told(what.words, gone, struck.reason()))));
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

    /** Whether what counts next after a void is of the same sort: then it was a slip of the tongue, and mended. */
    private boolean saidAnew(Logged strike, Entry gone, Weighty what) {
        return fold.entries().stream()
                .skip(strike.number())
                .filter(later -> !fold.isVoid(later.number()) && !(later.entry() instanceof Entry.Void))
                .findFirst()
                .map(Logged::entry)
                .filter(later -> Weighty.of(later).filter(what::equals).isPresent())
                .filter(later -> !(gone instanceof Entry.Find one) || isOneOf(one, (Entry.Find) later))
                .isPresent();
    }

    /** Who mends the kind of a finding leaves the airfoil, and the other way round; else it is another finding. */
    private static boolean isOneOf(Entry.Find gone, Entry.Find later) {
        return gone.kind() == later.kind()
                || gone.airfoil().value().equals(later.airfoil().value());
    }

    private static OpenItem item(Answered answered, Logged strike, String what) {
        return answered.item(
                Kind.VOIDED, strike, what, "", "say it anew if it was so, or say who agreed that it was not");
    }

    private static String told(String what, Logged gone, String reason) {
        return what + ", entry " + gone.number() + ", " + gone.text().strip() + ", was taken out, because " + reason;
    }

    private String lostCount(Logged gone, CountError error, String reason) {
        String airfoil =
                fold.situation().engine().rows().get(error.row()).kind().airfoil();
        boolean showed = gone.number() == error.entry();
        return told(
                (showed ? "what showed a lost count" : "what a lost count came of") + " (by about "
                        + error.airfoils() + " " + airfoil + (error.airfoils() == 1 ? "" : "s") + ", between entries "
                        + error.since() + " and " + error.entry() + ")",
                gone,
                reason);
    }

    /** The lost counts that voids took out of the record, by the void that did. Cost: as of entering the journal again. */
    private Map<Integer, CountError> lostCounts() {
        Map<Integer, CountError> gone = new HashMap<>();
        boolean any = fold.entries().stream().anyMatch(logged -> logged.entry() instanceof Entry.Void);
        if (!any) {
            return gone;
        }
        try {
            Fold then = Fold.start(fold.situation().engine());
            for (Logged logged : fold.entries()) {
                Fold after = then.with(logged);
                if (logged.entry() instanceof Entry.Void && !fold.isVoid(logged.number())) {
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
                .filter(logged -> logged.entry() instanceof Entry.Ask ask
                        && ask.row().value().equals(id)
                        && !fold.isVoid(logged.number()))
                .reduce((earlier, later) -> later)
                .filter(ask -> !left.isEmpty())
                .map(ask -> answered.item(
                        Kind.NARROWED,
                        ask,
                        (zones.isEmpty()
                                        ? "the task asks for nothing of it, no longer for "
                                        : "the task asks only for " + GapText.zones(zoning, zones) + ", no longer for ")
                                + GapText.zones(zoning, left) + ", as " + ask.by() + " said "
                                + EntryTime.told(ask.at()),
                        row.name() + " (" + id + ")",
                        "say: ask " + id + " all; or say who ordered it so"));
    }
}
