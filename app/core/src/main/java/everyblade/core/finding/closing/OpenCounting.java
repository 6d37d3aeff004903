package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Stated;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
                        "say why so much, or identify an airfoil and look again",
                        (first, all) -> told(first, wide.get(first), all)));
        for (CountError error : fold.situation().countErrors()) {
            if (!error.lost() && Math.abs(error.degrees()) >= error.pitch() / 2) {
                items.add(answered.item(
                        Kind.COUNT,
                        fold.entries().get(error.entry() - 1),
                        shared(error),
                        row(error).name(),
                        "look again where it was watched between, or say how it is known that nothing was lost"));
            }
        }
        return items;
    }

    private Row row(CountError error) {
        return fold.situation().engine().rows().get(error.row());
    }

    private static String told(Logged first, Row row, List<Logged> all) {
        return String.format(
                Locale.ROOT,
                "± wider than half of what lies between two %ss in %s: entry %d, %s, is good to ± %s°, and from one %s of"
                        + " %s to the next it is %.1f°; no lost count shows against that",
                row.kind().airfoil(),
                Several.named(all),
                first.number(),
                first.text().strip(),
                Stated.plusMinus(first.entry())
                        .orElseThrow()
                        .stripTrailingZeros()
                        .toPlainString(),
                row.kind().airfoil(),
                row.id(),
                Engine.pitch(row));
    }

    private String shared(CountError error) {
        String airfoil = row(error).kind().airfoil();
        return String.format(
                Locale.ROOT,
                "counted and seen differ by %.1f°, about %d %s, between entries %d and %d, and this was shared out as if"
                        + " nothing was lost, for the stated ± allow for it",
                Math.abs(error.degrees()),
                error.airfoils(),
                airfoil + (error.airfoils() == 1 ? "" : "s"),
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
            if (logged.entry() instanceof Entry.View view) {
                inView = engine.model()
                        .view(view.view().value())
                        .map(seen -> engine.rows().get(seen.row()));
            }
            Optional<Row> of = logged.entry() instanceof Entry.Datum datum
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
