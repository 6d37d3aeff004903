package everyblade.core.move;

import everyblade.core.move.EveryOrder.Reached;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What is still ahead of an order of whole turns, in minutes and never too much: the cheapest set of options that closes all
 * that is left, with its ports, seats and turns, the ways between views whose references no known airfoil meets together, and
 * going a little further where no other option of the set shows what a turn leaves at its seam.
 */
final class OrderBound {

    /** How exactly an unwatched move may be told, degrees. */
    private static final double COARSEST = 0.5;

    private final Row row;
    private final List<ViewOption> options;
    private final Prices prices;
    private final List<Alone> turns;
    private final Map<List<String>, Double> ways = new HashMap<>();

    /**
     * A whole turn before one option, and nothing else.
     *
     * @param tells whether a known airfoil can be told there
     * @param left what the turn leaves
     * @param further minutes to go a little further
     * @param off by how much an airfoil may be off the reference and still be told there, degrees; a turn if none can be told
     */
    record Alone(boolean tells, RowNeeds left, double further, double off) {}

    /** @param turns by option */
    OrderBound(Row row, List<ViewOption> options, Prices prices, List<Alone> turns) {
        this.row = row;
        this.options = options;
        this.prices = prices;
        this.turns = turns;
    }

    boolean tells(int option) {
        return turns.get(option).tells();
    }

    /** Whether an airfoil not far from a landmark is at the reference there. */
    boolean nearLandmark(RemainingState state, int option) {
        OptionalDouble clock = state.clock(row);
        return clock.isPresent() && way(clock.getAsDouble(), options.get(option).view(), ToldBy.FURTHEST) == 0;
    }

    /**
     * Minutes to a set of options that is enough; infinite if there is none.
     *
     * @param next option that certainly comes next
     */
    double ahead(Reached there, OptionalInt next) {
        int first = next.isPresent() ? 1 << next.getAsInt() : 0;
        return IntStream.range(0, 1 << options.size())
                .filter(set -> (set & there.used()) == 0 && (set & first) == first && covers(there.left(), set))
                .mapToDouble(set -> turning(there, set) + seating(there, set, next))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean covers(RowNeeds left, int set) {
        return left.kinds().stream().allMatch(kind -> left.covers(set, kind));
    }

    private IntStream in(int set) {
        return IntStream.range(0, options.size()).filter(option -> (set >> option & 1) != 0);
    }

    private double turning(Reached there, int set) {
        double searching = set == 0 || there.state().place(row).isPresent() ? 0 : prices.searching();
        return searching
                + in(set).mapToDouble(option -> prices.watching(TypedDegrees.TURN)
                                + (tells(option) ? prices.identification() : 0)
                                + further(option, set | there.used()))
                        .sum();
    }

    private double further(int option, int set) {
        Alone alone = turns.get(option);
        return covers(alone.left(), set & ~(1 << option)) ? 0 : alone.further();
    }

    private double seating(Reached there, int set, OptionalInt next) {
        List<ViewOption> before = in(set).mapToObj(options::get).toList();
        Set<View> views = before.stream().map(ViewOption::view).collect(Collectors.toSet());
        Set<String> entered =
                views.stream().flatMap(view -> view.port().stream()).collect(Collectors.toSet());
        entered.removeAll(there.state().now().ledger().openings().keySet());
        Optional<View> here = there.state().now().seat().map(Seat::view);
        boolean leaves = next.isPresent()
                && !here.equals(Optional.of(options.get(next.getAsInt()).view()));
        boolean seated = before.stream()
                .anyMatch(option -> option.holds(there.state().now().seat()));
        double sum = prices.port() * entered.size()
                + ViewOption.seating(before, here.filter(view -> !leaves), seated, prices);
        double longest = 0;
        for (View view : views) {
            double way = here.equals(Optional.of(view)) ? 0 : way(there, views, view, next);
            sum += way;
            longest = Math.max(longest, way);
        }
        // Whoever does not know where the rotor stands begins wherever a known airfoil is found.
        return sum - (there.state().place(row).isPresent() ? 0 : longest);
    }

    /** Minutes to bring a known airfoil to the reference of a view, from wherever else in these views or from here. */
    private double way(Reached there, Set<View> views, View to, OptionalInt next) {
        OptionalDouble clock = there.state().clock(row);
        double fromHere = clock.isPresent() ? way(clock.getAsDouble(), to, ToldBy.BESIDE) : Double.POSITIVE_INFINITY;
        boolean comesNext =
                next.isPresent() && options.get(next.getAsInt()).view().equals(to);
        double least = views.stream()
                .filter(from -> !comesNext && !from.equals(to))
                .mapToDouble(from -> between(from, to))
                .reduce(fromHere, Math::min);
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }

    private double between(View from, View to) {
        return off(from) >= TypedDegrees.TURN
                ? 0
                : ways.computeIfAbsent(
                        List.of(from.id(), to.id()),
                        key -> ends(from)
                                .map(clock -> way(clock, to, ToldBy.BESIDE))
                                .min()
                                .orElse(0));
    }

    private double way(double clock, View to, int beside) {
        double degrees = RotationProblem.landmarks(row).stream()
                .mapToDouble(
                        landmark -> ToldBy.off(clock, ToldBy.nearest(row, landmark, clock, to.reference(), beside)))
                .min()
                .orElse(0);
        double off = off(to) + COARSEST;
        return degrees <= off ? 0 : prices.turning(degrees - off);
    }

    private double off(View view) {
        return IntStream.range(0, options.size())
                .filter(option -> options.get(option).view().equals(view))
                .mapToDouble(option -> turns.get(option).off())
                .max()
                .orElse(TypedDegrees.TURN);
    }

    /** Clock angles of airfoil 1 where turns before a view may end. */
    private DoubleStream ends(View view) {
        return RotationProblem.landmarks(row).stream()
                .flatMapToDouble(landmark -> IntStream.rangeClosed(-ToldBy.FURTHEST, ToldBy.FURTHEST)
                        .mapToDouble(apart -> view.reference()
                                - Engine.fromFirst(row, landmark).degrees()
                                - apart * Engine.pitch(row)));
    }
}
