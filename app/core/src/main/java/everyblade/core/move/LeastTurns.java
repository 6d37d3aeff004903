package everyblade.core.move;

import java.util.Collection;
import java.util.stream.IntStream;

/**
 * How far must be turned and drawn at least, however the stations are chosen: what is left of an airfoil needs so many of
 * them, for no fewer show enough of it together, and it must pass each of those. Every set of stations is tried. At each
 * station that turn may be shorter, by what lies between two airfoils and by how long one is in sight.
 *
 * @param shaft whole turns of shafts; a row of which something is left on half its airfoils takes half of one for each
 *     station
 * @param scopeTip whole turns of the scope tip round rows that stand still
 */
public record LeastTurns(double shaft, double scopeTip) {

    static final LeastTurns NONE = new LeastTurns(0, 0);

    static LeastTurns of(Collection<RowNeeds> rows) {
        double shaft = 0;
        double scopeTip = 0;
        for (RowNeeds needs : rows) {
            double turns = needs.kinds().stream()
                            .mapToInt(kind -> kind.airfoils().cardinality() * stations(needs, kind))
                            .sum()
                    / (double) needs.row().count();
            shaft += RemainingState.turns(needs.row()) ? turns : 0;
            scopeTip += RemainingState.turns(needs.row()) ? 0 : turns;
        }
        return new LeastTurns(shaft, scopeTip);
    }

    /** How many stations an airfoil must be brought before at least; where not all were looked at, one at most is sure. */
    private static int stations(RowNeeds needs, RowNeeds.Kind kind) {
        int travelling = IntStream.range(0, needs.options().size())
                .filter(option -> needs.options().get(option).travels())
                .map(option -> 1 << option)
                .sum();
        int least = IntStream.range(1, 1 << needs.options().size())
                .filter(set -> needs.covers(set, kind))
                .map(set -> Integer.bitCount(set & travelling))
                .min()
                .orElse(0);
        return needs.allOptions() ? least : Math.min(1, least);
    }
}
