package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.spi.Port;
import everyblade.spi.View;
import java.util.Optional;

/** Warnings about what is open, out or inside, so that closing up asks for all of it. */
final class ClosingAdvice {

    private ClosingAdvice() {}

    /** What there is to say of an entry about what is open or out, in the situation before it. */
    static Optional<String> on(Situation now, Entry entry) {
        if (entry instanceof Entry.Shut shut) {
            return onShut(now, shut.thing().value());
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

    /** No entry says that the scope tip is out, so the way in that it went last may still hold it. */
    private static Optional<String> onShut(Situation now, String thing) {
        return now.seat()
                .map(Seat::view)
                .filter(view -> view.port().filter(thing::equals).isPresent())
                .map(view -> "the scope tip was last at view " + view.id() + " through " + thing
                        + "; if it is still in, take it out first, or void this");
    }
}
