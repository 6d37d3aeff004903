package everyblade.core.finding.closing;

import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Repeat;
import everyblade.core.finding.Verdict;
import everyblade.core.finding.closing.FindingProblem.CountLost;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.fact.Fact;
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
            Optional<Fact> why = why(judgement);
            Optional<CountLost> doubt = doubt(finding);
            if (why.isPresent() || doubt.isPresent()) {
                items.add(item(
                        finding,
                        new FindingProblem.Undecided(finding.kind(), why, doubt),
                        judgement
                                .filter(known -> limited && known.verdict() == Verdict.BEYOND)
                                .isPresent()));
            }
            judgement.ifPresent(known -> known.again().stream()
                    .filter(repeat -> !entered(finding, repeat))
                    .forEach(repeat -> items.add(interval(finding, repeat))));
        }
        return items;
    }

    private Optional<Fact> why(Optional<Judgement> judgement) {
        if (!limited || judgement.isEmpty()) {
            return Optional.of(FindingProblem.Unjudged.NO_LIMITS);
        }
        Verdict verdict = judgement.get().verdict();
        return switch (verdict) {
            case WITHIN -> Optional.empty();
            case BEYOND -> Optional.of(new FindingProblem.Unsaid(verdict));
            default -> Optional.of(verdict);
        };
    }

    /** A finding that was entered while the count was lost may be on another airfoil. */
    private Optional<CountLost> doubt(Finding finding) {
        Engine engine = fold.situation().engine();
        return fold.situation().countErrors().stream()
                .filter(CountError::lost)
                .filter(error -> error.since() < finding.entry() && finding.entry() < error.entry())
                .filter(error -> error.row().equals(finding.row().id())
                        || engine.spool(finding.row()).isPresent()
                                && engine.spool(finding.row())
                                        .equals(engine.spool(engine.rows().get(error.row()))))
                .map(error -> new CountLost(finding.row().kind()))
                .findFirst();
    }

    private OpenItem item(Finding finding, Fact what, boolean beyond) {
        String settle = "settle " + finding.entry() + " because ";
        return new OpenItem(
                Kind.FINDING,
                Optional.of(fold.entries().get(finding.entry() - 1)),
                what,
                where(finding),
                new ToDo.Decide(beyond, settle.strip()),
                settle);
    }

    private OpenItem interval(Finding finding, Repeat repeat) {
        String again = "again in " + repeat.text();
        return new OpenItem(
                Kind.INTERVAL,
                Optional.of(fold.entries().get(finding.entry() - 1)),
                new FindingProblem.RepeatNotEntered(repeat),
                where(finding),
                new ToDo.Enter(again),
                again);
    }

    private Optional<Where> where(Finding finding) {
        return Optional.of(new Where.OnAirfoil(
                finding.row().name(),
                finding.row().id(),
                finding.row().kind(),
                finding.airfoil(),
                ZonePhrase.of(
                        fold.situation().engine().zonings().get(finding.row().id()), finding.zones())));
    }

    /** Whether an interval as short was entered after the finding, settled or not, or before it and is still open. */
    private boolean entered(Finding finding, Repeat repeat) {
        Set<Integer> open = fold.situation().ledger().questions().keySet();
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .filter(logged -> logged.number() > finding.entry() || open.contains(logged.number()))
                .anyMatch(logged -> logged.entry() instanceof FindingEntry.Again again
                        && repeat.metBy(again.number().value(), again.interval()));
    }
}
