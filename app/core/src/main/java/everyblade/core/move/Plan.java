package everyblade.core.move;

import everyblade.core.coverage.Why;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Moves that close all gaps that can be closed.
 *
 * @param moves in order
 * @param bound minutes that every such plan takes at least, told of plans that say a whole turn as a round; a turn that
 *     had to be said otherwise may take a little less
 * @param beyond how many cells no view can show, by why
 * @param open how many cells some view can show and the moves do not surely close, by why they would then not be seen
 * @param least turns that it takes at least, whatever the stations
 */
public record Plan(
        List<Move> moves,
        double bound,
        SortedMap<Why, Integer> beyond,
        SortedMap<Why, Integer> open,
        LeastTurns least) {

    private static final double ROUNDING = 1e-6;

    public Plan {
        moves = List.copyOf(moves);
        beyond = Collections.unmodifiableSortedMap(new TreeMap<>(beyond));
        open = Collections.unmodifiableSortedMap(new TreeMap<>(open));
    }

    /** Moves of which only what they take is asked. */
    public static Plan of(List<Move> moves) {
        return new Plan(moves, 0, new TreeMap<>(), new TreeMap<>(), LeastTurns.NONE);
    }

    /** How many cells no view can show. */
    public int left() {
        return sum(beyond);
    }

    /** How many cells some view can show and the moves do not surely close. */
    public int unsure() {
        return sum(open);
    }

    private static int sum(SortedMap<Why, Integer> cells) {
        return cells.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Whether no plan takes less. */
    public boolean proved() {
        return unsure() == 0 && Math.abs(minutes() - bound) <= ROUNDING;
    }

    public double minutes() {
        return moves.stream().mapToDouble(Move::minutes).sum();
    }

    /** How far the shafts turn in all, unwatched moves included, as far as anybody knows; degrees. */
    public BigDecimal turning() {
        return sum(moves.stream().map(move -> move.closing().add(move.drawn() ? BigDecimal.ZERO : length(move))));
    }

    /** How far the scope tip is fed and drawn in all, degrees. */
    public BigDecimal drawing() {
        return sum(moves.stream().filter(Move::drawn).map(Plan::length));
    }

    private static BigDecimal length(Move move) {
        return move.way().abs().add(move.sweep().abs());
    }

    private static BigDecimal sum(Stream<BigDecimal> lengths) {
        BigDecimal sum = lengths.reduce(BigDecimal.ZERO, BigDecimal::add).stripTrailingZeros();
        return sum.scale() < 0 ? sum.setScale(0) : sum;
    }

    /** How often a port is entered. */
    public int openings() {
        int openings = 0;
        Optional<String> at = Optional.empty();
        for (Move move : moves) {
            Optional<String> port = move.view().port();
            boolean enters = move.seated() && port.isPresent() && !port.equals(at);
            openings += enters ? 1 : 0;
            at = port;
        }
        return openings;
    }

    /** How often the scope tip is brought to a view. */
    public int views() {
        int views = 0;
        String at = "";
        for (Move move : moves) {
            views += move.seated() && !move.view().id().equals(at) ? 1 : 0;
            at = move.view().id();
        }
        return views;
    }
}
