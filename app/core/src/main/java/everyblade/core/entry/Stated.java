package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.Optional;

/** What entries of several kinds may state in the same way. */
public final class Stated {

    private Stated() {}

    /** How long it took, s, if the entry says so. */
    public static Optional<BigDecimal> seconds(Entry entry) {
        return entry instanceof Entry.Turn turn
                ? turn.seconds()
                : entry instanceof Entry.Round round
                        ? round.seconds()
                        : entry instanceof Entry.Look look
                                ? look.seconds()
                                : entry instanceof Entry.Draw draw ? draw.seconds() : Optional.empty();
    }

    /** The move that the entry says, if it is one; a round is none, for it says no angle. */
    public static Optional<Movement> movement(Entry entry) {
        return entry instanceof Entry.Turn turn
                ? Optional.of(turn.movement().value())
                : entry instanceof Entry.Skip skip
                        ? Optional.of(skip.movement().value())
                        : entry instanceof Entry.Draw draw
                                ? Optional.of(draw.movement().value())
                                : entry instanceof Entry.Feed feed
                                        ? Optional.of(feed.movement().value())
                                        : Optional.empty();
    }

    /** What an angle or a place may be off, ± degrees, if the entry says so. */
    public static Optional<BigDecimal> plusMinus(Entry entry) {
        return entry instanceof Entry.Here here
                ? here.plusMinus()
                : entry instanceof Entry.Round round
                        ? round.plusMinus()
                        : entry instanceof Entry.Datum datum
                                ? datum.plusMinus()
                                : movement(entry).flatMap(Movement::plusMinus);
    }
}
