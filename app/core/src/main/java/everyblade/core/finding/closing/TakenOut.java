package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.ZoneSet;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.gap.GapText;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Ledger;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was taken out of the record or of the task without a word why: a finding, an identification, an opening or a tool
 * that was void and not said anew, and parts of a row that are no longer asked for.
 *
 * @param fold of the journal
 */
record TakenOut(Fold fold) {

    /** What weighs enough to be asked for when it is taken out. */
    private enum Weighty {
        FINDING,
        IDENTIFICATION,
        OPENING,
        TOOL;

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
            return entry instanceof Entry.ToolOut || entry instanceof Entry.Lost ? Optional.of(TOOL) : Optional.empty();
        }
    }

    List<OpenItem> items() {
        List<OpenItem> items = new ArrayList<>();
        for (Logged logged : fold.entries()) {
            if (logged.entry() instanceof Entry.Void struck && awaits(logged)) {
                Logged gone = fold.entries().get(struck.entry().value() - 1);
                if (fold.isVoid(gone.number())) {
                    Weighty.of(gone.entry())
                            .filter(what -> !saidAnew(logged, what))
                            .ifPresent(what -> items.add(voided(logged, gone, struck.reason())));
                }
            }
        }
        fold.situation()
                .ledger()
                .asked()
                .forEach((row, zones) -> narrowed(row, zones).ifPresent(items::add));
        return items;
    }

    private boolean awaits(Logged logged) {
        Ledger ledger = fold.situation().ledger();
        return !fold.isVoid(logged.number()) && !ledger.outcomes().containsKey(logged.number());
    }

    /** Whether what counts next after a void is of the same sort: then it was a slip of the tongue, and mended. */
    private boolean saidAnew(Logged strike, Weighty what) {
        return fold.entries().stream()
                .skip(strike.number())
                .filter(later -> !fold.isVoid(later.number()) && !(later.entry() instanceof Entry.Void))
                .findFirst()
                .flatMap(later -> Weighty.of(later.entry()))
                .filter(what::equals)
                .isPresent();
    }

    private static OpenItem voided(Logged strike, Logged gone, String reason) {
        String settle = "settle " + strike.number() + " because ";
        return new OpenItem(
                Kind.VOIDED,
                Optional.of(strike),
                "entry " + gone.number() + ", " + gone.text().strip() + ", was taken out, because " + reason,
                "",
                "say it anew if it was so, or say who agreed that it was not: " + settle + "…",
                settle);
    }

    private Optional<OpenItem> narrowed(String id, ZoneSet zones) {
        Row row = fold.situation().engine().rows().get(id);
        var zoning = fold.situation().engine().zonings().get(id);
        ZoneSet left = zoning.all().minus(zones);
        return fold.entries().stream()
                .filter(logged -> logged.entry() instanceof Entry.Ask ask
                        && ask.row().value().equals(id)
                        && !fold.isVoid(logged.number()))
                .reduce((earlier, later) -> later)
                .filter(ask -> !left.isEmpty() && awaits(ask))
                .map(ask -> {
                    String settle = "settle " + ask.number() + " because ";
                    return new OpenItem(
                            Kind.NARROWED,
                            Optional.of(ask),
                            "the task asks only for " + GapText.zones(zoning, zones) + ", no longer for "
                                    + GapText.zones(zoning, left),
                            row.name() + " (" + id + ")",
                            "say who ordered it so: " + settle + "…; or say: ask " + id + " all",
                            settle);
                });
    }
}
