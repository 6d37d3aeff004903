package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.Unit;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.util.BitSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;

/** Warnings before harm is done: steps that never reach some airfoils, counts that are about to become doubtful. */
final class Advice {

    private static final int MOVES_AHEAD = 4;
    private static final int LONGEST_COUNT = 1000;
    private static final int USUAL_TURNS = 3;

    private Advice() {}

    /**
     * A step that shares a factor with the number of airfoils, repeated, stands at some of them again and again and
     * never at the others: it reaches N / gcd(N, step) of them. A watched move that was not said in blades is no step.
     */
    static List<String> onStep(Situation now, Seat seat, Spool spool, Movement movement, boolean watched) {
        Row row = seat.row();
        boolean byBlades = movement instanceof Movement.By by && by.unit() == Unit.BLADES;
        boolean skipped = movement instanceof Movement.By && !watched;
        if (row.kind() != RowKind.ROTOR || !byBlades && !skipped) {
            return List.of();
        }
        Turn pitches;
        try {
            pitches = Moves.ofShaft(
                            new Said<>(movement, 1), spool, now.padOf(spool), Optional.of(row), now.trackOf(row))
                    .amount()
                    .times(row.count(), 1);
        } catch (Refusal refused) {
            return List.of();
        }
        long step = pitches.abs().floorTicks() / Turn.FULL.floorTicks();
        boolean whole = pitches.abs().equals(Turn.FULL.times(step, 1));
        long common = gcd(row.count(), step);
        if (!whole || step % row.count() == 0 || common == 1) {
            return List.of();
        }
        int here = now.airfoilAtReference(seat).orElse(1);
        BitSet missed = new BitSet();
        for (int n = 1; n <= row.count(); n++) {
            missed.set(n - 1, Math.floorMod(n - here, common) != 0);
        }
        return List.of(
                "a step of " + step + " on " + row.count() + " " + row.kind().airfoil()
                        + "s, repeated, stands only at every " + step(common) + " of them; it never stands at "
                        + AirfoilNames.of(row, missed));
    }

    /** Hardly anybody turns a rotor by hand so far in one move: more likely a digit slipped in. */
    static Optional<String> onAmount(Situation before, Situation after, Spool spool) {
        Turn by = standing(after, spool).minus(standing(before, spool)).abs();
        return by.compareTo(Turn.FULL.times(USUAL_TURNS, 1)) <= 0
                ? Optional.empty()
                : Optional.of("that is " + by.floorTicks() / Turn.FULL.floorTicks()
                        + " whole turns in one move; if a digit slipped in, void this entry and say it again");
    }

    private static Turn standing(Situation at, Spool spool) {
        return at.tracks().get("spool " + spool.id()).stops().last().counted();
    }

    /** A slip breaks the count from here on; nothing tells that it did not begin during what was watched before. */
    static Optional<String> onSlip(Situation now) {
        IntSummaryStatistics moves = now.engine().rows().values().stream()
                .filter(row -> row.kind() == RowKind.ROTOR)
                .flatMap(row -> now.legsOf(row).stream()
                        .filter(leg -> leg.from() != leg.to())
                        .filter(leg -> now.trackOf(row).onlyCountedSince(leg.from())))
                .mapToInt(Leg::entry)
                .summaryStatistics();
        if (moves.getCount() == 0) {
            return Optional.empty();
        }
        boolean one = moves.getCount() == 1;
        return Optional.of("what was turned before stays as it was counted; if the rotor slipped during "
                + (one
                        ? "that move, entry " + moves.getMin() + ", void it"
                        : "one of those moves, entries " + moves.getMin() + " to " + moves.getMax()
                                + ", void that move")
                + " and look again");
    }

    /** How many more moves like the last ones until the error reaches half a pitch. */
    static List<String> onCount(Situation now, Seat seat) {
        Row row = seat.row();
        Optional<Spool> spool = now.engine().spool(row);
        Optional<Uncertainty> off = now.trackOf(row).off(row.id());
        if (spool.isEmpty() || off.isEmpty()) {
            return List.of();
        }
        Pad pad = now.padOf(spool.get());
        double half = Engine.pitch(row) / 2;
        Uncertainty each = new Uncertainty(pad.play() * pad.play(), pad.drift(), 0);
        Uncertainty grown = off.get().and(new Uncertainty(0, row.rock(), row.rock()));
        if (each.below() == 0) {
            return List.of();
        }
        int moves = movesLeft(grown, each, half);
        if (moves == 0) {
            return List.of(row.kind().airfoil() + " numbers of row " + row.id()
                    + " are doubtful now: the angle may be off by half a pitch; bring a known "
                    + row.kind().airfoil() + " to the reference and say here N");
        }
        if (moves > MOVES_AHEAD) {
            return List.of();
        }
        return List.of("at this play " + row.kind().airfoil() + " numbers of row " + row.id()
                + " become doubtful after " + moves + " more move" + (moves == 1 ? "" : "s")
                + ": find a landmark");
    }

    /** After how many more moves, each with this error, the error reaches so many degrees; at most a thousand. */
    static int movesLeft(Uncertainty now, Uncertainty each, double degrees) {
        Uncertainty grown = now;
        int moves = 0;
        while (largest(grown) < degrees && moves < LONGEST_COUNT) {
            grown = grown.and(each);
            moves++;
        }
        return moves;
    }

    private static double largest(Uncertainty error) {
        return Math.max(error.below(), error.above());
    }

    private static String step(long common) {
        return common == 2 ? "second" : common == 3 ? "third" : common + "th";
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
