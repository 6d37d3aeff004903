package everyblade.cli;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Said;
import everyblade.core.entry.Sense;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import everyblade.core.move.Move;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** How different people do what they were told, as lines that they log. */
final class Technician {

    private static final int ERRS_EACH = 4;
    private static final int CALLED_AWAY_EACH = 7;
    private static final double SLOPPY = 3;

    /** What somebody is like. */
    enum Kind {
        /** Logs literally what was said. */
        PERFECT,
        /** Turns a shaft and draws the scope tip up to 3° more or less than was said, and says so. */
        SLOPPY,
        /** Is now and then an airfoil off, and finds out at the next identification. */
        MISCOUNTING,
        /** Draws the scope now and then and hands over; whoever takes over puts it back. */
        INTERRUPTED
    }

    private final Kind kind;
    private final SplittableRandom random = new SplittableRandom(7);
    private int moves;

    Technician(Kind kind) {
        this.kind = kind;
    }

    /** Whether a line may be called out: whoever does what was said is never warned. */
    boolean mayErr() {
        return kind == Kind.SLOPPY || kind == Kind.MISCOUNTING;
    }

    /** The lines of a move. */
    List<String> lines(Move move) {
        moves++;
        List<String> lines = new ArrayList<>();
        boolean off = kind == Kind.MISCOUNTING
                && move.row().kind() == RowKind.ROTOR
                && move.from().isPresent()
                && random.nextInt(ERRS_EACH) == 0;
        for (Entry entry : move.entries()) {
            boolean identifies = entry instanceof TurnEntry.Round || entry instanceof TurnEntry.Here;
            if (off && identifies) {
                lines.add("skip on 1 blades");
            }
            lines.add(EntryText.of(kind == Kind.SLOPPY ? sloppily(entry) : entry));
        }
        if (kind == Kind.INTERRUPTED && moves % CALLED_AWAY_EACH == 0) {
            lines.addAll(List.of(
                    "out",
                    "pause",
                    "takeover Ben",
                    "view " + EntryText.name(move.view().id())));
        }
        return lines;
    }

    private Entry sloppily(Entry entry) {
        if (entry instanceof TurnEntry.Skip skip) {
            return new TurnEntry.Skip(off(skip.movement()));
        }
        if (entry instanceof TurnEntry.Turn turn) {
            return new TurnEntry.Turn(off(turn.movement()), turn.seconds(), turn.through());
        }
        if (entry instanceof TurnEntry.Feed feed) {
            return new TurnEntry.Feed(off(feed.movement()));
        }
        if (entry instanceof TurnEntry.Draw draw) {
            return new TurnEntry.Draw(off(draw.movement()), draw.seconds());
        }
        return entry;
    }

    private Said<Movement> off(Said<Movement> said) {
        BigDecimal error =
                BigDecimal.valueOf(random.nextDouble(-SLOPPY, SLOPPY)).setScale(1, RoundingMode.HALF_EVEN);
        Optional<BigDecimal> stated = Optional.of(BigDecimal.valueOf(SLOPPY));
        if (said.value() instanceof Movement.To to) {
            BigDecimal turn = BigDecimal.valueOf(360);
            BigDecimal angle = to.angle().add(error).add(turn).remainder(turn);
            return new Said<>(new Movement.To(to.sense(), angle, stated), said.column());
        }
        Movement.By by = (Movement.By) said.value();
        if (by.unit() != Unit.DEG) {
            return said;
        }
        BigDecimal number = by.number().add(error);
        Optional<Sense> sense = by.sense().filter(on -> number.signum() >= 0);
        boolean back = by.sense().isPresent() && sense.isEmpty();
        return new Said<>(
                new Movement.By(back ? by.sense() : sense, back ? number.abs() : number, by.unit(), stated),
                said.column());
    }
}
