package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.Sense;
import everyblade.core.entry.Unit;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/** How far a move goes, and what it may be off: a movement as it was said, made into an angle. */
final class Moves {

    private static final Turn HALF = Turn.ofFraction(1, 2);
    private static final Turn MOST = Turn.ofFraction(1000, 1);

    /**
     * A move made into an angle.
     *
     * @param amount positive clockwise
     * @param error what it may be off
     * @param reading whether it ends at a reading, which stands whatever went before
     */
    record Move(Turn amount, Uncertainty error, boolean reading) {

        Track on(Track track, int entry) {
            return reading ? track.read(entry, amount, Math.sqrt(error.variance())) : track.moved(entry, amount, error);
        }
    }

    private Moves() {}

    /** A move of a spool at a pad, with the row in view for moves by blades. */
    static Move ofShaft(Said<Movement> said, Spool spool, Pad pad, Optional<Row> row, Track track) throws Refusal {
        Turn amount = amount(said, spool.normal(), pad.directions(), pad.ratio(), row, track.readingNow());
        Direction way = amount.signum() < 0 ? Direction.CCW : Direction.CW;
        Optional<MoveProblem> oneWay = amount.signum() == 0 ? Optional.empty() : oneWay(spool, pad, way);
        if (oneWay.isPresent()) {
            throw new Refusal(said.column(), oneWay.get());
        }
        boolean reversed = track.lastSense() == -amount.signum() && amount.signum() != 0;
        return new Move(amount, error(said.value(), amount, pad, reversed), said.value() instanceof Movement.To);
    }

    /** Why a spool is not turned that way at a pad; empty if it is. */
    static Optional<MoveProblem> oneWay(Spool spool, Pad pad, Direction way) {
        return pad.directions().contains(way)
                ? Optional.empty()
                : Optional.of(new MoveProblem.OneWayOnly(
                        pad.id(), spool.name(), pad.directions().iterator().next(), way));
    }

    /** A move of the scope tip round a static row; exact unless ± is said. No entry draws it by turns of a tool. */
    static Move ofScope(Said<Movement> said, Row row, Turn reference) throws Refusal {
        Turn amount = amount(said, Direction.CW, Set.of(Direction.values()), Ratio.ONE, Optional.of(row), reference);
        Uncertainty error = said.value()
                .plusMinus()
                .map(d -> Uncertainty.of(d.doubleValue()))
                .orElse(Uncertainty.EXACT);
        return new Move(amount, error, said.value() instanceof Movement.To);
    }

    private static Uncertainty error(Movement movement, Turn amount, Pad pad, boolean reversed) {
        if (movement.plusMinus().isPresent()) {
            return Uncertainty.of(movement.plusMinus().get().doubleValue());
        }
        boolean byEye = movement instanceof Movement.By by && by.unit() == Unit.BLADES;
        if (byEye || amount.signum() == 0) {
            return Uncertainty.EXACT;
        }
        if (movement instanceof Movement.To) {
            return Uncertainty.of(pad.play());
        }
        double shortfall = pad.drift() + (reversed ? pad.backlash() : 0);
        return amount.signum() > 0
                ? new Uncertainty(pad.play() * pad.play(), shortfall, 0)
                : new Uncertainty(pad.play() * pad.play(), 0, shortfall);
    }

    private static Turn amount(
            Said<Movement> said, Direction normal, Set<Direction> allowed, Ratio gear, Optional<Row> row, Turn now)
            throws Refusal {
        Turn amount = said.value() instanceof Movement.By by
                ? by(by, said.column(), normal, gear, row)
                : to((Movement.To) said.value(), said.column(), normal, allowed, now);
        if (amount.abs().compareTo(MOST) > 0) {
            throw new Refusal(said.column(), MoveProblem.Flaw.TOO_FAR);
        }
        return amount;
    }

    private static Turn by(Movement.By by, int column, Direction normal, Ratio gear, Optional<Row> row) throws Refusal {
        Turn amount = switch (by.unit()) {
            case DEG -> Turn.ofDegrees(by.number());
            case REV -> Turn.FULL.times(by.number());
            case TOOL, TOOLDEG ->
                (by.unit() == Unit.TOOL ? Turn.FULL.times(by.number()) : Turn.ofDegrees(by.number()))
                        .times(gear.numerator(), gear.denominator());
            case BLADES ->
                Turn.ofFraction(
                                1,
                                row.orElseThrow(() -> new Refusal(column, MoveProblem.Flaw.NO_ROW))
                                        .count())
                        .times(by.number());
        };
        return by.sense()
                .map(sense -> sign(sense, normal) < 0 ? amount.abs().negated() : amount.abs())
                .orElse(amount);
    }

    private static Turn to(Movement.To to, int column, Direction normal, Set<Direction> allowed, Turn now)
            throws Refusal {
        Turn clockwise = Turn.ofDegrees(to.angle()).minus(now).wrapped();
        Turn counterClockwise = clockwise.signum() == 0 ? Turn.ZERO : clockwise.minus(Turn.FULL);
        if (to.sense().isPresent()) {
            return sign(to.sense().get(), normal) > 0 ? clockwise : counterClockwise;
        }
        if (allowed.size() == 1) {
            return allowed.contains(Direction.CW) ? clockwise : counterClockwise;
        }
        if (clockwise.equals(HALF)) {
            throw new Refusal(column, new MoveProblem.Opposite(plain(to.angle())));
        }
        return clockwise.compareTo(HALF) < 0 ? clockwise : counterClockwise;
    }

    private static int sign(Sense sense, Direction normal) {
        return sense == Sense.ON ? normal.sign() : -normal.sign();
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
