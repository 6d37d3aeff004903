package everyblade.core.doubt;

import everyblade.core.angle.Turn;
import everyblade.core.doubt.Doubt.Kind;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Stated;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is doubtful about a move: its number and unit, its sense, from where it begins, and through what it is watched. */
final class MoveDoubts {

    private static final int USUAL_TURNS = 3;

    private final Fold fold;
    private final Situation before;
    private final Entry entry;
    private final Situation after;

    MoveDoubts(Fold fold, Entry entry, Situation after) {
        this.fold = fold;
        this.before = fold.situation();
        this.entry = entry;
        this.after = after;
    }

    List<Doubt> all() {
        List<Doubt> doubts = new ArrayList<>();
        by(entry).ifPresent(move -> {
            offByTen(move).ifPresent(doubts::add);
            step(move).ifPresent(doubts::add);
            spool().ifPresent(spool -> {
                tooFar(spool, move).ifPresent(doubts::add);
                against(spool, move).ifPresent(doubts::add);
            });
        });
        if (entry instanceof TurnEntry.Turn || entry instanceof LookEntry.Look) {
            afterBreak().ifPresent(doubts::add);
        }
        if (EntryKind.of(entry).watches()) {
            throughShut().ifPresent(doubts::add);
        }
        return doubts;
    }

    /** The amount of a move, of one that is not to a reading. */
    private static Optional<Movement.By> by(Entry entry) {
        return Stated.movement(entry).filter(Movement.By.class::isInstance).map(Movement.By.class::cast);
    }

    /** The amount of a move that was counted in airfoils. */
    static Optional<Movement.By> byBlades(Entry entry) {
        return by(entry).filter(move -> move.unit() == Unit.BLADES);
    }

    private Optional<Doubt> offByTen(Movement.By move) {
        return Usual.of(
                        fold,
                        earlier -> earlier.getClass() == entry.getClass()
                                ? by(earlier)
                                        .filter(other -> other.unit() == move.unit())
                                        .map(Movement.By::number)
                                : Optional.empty())
                .unlike(move.number(), wholeTurn(move.unit()))
                .map(usual -> new Doubt(Kind.OFF_BY_TEN, move.number().abs(), usual, word(move.unit())));
    }

    /** A turn or more, where angles are said; elsewhere nobody knows how much that is. */
    private static BigDecimal wholeTurn(Unit unit) {
        return BigDecimal.valueOf(unit == Unit.DEG ? 360 : Long.MAX_VALUE);
    }

    private static String word(Unit unit) {
        return unit.name().toLowerCase(Locale.ROOT);
    }

    /**
     * A step that shares a factor with the number of airfoils, repeated, stands at some of them again and again and
     * never at the others: it reaches N / gcd(N, step) of them. A watched move that was not said in blades is no step.
     */
    private Optional<Doubt> step(Movement.By move) {
        Optional<Seat> seat = before.seat().filter(inUse -> inUse.row().kind() == RowKind.ROTOR);
        if (seat.isEmpty() || move.unit() != Unit.BLADES && !(entry instanceof TurnEntry.Skip)) {
            return Optional.empty();
        }
        Row row = seat.get().row();
        Turn pitches = moved(row).abs().times(row.count(), 1);
        long step = pitches.floorTicks() / Turn.FULL.floorTicks();
        long common = gcd(row.count(), step);
        if (!pitches.equals(Turn.FULL.times(step, 1)) || step % row.count() == 0 || common == 1) {
            return Optional.empty();
        }
        int here = before.airfoilAtReference(seat.get()).orElse(1);
        BitSet missed = new BitSet();
        for (int n = 1; n <= row.count(); n++) {
            missed.set(n - 1, Math.floorMod(n - here, common) != 0);
        }
        return Optional.of(new Doubt(Kind.STEP, row, step, row.count(), missed));
    }

    private Optional<Doubt> tooFar(Spool spool, Movement.By move) {
        Turn by = before.engine().rows().values().stream()
                .filter(row -> before.engine().spool(row).filter(spool::equals).isPresent())
                .findFirst()
                .map(row -> moved(row).abs())
                .orElse(Turn.ZERO);
        if (move.unit() == Unit.TOOL && (by.compareTo(Turn.FULL) > 0 || firstOfTool())) {
            return Optional.of(new Doubt(Kind.TOOL, move.number().abs(), by.degrees()));
        }
        return by.compareTo(Turn.FULL.times(USUAL_TURNS, 1)) > 0
                ? Optional.of(new Doubt(Kind.FAR, by.floorTicks() / Turn.FULL.floorTicks()))
                : Optional.empty();
    }

    /** Who has meant turns of the tool before means them again, as long as it is not far. */
    private boolean firstOfTool() {
        return counted()
                .noneMatch(earlier -> by(earlier.entry())
                        .filter(move -> move.unit() == Unit.TOOL)
                        .isPresent());
    }

    private Optional<Doubt> against(Spool spool, Movement.By move) {
        boolean plain = move.sense().isEmpty() && move.number().signum() > 0;
        String unit = move.unit() == Unit.DEG ? "" : " " + word(move.unit());
        return plain && spool.normal() == Direction.CCW
                ? Optional.of(new Doubt(Kind.AGAINST, move.number().toPlainString() + unit))
                : Optional.empty();
    }

    /** The spool that is turned; empty where the scope tip is moved. */
    private Optional<Spool> spool() {
        if (!(entry instanceof TurnEntry.Turn || entry instanceof TurnEntry.Skip)) {
            return Optional.empty();
        }
        List<Spool> spools = before.engine().model().spools();
        return before.seat()
                .flatMap(seat -> before.engine().spool(seat.row()))
                .or(() -> before.namedSpool().flatMap(before.engine().model()::spool))
                .or(() -> spools.stream().findFirst());
    }

    private Turn moved(Row row) {
        return after.placing(row).counted(before.stop(row), after.stop(row));
    }

    /** Watching on after a pause, as if nothing could have turned meanwhile, is watching after a slip. */
    private Optional<Doubt> afterBreak() {
        Optional<Row> row = before.seat().map(Seat::row);
        if (row.filter(inView -> inView.kind() == RowKind.ROTOR && before.counting(inView))
                .isEmpty()) {
            return Optional.empty();
        }
        return counted()
                .filter(logged -> isBreak(logged.entry()) || tellsOrMoves(logged.entry()))
                .findFirst()
                .filter(last -> isBreak(last.entry()))
                .map(last -> new Doubt(Kind.BREAK, last.number(), last.text().strip()));
    }

    private static boolean isBreak(Entry entry) {
        return entry instanceof RecordEntry.Pause pause && !pause.held()
                || entry instanceof RecordEntry.Takeover takeover && !takeover.held();
    }

    private static boolean tellsOrMoves(Entry entry) {
        return EntryKind.of(entry).identifies()
                || entry instanceof TurnEntry.Slip
                || entry instanceof TurnEntry.Turn
                || entry instanceof TurnEntry.Skip
                || entry instanceof LookEntry.Look;
    }

    private Optional<Doubt> throughShut() {
        return before.seat()
                .flatMap(seat -> seat.shut()
                        .map(shut ->
                                new Doubt(Kind.THROUGH_SHUT, seat.view().port().orElseThrow(), shut)));
    }

    /** What counts, the latest first. */
    private Stream<Logged> counted() {
        List<Logged> entries = fold.entries();
        return IntStream.iterate(entries.size() - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(entries::get)
                .filter(logged -> !fold.isVoid(logged.number()));
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
