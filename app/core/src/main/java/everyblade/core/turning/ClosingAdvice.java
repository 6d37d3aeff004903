package everyblade.core.turning;

import everyblade.core.entry.NearestWord;
import everyblade.spi.EngineModel;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.View;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Warnings about what is open, out or inside, so that closing up asks for all of it. */
final class ClosingAdvice {

    private ClosingAdvice() {}

    /** A tool that is out, and was not said to be back. */
    static Optional<EntryNote> onToolOut(Situation now, String tool) {
        return Optional.ofNullable(now.ledger().toolsOut().get(tool))
                .map(before -> new EntryNote.OutAlready(tool, before));
    }

    /** Nobody gets in through a port that is shut, so one that is not open was forgotten to be said. */
    static Optional<EntryNote> onView(Situation now, View view) {
        return view.port()
                .flatMap(now.engine().model()::port)
                .map(Port::id)
                .filter(port -> !now.ledger().openings().containsKey(port))
                .map(EntryNote.PortNotOpen::new);
    }

    /** A thing that is open already, or that looks like an id and is none. */
    static Optional<EntryNote> onOpen(Situation now, String thing) {
        Integer before = now.ledger().openings().get(thing);
        if (before != null) {
            return Optional.of(new EntryNote.OpenAlready(thing, before));
        }
        Set<String> ids = idsToOpen(now.engine().model());
        if (ids.contains(thing) || thing.contains(" ")) {
            return Optional.empty();
        }
        Optional<String> meant = NearestWord.to(thing, ids);
        if (meant.isEmpty() && !looksLikeAnId(thing)) {
            return Optional.empty();
        }
        return Optional.of(new EntryNote.UnknownThing(thing, meant));
    }

    /** Ports, panels among them, and the pads whose covers come off. */
    private static Set<String> idsToOpen(EngineModel model) {
        return Stream.concat(
                        model.ports().stream().map(Port::id),
                        model.spools().stream()
                                .flatMap(spool -> spool.pads().stream())
                                .map(Pad::id))
                .collect(Collectors.toSet());
    }

    /** People say "cowl" or "lid"; a name with a number in it comes from a drawing or a model. */
    private static boolean looksLikeAnId(String thing) {
        return thing.chars().anyMatch(Character::isDigit);
    }
}
