package everyblade.core.move;

import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A plan as it is prepared before the work: which ports in which order, and what is done through each.
 *
 * @param visits of ports, in order; a port that is entered twice is there twice
 */
public record Outline(List<Visit> visits) {

    public Outline {
        visits = List.copyOf(visits);
    }

    /**
     * All that is done through a port before the next is entered.
     *
     * @param port its id; empty for views that go through none
     * @param stops in order
     */
    public record Visit(Optional<String> port, List<Stop> stops) {

        public Visit {
            stops = List.copyOf(stops);
        }

        /** How long it takes. */
        public double minutes() {
            return stops.stream().mapToDouble(Stop::minutes).sum();
        }
    }

    /**
     * All that is done at a view before the next.
     *
     * @param stations in order; none where the view has none
     * @param turning how far the shaft turns, degrees
     * @param drawing how far the scope tip is fed and drawn, degrees
     * @param identified airfoils that are brought to the reference, in order, each as often as it is
     * @param minutes it takes, with all that leads there
     * @param closes the zones of each airfoil that it closes, by number, rising; nothing where it only begins what a later one
     *     closes
     */
    public record Stop(
            View view,
            Row row,
            List<String> stations,
            BigDecimal turning,
            BigDecimal drawing,
            List<Integer> identified,
            double minutes,
            SortedMap<Integer, ZoneSet> closes) {

        public Stop {
            stations = List.copyOf(stations);
            identified = List.copyOf(identified);
            closes = Collections.unmodifiableSortedMap(new TreeMap<>(closes));
        }

        private static Stop of(List<Move> moves) {
            Plan part = Plan.of(moves);
            return new Stop(
                    moves.get(0).view(),
                    moves.get(0).row(),
                    moves.stream()
                            .flatMap(move -> move.station().stream())
                            .distinct()
                            .toList(),
                    part.turning(),
                    part.drawing(),
                    moves.stream()
                            .flatMap(move -> move.identifies().stream().boxed())
                            .toList(),
                    part.minutes(),
                    closed(moves));
        }

        private static SortedMap<Integer, ZoneSet> closed(List<Move> moves) {
            SortedMap<Integer, ZoneSet> closed = new TreeMap<>();
            moves.stream()
                    .flatMap(move -> move.closes().stream())
                    .forEach(closing ->
                            closing.airfoils().forEach(n -> closed.merge(n, closing.zones(), ZoneSet::union)));
            return closed;
        }
    }

    /** The outline of a plan. */
    public static Outline of(Plan plan) {
        return new Outline(alike(plan.moves(), move -> move.view().port()).stream()
                .map(moves -> new Visit(
                        moves.get(0).view().port(),
                        alike(moves, Move::view).stream().map(Stop::of).toList()))
                .toList());
    }

    /** Moves that follow each other and agree in this. */
    private static List<List<Move>> alike(List<Move> moves, Function<Move, Object> in) {
        List<List<Move>> groups = new ArrayList<>();
        Object last = null;
        for (Move move : moves) {
            Object now = in.apply(move);
            if (!now.equals(last)) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(move);
            last = now;
        }
        return groups;
    }
}
