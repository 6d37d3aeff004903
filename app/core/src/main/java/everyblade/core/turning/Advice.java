package everyblade.core.turning;

import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;

/** Warnings before harm is done: counts that are about to become doubtful. */
final class Advice {

    private static final int MOVES_AHEAD = 4;
    private static final int LONGEST_COUNT = 1000;
    /** A move is hardly typed closer than this, degrees. */
    private static final double LITTLE = 0.1;

    private Advice() {}

    /** A slip breaks the count from here on; nothing tells that it did not begin during what was watched before. */
    static Optional<CountWarning> onSlip(Situation now) {
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
        return Optional.of(new CountWarning.Slipped(moves.getCount(), moves.getMin(), moves.getMax()));
    }

    /**
     * How many more moves like the last ones until the error reaches half a pitch. A move that was counted by eye and adds no
     * error brings that no nearer.
     */
    static List<CountWarning> onCount(Situation before, Situation now, Seat seat) {
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
            return List.of(new CountWarning.DoubtfulNow(row.kind(), row.id()));
        }
        if (moves > MOVES_AHEAD || before.trackOf(row).off(row.id()).equals(off)) {
            return List.of();
        }
        return List.of(new CountWarning.DoubtfulSoon(row.kind(), row.id(), moves));
    }

    /** The same of an unwatched move; who brings a landmark to the reference is about to follow that advice. */
    static List<CountWarning> onWay(Situation before, Situation now, Seat seat) {
        return landmarkAtReference(now, seat) ? List.of() : onCount(before, now, seat);
    }

    private static boolean landmarkAtReference(Situation now, Seat seat) {
        Row row = seat.row();
        boolean counting = row.kind() == RowKind.ROTOR && now.counting(row);
        return counting
                && now.airfoilAtReference(seat)
                        .filter(airfoil -> row.landmarks().isEmpty()
                                ? airfoil == 1
                                : row.landmarks().stream().anyMatch(known -> known.airfoil() == airfoil))
                        .filter(airfoil -> now.offReference(seat, airfoil)
                                <= Math.max(now.engine().aim(seat), LITTLE))
                        .isPresent();
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
}
