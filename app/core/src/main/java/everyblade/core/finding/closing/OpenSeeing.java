package everyblade.core.finding.closing;

import everyblade.core.coverage.Why;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.gap.Gap;
import everyblade.core.gap.ToldGap;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
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
                        new CountProblem.Lost(error.airfoils(), row(error).kind(), error.since(), error.entry()),
                        Optional.of(new Where.Named(row(error).name())),
                        ToDo.Look.WATCH_AGAIN,
                        ""));
            }
        }
        for (Gap gap : gaps) {
            items.add(new OpenItem(
                    Kind.GAP,
                    Optional.empty(),
                    ToldGap.of(gap),
                    Optional.empty(),
                    Optional.of(ToDo.Look.SEE_OR_ACCEPT),
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
