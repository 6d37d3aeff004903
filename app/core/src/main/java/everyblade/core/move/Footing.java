package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Placing.Place;
import everyblade.core.turning.Situation;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.View;
import java.util.Optional;
import java.util.Set;

/**
 * How the place of a row hangs together with its shaft's readings, and what it may be off in the moves to come: found by
 * trying such moves, so that whatever errors moves have, plans allow for them.
 *
 * <p>A planned stop is reached by going to a reading and then turning by some amounts. What such a stop may be off does
 * not depend on how far it is.
 *
 * @param reading of the shaft now; of a row that stands still, its angle to the scope tip as newly seated
 * @param offset where airfoil 1 stands when the shaft reads zero
 * @param below how far below that it may stand at a planned stop, degrees
 * @param above how far above, degrees
 * @param startBelow how far below it may stand now, degrees
 * @param startAbove how far above it may stand now, degrees
 * @param startKnown whether it is known now as well as after going to a reading
 */
record Footing(
        Turn reading,
        Turn offset,
        double below,
        double above,
        double startBelow,
        double startAbove,
        boolean startKnown) {

    private static final double ROUNDING = 1e-9;

    /**
     * The footing of a row that is seen through a view; empty if it is not known where the row stands.
     *
     * @param now where the journal ends
     * @param turns how many moves by an amount may follow on going to a reading
     */
    static Optional<Footing> of(Trial now, View view, Row row, int turns) throws Refusal {
        Trial seated = now.seated(view);
        Optional<Place> start = place(seated.situation(), row);
        return start.isEmpty() ? Optional.empty() : Optional.of(tried(seated, row, start.get(), turns));
    }

    private static Footing tried(Trial seated, Row row, Place start, int turns) throws Refusal {
        Situation now = seated.situation();
        Optional<Spool> spool = now.engine().spool(row);
        Set<Direction> ways = ways(now, spool);
        Turn reading = now.reading(row);
        Steered steered = new Steered(spool);
        Turn offset = null;
        Off read = new Off(0, 0);
        Off turned = new Off(0, 0);
        for (Direction way : ways) {
            Direction lead = ways.contains(way.opposite()) ? way.opposite() : way;
            Turn nominal = Steps.turn(Steps.floor(reading) + lead.sign() * Steps.ofDegrees(2));
            Trial trial = seated.with(steered.unwatched(nominal, nominal.minus(reading)));
            Place place = place(trial.situation(), row).orElseThrow();
            offset = offset == null ? place.best().minus(nominal) : offset;
            read = read.or(Off.of(place, nominal.plus(offset)));
            Turn step = Turn.ofFraction(way.sign(), 360);
            for (int i = 0; i < turns; i++) {
                trial = trial.with(steered.watched(step));
                nominal = nominal.plus(step);
                place = place(trial.situation(), row).orElseThrow();
                turned = turned.or(Off.of(place, nominal.plus(offset)));
            }
        }
        Off here = Off.of(start, reading.plus(offset));
        Off planned = read.or(turned);
        return new Footing(
                reading,
                offset,
                planned.below(),
                planned.above(),
                here.below(),
                here.above(),
                here.below() <= read.below() + ROUNDING && here.above() <= read.above() + ROUNDING);
    }

    /** The ways in which a shaft may be turned at the pad in use; a scope tip is drawn either way. */
    static Set<Direction> ways(Situation now, Optional<Spool> spool) {
        return spool.map(turned -> now.padOf(turned).directions()).orElse(Set.of(Direction.values()));
    }

    /** Where it stands, as surely as the next run will claim it. */
    private static Optional<Place> place(Situation now, Row row) {
        return now.counting(row)
                ? now.placing(row)
                        .at(row.id(), row.rock(), now.stop(row))
                        .widened(now.runs() + 1)
                        .place()
                : Optional.empty();
    }

    /** Whether moves have no error, and the row's place is known exactly. */
    boolean exact() {
        return below == 0 && above == 0;
    }

    /** What a place may be off from where it is thought to be, degrees. */
    private record Off(double below, double above) {

        static Off of(Place place, Turn nominal) {
            Turn half = Turn.ofFraction(1, 2);
            double beyond =
                    nominal.minus(place.best()).plus(half).wrapped().minus(half).degrees();
            return new Off(
                    Math.max(0, beyond + place.best().minus(place.low()).degrees()),
                    Math.max(0, place.high().minus(place.best()).degrees() - beyond));
        }

        Off or(Off other) {
            return new Off(Math.max(below, other.below), Math.max(above, other.above));
        }
    }
}
