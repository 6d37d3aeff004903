package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.LookEntry;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Ledger;
import everyblade.core.turning.Logged;
import everyblade.spi.Port;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What is open, out or inside: openings, tools, the scope tip.
 *
 * @param fold of the journal
 */
record OpenThings(Fold fold) {

    List<OpenItem> items() {
        Ledger ledger = fold.situation().ledger();
        List<OpenItem> items = new ArrayList<>();
        if (fold.situation().among()) {
            items.add(new OpenItem(
                    Kind.TIP,
                    last(LookEntry.In.class),
                    OpeningProblem.Inside.TIP_AMONG_BLADES,
                    lastView().map(Where.AtView::new),
                    new ToDo.DrawOut("clear"),
                    "clear"));
        }
        ledger.toolsOut()
                .forEach((tool, entry) -> items.add(new OpenItem(
                        Kind.TOOL,
                        Optional.of(entry(entry)),
                        new OpeningProblem.ToolOut(tool),
                        Optional.empty(),
                        new ToDo.PutBack("tool in " + EntryText.nameToEnd(tool)),
                        "tool in " + EntryText.nameToEnd(tool))));
        // What was opened last lies outermost in the order of shutting: inner plug, plate, cover.
        List<String> openings = new ArrayList<>(ledger.openings().keySet());
        Collections.reverse(openings);
        for (String thing : openings) {
            String shut = "shut " + EntryText.name(thing) + " ";
            items.add(new OpenItem(
                    Kind.OPENING,
                    Optional.of(entry(ledger.openings().get(thing))),
                    new OpeningProblem.Open(thing(thing)),
                    where(thing),
                    new ToDo.Shut(shut.strip()),
                    shut));
        }
        return items;
    }

    private Logged entry(int number) {
        return fold.entries().get(number - 1);
    }

    private <E extends Entry> Optional<Logged> last(Class<E> kind) {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()) && kind.isInstance(logged.entry()))
                .reduce((earlier, later) -> later);
    }

    private Optional<String> lastView() {
        return fold.situation().seat().map(seat -> seat.view().id());
    }

    private Optional<Port> port(String thing) {
        return fold.situation().engine().model().port(thing);
    }

    private OpeningProblem.Thing thing(String thing) {
        return new OpeningProblem.Thing(port(thing).map(Port::name), thing);
    }

    private Optional<Where> where(String thing) {
        return port(thing)
                .filter(port -> port.clock().isPresent())
                .map(port -> new Where.AtClock(Math.round(port.clock().getAsDouble())));
    }
}
