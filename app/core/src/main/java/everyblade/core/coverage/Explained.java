package everyblade.core.coverage;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.sight.Hindrance;
import everyblade.fact.Fact;
import everyblade.fact.Percent;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A step of the explanation why a cell has its state. Shares are per cent to a tenth, of good things rounded down. */
public sealed interface Explained extends Fact {

    /** No airfoil of its row was ever identified. */
    record NeverIdentified(RowKind kind) implements Explained {}

    /**
     * It was watched while the row turned.
     *
     * @param shown what was in sight of it
     */
    record Passed(By by, Track track, Fact shown) implements Explained {}

    /** The view in use does not show this zone. */
    record NotShown(By by, ZonePhrase zone) implements Explained {}

    /** It passed while something else was watched. */
    record Unwatched(By by, Why why) implements Explained {}

    /** What someone said of it. */
    enum Remarked implements Explained {
        FOUND,
        RECHECK,
        STATED,
        ACCEPTED
    }

    /** What to do about a row of which nobody knows where it stands, though what is hidden hangs on it. */
    record Unidentified(RowKind kind, String name, String row) implements Explained {

        public static Unidentified of(Row row) {
            return new Unidentified(row.kind(), row.name(), row.id());
        }
    }

    /**
     * What comes of all that.
     *
     * @param name of the row
     * @param row its id
     * @param glimpse whether what can be seen of it is less than half, and it was seen
     * @param lacksEdge whether only its outermost strip at the edge is wanting, and the rest was seen
     */
    record Conclusion(
            RowKind kind,
            int airfoil,
            String name,
            String row,
            ZonePhrase zone,
            State state,
            boolean glimpse,
            boolean lacksEdge,
            Optional<Why> why,
            Fact ground)
            implements Explained {}

    /** Which entries, the first and the last of so many, through which view. */
    record By(int first, int last, int count, String view) implements Fact {}

    /**
     * How the row turned meanwhile, degrees.
     *
     * @param inAll how far, if that is a turn or more
     * @param end how well it is known where it stood then; empty if that is not known at all
     */
    record Track(
            double countedFrom,
            double countedTo,
            Optional<Double> inAll,
            double adjustedFrom,
            double adjustedTo,
            Optional<Spread> end,
            Optional<Widened> widened)
            implements Fact {}

    /** By how much it may stand off to either side, degrees. */
    record Spread(double below, double above) implements Fact {}

    /** So many times wider than one run alone would have it, because it is one of several. */
    record Widened(double times, int run) implements Fact {}

    /** What was in sight of a cell, where no share of it is known. */
    enum Shown implements Fact {
        SURELY,
        NOT_AT_ALL,
        WINDOW_APART
    }

    /** Only maybe in sight. */
    record Doubtful(Why why) implements Fact {}

    /**
     * What was in sight of a cell.
     *
     * @param seen surely
     * @param maybe surely or maybe
     * @param nothing whether neither
     * @param brief whether it was too short
     */
    record Share(
            BigDecimal seen, BigDecimal maybe, boolean nothing, boolean brief, List<String> stations, Optional<Why> why)
            implements Fact {}

    /** What is known by declaration. */
    enum Ground implements Fact {
        WINDOWS
    }

    /** What is known by computing. */
    record Computed(BigDecimal seen, BigDecimal maybe, BigDecimal reach, Optional<Hindrance> mostly) implements Fact {}

    /** @param share from 0 to 1 */
    static BigDecimal percent(double share) {
        return Percent.good(share, 1);
    }
}
