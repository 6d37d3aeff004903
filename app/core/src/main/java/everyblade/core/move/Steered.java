package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Said;
import everyblade.core.entry.Sense;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import everyblade.spi.Direction;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The entries that move a row, or the scope tip round it: a shaft goes to a reading and turns by an amount; round a row
 * that stands still the scope tip goes the other way than the row seems to.
 *
 * @param spool that the row turns with; empty if it stands still
 */
record Steered(Optional<Spool> spool) {

    /** To a reading, going this far; unwatched. */
    Entry unwatched(Turn reading, Turn amount) {
        return spool.<Entry>map(turned -> new TurnEntry.Skip(said(new Movement.To(
                        Optional.of(sense(turned, amount)),
                        Steps.degrees(Steps.floor(reading.wrapped())),
                        Optional.empty()))))
                .orElseGet(() -> new TurnEntry.Feed(said(drawn(amount))));
    }

    /** By an amount, watched; a look if it is none. */
    Entry watched(Turn amount) {
        if (amount.signum() == 0) {
            return new LookEntry.Look(Optional.empty(), Optional.empty());
        }
        return spool.<Entry>map(turned -> new TurnEntry.Turn(
                        said(by(Optional.of(sense(turned, amount)), amount.abs())), Optional.empty(), Optional.empty()))
                .orElseGet(() -> new TurnEntry.Draw(said(drawn(amount)), Optional.empty()));
    }

    /** A whole watched turn from an airfoil at the reference until it is back. */
    static Entry round(int airfoil) {
        return new TurnEntry.Round(new Said<>(airfoil, 1), Optional.empty(), Optional.empty());
    }

    /** By so many airfoils of the row in view, watched. */
    Entry watchedBlades(int count, boolean clockwise) {
        return new TurnEntry.Turn(said(blades(count, clockwise)), Optional.empty(), Optional.empty());
    }

    /** By so many airfoils of the row in view, unwatched. */
    Entry unwatchedBlades(int count, boolean clockwise) {
        return new TurnEntry.Skip(said(blades(count, clockwise)));
    }

    private Movement blades(int count, boolean clockwise) {
        Sense sense = clockwise == (spool.orElseThrow().normal() == Direction.CW) ? Sense.ON : Sense.BACK;
        return new Movement.By(Optional.of(sense), BigDecimal.valueOf(count), Unit.BLADES, Optional.empty());
    }

    private static Sense sense(Spool turned, Turn amount) {
        return amount.signum() == turned.normal().sign() ? Sense.ON : Sense.BACK;
    }

    private static Movement drawn(Turn amount) {
        return by(Optional.empty(), amount.negated());
    }

    private static Movement by(Optional<Sense> sense, Turn amount) {
        BigDecimal number = Steps.degrees(Steps.floor(amount));
        return new Movement.By(sense, number, Unit.DEG, Optional.empty());
    }

    private static Said<Movement> said(Movement movement) {
        return new Said<>(movement, 1);
    }
}
