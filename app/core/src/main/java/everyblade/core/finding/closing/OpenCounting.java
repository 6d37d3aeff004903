package everyblade.core.finding.closing;

import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Stated;
import everyblade.core.entry.TurnEntry;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Counts that a wide ± keeps from being found lost: within half of what lies between two airfoils it can be told which one
 * is in view, beyond it not.
 *
 * @param fold of the journal
 */
record OpenCounting(Fold fold) {

    List<OpenItem> items() {
        Answered answered = new Answered(fold);
        List<OpenItem> items = new ArrayList<>();
        Map<Logged, Row> wide = wide();
        items.addAll(new Several(answered)
                .items(
                        Kind.COUNT,
                        List.copyOf(wide.keySet()),
                        ToDo.Advice.IDENTIFY_AGAIN,
                        (first, all) -> told(first, wide.get(first), all)));
        for (CountError error : fold.situation().countErrors()) {
            if (!error.lost() && Math.abs(error.degrees()) >= error.pitch() / 2) {
                items.add(answered.item(
                        Kind.COUNT,
                        fold.entries().get(error.entry() - 1),
                        shared(error),
                        Optional.of(new Where.Named(row(error).name())),
                        ToDo.Advice.LOOK_AGAIN_BETWEEN));
            }
        }
        return items;
    }

    private Row row(CountError error) {
        return fold.situation().engine().rows().get(error.row());
    }

    private static CountProblem told(Logged first, Row row, List<Logged> all) {
        return new CountProblem.TooUnsure(
                EntryNumbers.of(all),
                EntryLine.of(first),
                Stated.plusMinus(first.entry()).orElseThrow(),
                row.kind(),
                row.id(),
                Rounded.tenths(Engine.pitch(row)));
    }

    private CountProblem shared(CountError error) {
        return new CountProblem.SharedOut(
                Rounded.tenths(Math.abs(error.degrees())),
                error.airfoils(),
                row(error).kind(),
                error.since(),
                error.entry());
    }

    /** Entries that state a ± of more than half a pitch, and the row in view of which that is said. */
    private Map<Logged, Row> wide() {
        Map<Logged, Row> wide = new LinkedHashMap<>();
        Optional<Row> inView = Optional.empty();
        Engine engine = fold.situation().engine();
        for (Logged logged : fold.entries()) {
            if (fold.isVoid(logged.number())) {
                continue;
            }
            if (logged.entry() instanceof LookEntry.View view) {
                inView = engine.model()
                        .view(view.view().value())
                        .map(seen -> engine.rows().get(seen.row()));
            }
            Optional<Row> of = logged.entry() instanceof TurnEntry.Datum datum
                    ? Optional.ofNullable(engine.rows().get(datum.row().value()))
                    : inView;
            of.filter(row -> Stated.plusMinus(logged.entry())
                            .filter(plusMinus -> plusMinus.doubleValue() > Engine.pitch(row) / 2)
                            .isPresent())
                    .ifPresent(row -> wide.put(logged, row));
        }
        return wide;
    }
}
