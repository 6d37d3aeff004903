package everyblade.core.finding.closing;

import everyblade.core.coverage.Why;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.gap.Gap;
import everyblade.core.gap.GapText;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is not seen: gaps, and counts that were lost and left cells in doubt.
 *
 * @param fold of the journal
 * @param gaps of its coverage
 */
record OpenSeeing(Fold fold, List<Gap> gaps) {

    List<OpenItem> items() {
        List<OpenItem> items = new ArrayList<>();
        for (CountError error : fold.situation().countErrors()) {
            if (error.lost() && !error.unlogged() && leavesDoubt(error)) {
                items.add(new OpenItem(
                        Kind.COUNT,
                        Optional.of(fold.entries().get(error.entry() - 1)),
                        String.format(
                                Locale.ROOT,
                                "the count was lost between entries %d and %d, by about %d %s",
                                error.since(),
                                error.entry(),
                                error.airfoils(),
                                row(error).kind().airfoil() + (error.airfoils() == 1 ? "" : "s")),
                        row(error).name(),
                        "watch again what was watched between",
                        ""));
            }
        }
        for (Gap gap : gaps) {
            items.add(new OpenItem(
                    Kind.GAP,
                    Optional.empty(),
                    GapText.of(gap).replaceFirst("\\.$", ""),
                    "",
                    "see it, or accept it: noaccess ZONE N-M because …",
                    "", // accepting it is not the first thought
                    Optional.of(gap),
                    Optional.empty()));
        }
        return items;
    }

    private Row row(CountError error) {
        return fold.situation().engine().rows().get(error.row());
    }

    /** Whether anything on the same shaft is still only maybe seen because a count was lost. */
    private boolean leavesDoubt(CountError error) {
        Engine engine = fold.situation().engine();
        return gaps.stream()
                .filter(gap -> gap.why() == Why.COUNT_LOST)
                .anyMatch(gap -> gap.row().id().equals(error.row())
                        || engine.spool(gap.row()).isPresent()
                                && engine.spool(gap.row()).equals(engine.spool(row(error))));
    }
}
