package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Ledger;
import everyblade.core.turning.Logged;
import everyblade.spi.Port;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
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
                    last(Entry.In.class),
                    "the scope tip is still among the blades",
                    lastView().map(view -> "view " + view).orElse(""),
                    "draw it out, then say: clear",
                    "clear"));
        }
        ledger.toolsOut()
                .forEach((tool, entry) -> items.add(new OpenItem(
                        Kind.TOOL,
                        Optional.of(entry(entry)),
                        tool + " is out",
                        "",
                        "put it back, then say: tool in " + EntryText.nameToEnd(tool),
                        "tool in " + EntryText.nameToEnd(tool))));
        // What was opened last lies outermost in the order of shutting: inner plug, plate, cover.
        List<String> openings = new ArrayList<>(ledger.openings().keySet());
        Collections.reverse(openings);
        for (String thing : openings) {
            String shut = "shut " + EntryText.name(thing) + " ";
            items.add(new OpenItem(
                    Kind.OPENING,
                    Optional.of(entry(ledger.openings().get(thing))),
                    name(thing) + " is open",
                    where(thing),
                    "shut it, then say: " + shut + "with what was torqued, sealed and seen by whom",
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

    private String name(String thing) {
        return port(thing).map(port -> port.name() + " (" + thing + ")").orElse(thing);
    }

    private String where(String thing) {
        return port(thing)
                .filter(port -> port.clock().isPresent())
                .map(port -> String.format(
                        Locale.ROOT, "at %.0f° on the clock", port.clock().getAsDouble()))
                .orElse("");
    }
}
