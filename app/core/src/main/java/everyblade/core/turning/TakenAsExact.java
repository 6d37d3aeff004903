package everyblade.core.turning;

import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.util.List;
import java.util.Optional;

/** What nobody stated an error of, and is therefore taken as exact: ignorance must not look like certainty. */
public final class TakenAsExact {

    private TakenAsExact() {}

    /** The rows that turn, are counted, and whose pad has neither play, backlash nor drift; in the model's order. */
    private static List<String> rows(Situation now) {
        return now.engine().model().rows().stream()
                .filter(row -> now.counting(row) && exact(now, row))
                .map(Row::id)
                .toList();
    }

    private static boolean exact(Situation now, Row row) {
        Optional<Spool> spool = now.engine().spool(row);
        if (spool.isEmpty()) {
            return false;
        }
        Pad pad = now.padOf(spool.get());
        return pad.play() == 0 && pad.backlash() == 0 && pad.drift() == 0;
    }

    /** One sentence about them; empty if there are none. */
    public static Optional<String> told(Situation now) {
        List<String> rows = rows(now);
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of("Nobody stated what a move may be off, so each is taken as exact unless it says ±, in: "
                        + String.join(", ", rows) + ".");
    }
}
