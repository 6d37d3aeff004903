package everyblade.core.turning;

import everyblade.core.entry.Entry;
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

    /** What there is to say of an entry about what is open or out, in the situation before it. */
    static Optional<String> on(Situation now, Entry entry) {
        if (entry instanceof Entry.Open open) {
            return onOpen(now, open.thing().value());
        }
        if (entry instanceof Entry.ToolOut out) {
            String tool = out.tool().value();
            return Optional.ofNullable(now.ledger().toolsOut().get(tool))
                    .map(before -> tool + " is out already, since entry " + before
                            + ": void this, or give a second one a name of its own");
        }
        return Optional.empty();
    }

    /** Nobody gets in through a port that is shut, so one that is not open was forgotten to be said. */
    static Optional<String> onView(Situation now, View view) {
        return view.port()
                .flatMap(now.engine().model()::port)
                .map(Port::id)
                .filter(port -> !now.ledger().openings().containsKey(port))
                .map(port -> "port " + port + " was not said to be open; say open " + port
                        + " when it was opened, so that it is asked for when closing up");
    }

    private static Optional<String> onOpen(Situation now, String thing) {
        Integer before = now.ledger().openings().get(thing);
        if (before != null) {
            return Optional.of(thing + " was opened already by entry " + before
                    + ": void this, or give a second one a name of its own");
        }
        Set<String> ids = idsToOpen(now.engine().model());
        if (ids.contains(thing) || thing.contains(" ")) {
            return Optional.empty();
        }
        Optional<String> meant = NearestWord.to(thing, ids);
        if (meant.isEmpty() && !looksLikeAnId(thing)) {
            return Optional.empty();
        }
        return Optional.of(thing + " is no port or cover of this engine model; it is kept under this name: "
                + meant.map(id -> "if " + id + " was meant, void this and say open " + id)
                        .orElse("void this if it was mistyped"));
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
