package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.util.List;
import java.util.Optional;

/**
 * What nobody stated an error of, and is therefore taken as exact: ignorance must not look like certainty.
 *
 * @param rows that turn, are counted, and whose pad has neither play, backlash nor drift; in the model's order
 */
public record TakenAsExact(List<String> rows) implements Fact {

    /** Such rows; empty if there are none. */
    public static Optional<TakenAsExact> of(Situation now) {
        List<String> rows = now.engine().model().rows().stream()
                .filter(row -> now.counting(row) && exact(now, row))
                .map(Row::id)
                .toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new TakenAsExact(rows));
    }

    private static boolean exact(Situation now, Row row) {
        Optional<Spool> spool = now.engine().spool(row);
        if (spool.isEmpty()) {
            return false;
        }
        Pad pad = now.padOf(spool.get());
        return pad.play() == 0 && pad.backlash() == 0 && pad.drift() == 0;
    }
}
