package everyblade.core.move;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Stated;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Pad;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How good moves by an angle are in the hands that do the job: whoever said ± 3 of the last one will not do better at the
 * next, so what is planned says and allows for the same. What was said closer than the pad promises is not relied on.
 */
final class StatedError {

    private StatedError() {}

    /**
     * ± degrees that the next move should state; empty if it need not.
     *
     * @param spool that is turned; empty where the scope tip is drawn round a row that stands still
     * @param pad at which
     */
    static Optional<BigDecimal> of(Fold fold, Optional<Spool> spool, Optional<Pad> pad) {
        double promised = pad.map(Pad::play).orElse(0.0);
        List<Logged> entries = fold.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i).entry();
            boolean like = spool.isPresent() ? turns(entry) : draws(entry);
            if (like && byAngle(entry) && !fold.isVoid(entries.get(i).number())) {
                return Stated.plusMinus(entry).filter(stated -> stated.doubleValue() > promised);
            }
        }
        return Optional.empty();
    }

    private static boolean turns(Entry entry) {
        return entry instanceof TurnEntry.Turn || entry instanceof TurnEntry.Skip;
    }

    private static boolean draws(Entry entry) {
        return entry instanceof TurnEntry.Draw || entry instanceof TurnEntry.Feed;
    }

    /** Not counted in airfoils, which has no error. */
    private static boolean byAngle(Entry entry) {
        return Stated.movement(entry)
                .filter(movement -> !(movement instanceof Movement.By by && by.unit() == Unit.BLADES))
                .isPresent();
    }
}
