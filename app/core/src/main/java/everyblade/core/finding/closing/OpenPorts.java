package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Port;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Ports that were looked through while the record says that they were shut, or says nothing: what was opened and never
 * said is not asked for when closing up. A later {@code open} of the port says that it was open.
 *
 * @param fold of the journal
 */
record OpenPorts(Fold fold) {

    List<OpenItem> items() {
        Map<String, Logged> through = new LinkedHashMap<>();
        Set<String> open = new HashSet<>();
        Set<String> shut = new HashSet<>();
        Optional<String> inUse = Optional.empty();
        for (Logged logged : fold.entries()) {
            Entry entry = logged.entry();
            if (fold.isVoid(logged.number())) {
                continue;
            }
            if (entry instanceof RecordEntry.Open opened) {
                open.add(opened.thing().value());
                through.remove(opened.thing().value());
            } else if (entry instanceof RecordEntry.Shut closed) {
                open.remove(closed.thing().value());
                shut.add(closed.thing().value());
            } else if (entry instanceof LookEntry.View view) {
                inUse = port(view.view().value());
            } else if (entry instanceof LookEntry.Out) {
                inUse = Optional.empty();
            }
            if (looks(entry)) {
                inUse.filter(port -> !open.contains(port)).ifPresent(port -> through.putIfAbsent(port, logged));
            }
        }
        List<OpenItem> items = new ArrayList<>();
        through.forEach((port, since) -> items.add(item(port, since, shut.contains(port))));
        return items;
    }

    private static boolean looks(Entry entry) {
        return entry instanceof LookEntry.View
                || entry instanceof LookEntry.At
                || EntryKind.of(entry).watches();
    }

    private Optional<String> port(String view) {
        return fold.situation().engine().model().view(view).flatMap(View::port);
    }

    private OpenItem item(String port, Logged since, boolean shut) {
        String name =
                fold.situation().engine().model().port(port).map(Port::name).orElse(port);
        String open = "open " + EntryText.name(port);
        return new OpenItem(
                Kind.PORT,
                Optional.of(since),
                new OpeningProblem.LookedThrough(new OpeningProblem.Thing(Optional.of(name), port), shut),
                Optional.empty(),
                new ToDo.SayOpen(open),
                open);
    }
}
