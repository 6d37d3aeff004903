package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Repeat;
import everyblade.core.finding.Verdict;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.gap.GapText;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Findings of which nobody knows yet what comes of them, and repeat inspections that the limits ask for.
 *
 * @param fold of the journal
 * @param limited whether limits were entered
 * @param judged what they say of each finding
 */
record OpenFindings(Fold fold, boolean limited, List<Judgement> judged) {

    List<OpenItem> items() {
        Map<Integer, Judgement> byEntry = judged.stream()
                .collect(Collectors.toMap(judgement -> judgement.finding().entry(), Function.identity()));
        List<OpenItem> items = new ArrayList<>();
        for (Finding finding : Findings.of(fold)) {
            if (fold.situation().ledger().outcomes().containsKey(finding.entry())) {
                continue;
            }
            Optional<Judgement> judgement = Optional.ofNullable(byEntry.get(finding.entry()));
            String why = why(judgement);
            String doubt = doubt(finding);
            if (!why.isEmpty() || !doubt.isEmpty()) {
                items.add(item(finding, why.isEmpty() || doubt.isEmpty() ? why + doubt : why + "; " + doubt));
            }
            judgement.ifPresent(known -> known.again().stream()
                    .filter(repeat -> !entered(finding, repeat))
                    .forEach(repeat -> items.add(interval(finding, repeat))));
        }
        return items;
    }

    private String why(Optional<Judgement> judgement) {
        if (!limited || judgement.isEmpty()) {
            return "no limits were entered, and nobody said what comes of it";
        }
        Verdict verdict = judgement.get().verdict();
        return switch (verdict) {
            case WITHIN -> "";
            case BEYOND -> verdict.words() + ", and nobody said what comes of it";
            default -> verdict.words();
        };
    }

    /** A finding that was entered while the count was lost may be on another airfoil. */
    private String doubt(Finding finding) {
        Engine engine = fold.situation().engine();
        return fold.situation().countErrors().stream()
                .filter(CountError::lost)
                .filter(error -> error.since() < finding.entry() && finding.entry() < error.entry())
                .filter(error -> error.row().equals(finding.row().id())
                        || engine.spool(finding.row()).isPresent()
                                && engine.spool(finding.row())
                                        .equals(engine.spool(engine.rows().get(error.row()))))
                .map(error -> "the count was lost meanwhile, so it may be on another "
                        + finding.row().kind().airfoil())
                .findFirst()
                .orElse("");
    }

    private OpenItem item(Finding finding, String why) {
        String settle = "settle " + finding.entry() + " because ";
        return new OpenItem(
                Kind.FINDING,
                Optional.of(fold.entries().get(finding.entry() - 1)),
                finding.kind().word() + ": " + why,
                where(finding),
                toDo(why) + "say what comes of it and who decided: " + settle + "…",
                settle);
    }

    private static String toDo(String why) {
        return why.startsWith(Verdict.BEYOND.words())
                ? "put it to whoever decides (refer …), then "
                : "measure or look again, or ";
    }

    private OpenItem interval(Finding finding, Repeat repeat) {
        String again = "again in " + repeat.text();
        return new OpenItem(
                Kind.INTERVAL,
                Optional.of(fold.entries().get(finding.entry() - 1)),
                "the limits ask for a repeat inspection in " + repeat.text() + ", which was not entered",
                where(finding),
                "say: " + again,
                again);
    }

    private String where(Finding finding) {
        return finding.row().name() + " (" + finding.row().id() + "), "
                + finding.row().kind().airfoil() + " " + finding.airfoil() + ", "
                + GapText.zones(
                        fold.situation().engine().zonings().get(finding.row().id()), finding.zones());
    }

    /** Whether an interval as short was entered after the finding, settled or not, or before it and is still open. */
    private boolean entered(Finding finding, Repeat repeat) {
        Set<Integer> open = fold.situation().ledger().questions().keySet();
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .filter(logged -> logged.number() > finding.entry() || open.contains(logged.number()))
                .anyMatch(logged -> logged.entry() instanceof Entry.Again again
                        && repeat.metBy(again.number().value(), again.interval()));
    }
}
