package everyblade.window.view;

import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.closing.Risk;
import everyblade.session.JobState;
import everyblade.session.job.ClosingText;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A line of what a reviewer should look at.
 *
 * @param risk what it puts at risk
 * @param text what it is
 * @param cell where it is on the map, the first one of many; empty if it is nowhere there
 * @param entry the entry that opened it; empty if none did
 */
public record RiskLine(Risk risk, String text, Optional<CellAt> cell, OptionalInt entry) {

    /** All of a record, the worst first; then what was accepted as not seen. Takes as long as finding the gaps. */
    public static List<RiskLine> of(JobState state, Words words) {
        ClosingList list = state.closing();
        List<RiskLine> lines = new ArrayList<>();
        for (OpenItem item : Risk.worstFirst(list)) {
            lines.add(new RiskLine(
                    Risk.of(item.kind()),
                    ClosingText.line(item, words),
                    OpenLine.cell(state, item),
                    item.opened().map(entry -> OptionalInt.of(entry.number())).orElse(OptionalInt.empty())));
        }
        for (ClosingList.Accepted accepted : list.accepted()) {
            lines.add(new RiskLine(
                    Risk.RECORD,
                    ClosingText.accepted(accepted, words),
                    Notes.cell(state, accepted.entry()),
                    OptionalInt.of(accepted.entry())));
        }
        return lines;
    }
}
