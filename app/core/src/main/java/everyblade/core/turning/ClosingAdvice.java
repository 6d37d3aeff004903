package everyblade.core.turning;

import everyblade.spi.Port;
import everyblade.spi.View;
import java.util.Optional;

/** Warnings about what is open, out or inside, so that closing up asks for all of it. */
final class ClosingAdvice {

    private ClosingAdvice() {}

    /** Nobody gets in through a port that is shut, so one that is not open was forgotten to be said. */
    static Optional<String> onView(Situation now, View view) {
        return view.port()
                .flatMap(now.engine().model()::port)
                .map(Port::id)
                .filter(port -> !now.ledger().openings().containsKey(port))
                .map(port -> "port " + port + " was not said to be open; say open " + port
                        + " when it was opened, so that it is asked for when closing up");
    }
}
