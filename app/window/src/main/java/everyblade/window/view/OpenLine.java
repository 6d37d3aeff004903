package everyblade.window.view;

import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A line of the closing list as the window shows it.
 *
 * @param kind of thing, in a word or two
 * @param what is open, with its place, the entry that opened it and who made that
 * @param toDo what closes it; empty of what is only told
 * @param cell where it is on the map, the first one of many; empty if it is nowhere there
 * @param entry how the entry begins that closes it; empty if no entry alone does
 */
public record OpenLine(String kind, String what, String toDo, Optional<CellAt> cell, String entry) {

    /** All that is open, what can do most harm first; then what is only told, and what was accepted as not seen. */
    public static List<OpenLine> of(JobState state, Words words) {
        ClosingList list = state.closing();
        List<OpenLine> lines = new ArrayList<>();
        for (OpenItem item :
                Stream.concat(list.items().stream(), list.told().stream()).toList()) {
            lines.add(new OpenLine(
                    words.say(item.kind()),
                    words.say(item.line()),
                    item.toDo().map(words::say).orElse(""),
                    cell(state, item),
                    item.entry()));
        }
        for (ClosingList.Accepted accepted : list.accepted()) {
            lines.add(new OpenLine(
                    words.say("closing.accepted"),
                    words.say(accepted.line()),
                    "",
                    Notes.cell(state, accepted.entry()),
                    ""));
        }
        return lines;
    }

    /** Where an open thing is on the map; empty if it is nowhere there. */
    static Optional<CellAt> cell(JobState state, OpenItem item) {
        return item.gap()
                .map(Left::first)
                .or(() -> item.place().flatMap(place -> Notes.cell(state, place)))
                .or(() -> item.opened().flatMap(entry -> Notes.cell(state, entry.number())));
    }

    /** Whether it is open, and not only told. */
    public boolean open() {
        return !toDo.isEmpty();
    }
}
