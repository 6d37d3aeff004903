package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Said;
import everyblade.core.entry.Sense;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The entries that move a row, or the scope tip round it: a shaft goes to a reading and turns by an amount; round a row
 * that stands still the scope tip goes the other way than the row seems to.
 *
 * @param spool that the row turns with; empty if it stands still
 * @param plusMinus degrees that a move by an angle states, if it does
 */
record Steered(Optional<Spool> spool, Optional<BigDecimal> plusMinus) {

    /** Whether who goes by angles might come to the next airfoil instead, so that airfoils are to be counted by eye. */
    boolean coarse(Row row) {
        return plusMinus
                .filter(off -> off.doubleValue() >= Engine.pitch(row) / 2)
                .isPresent();
    }

    /** To a reading, going this far; unwatched. */
    Entry unwatched(Turn reading, Turn amount) {
        return spool.<Entry>map(turned -> new TurnEntry.Skip(said(new Movement.To(
                        Optional.of(sense(turned, amount)), Steps.degrees(Steps.floor(reading.wrapped())), plusMinus))))
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
        Said<Movement> blades = said(blades(count, clockwise));
        return spool.<Entry>map(turned -> new TurnEntry.Turn(blades, Optional.empty(), Optional.empty()))
                .orElseGet(() -> new TurnEntry.Draw(blades, Optional.empty()));
    }

    /** By so many airfoils of the row in view, unwatched. */
    Entry unwatchedBlades(int count, boolean clockwise) {
        Said<Movement> blades = said(blades(count, clockwise));
        return spool.<Entry>map(turned -> new TurnEntry.Skip(blades)).orElseGet(() -> new TurnEntry.Feed(blades));
    }

    private Movement blades(int count, boolean clockwise) {
        Optional<Sense> sense =
                spool.map(turned -> clockwise == (turned.normal() == Direction.CW) ? Sense.ON : Sense.BACK);
        int number = sense.isPresent() || !clockwise ? count : -count;
        return new Movement.By(sense, BigDecimal.valueOf(number), Unit.BLADES, Optional.empty());
    }

    private static Sense sense(Spool turned, Turn amount) {
        return amount.signum() == turned.normal().sign() ? Sense.ON : Sense.BACK;
    }

    private Movement drawn(Turn amount) {
        return by(Optional.empty(), amount.negated());
    }

    private Movement by(Optional<Sense> sense, Turn amount) {
        BigDecimal number = Steps.degrees(Steps.floor(amount));
        return new Movement.By(sense, number, Unit.DEG, plusMinus);
    }

    private static Said<Movement> said(Movement movement) {
        return new Said<>(movement, 1);
    }
}
