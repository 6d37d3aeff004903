package everyblade.core.move;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.turning.Seat;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * The least minutes in which a rotor of which nothing was seen is turned whole before options that are enough together: every
 * set of them, in every order that keeps that of the ports, from every airfoil that can be told, each turn with and without
 * going a little further, followed through fold and coverage. Best first (A*): what is still
 * ahead of an order is taken for no more than it can be, so the first order that closes everything is the least.
 */
final class EveryOrder {

    private static final int LEAST_AIRFOILS = 6;
    /** All sets of them are looked at again and again. */
    private static final int MOST_OPTIONS = 8;

    private final Row row;
    private final List<ViewOption> options;
    private final List<String> ports;
    private final Prices prices;
    /** Zones that all options together can close. */
    private final ZoneSet asked;

    private final Map<SlackOf, Slack> slacks = new HashMap<>();
    private final OrderBound bound;
    private final Map<Key, Double> known = new HashMap<>();
    private final PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingDouble(Node::atLeast));
    private int followed;

    /**
     * Where an order has led to.
     *
     * @param used options before which it turned, as a bit mask
     * @param minutes so far
     */
    record Reached(RemainingState state, int used, double minutes, RowNeeds left) {}

    /**
     * An order, and perhaps the turn that is to be followed next.
     *
     * @param next option before which it turns; empty if that is open
     * @param atLeast minutes that all that begin so take at least
     */
    private record Node(Reached from, OptionalInt next, double atLeast) {}

    private record SlackOf(ViewOption option, boolean known) {}

    /** What is left of airfoils alike. */
    private record Left(BitSet airfoils, RowNeeds.Shown seen, List<RowNeeds.Shown> shown) {}

    /** What makes two orders go on alike. */
    private record Key(int used, Optional<Seat> seat, Optional<Place> place, List<Left> left) {}

    private EveryOrder(RemainingState start, RowNeeds needs, List<String> ports, Prices prices) {
        this.row = needs.row();
        this.options = needs.options();
        this.ports = ports;
        this.prices = prices;
        this.asked = needs.kinds().get(0).open();
        this.bound = new OrderBound(
                row,
                options,
                prices,
                IntStream.range(0, options.size())
                        .mapToObj(option -> alone(start, option))
                        .toList());
    }

    /**
     * Minutes that every such order takes at least: the least, unless more turns would have to be followed to find it. Empty if
     * anything else is left, or whole turns are not what closes this.
     *
     * @param left of all rows
     * @param ports in their order
     * @param most turns to be followed
     */
    static OptionalDouble least(
            RemainingState start, List<RowNeeds> left, List<String> ports, Prices prices, int most) {
        return left.stream()
                .filter(needs -> left.size() == 1 && nothingSeen(needs))
                .filter(needs ->
                        !start.slack(needs.row(), needs.options().get(0)).none())
                .map(needs -> new EveryOrder(start, needs, ports, prices).least(start, needs, most))
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private static boolean nothingSeen(RowNeeds needs) {
        int count = needs.row().count();
        return RemainingState.turns(needs.row())
                && count >= LEAST_AIRFOILS
                && needs.allOptions()
                && needs.options().size() <= MOST_OPTIONS
                && needs.options().stream().allMatch(ViewOption::travels)
                && needs.kinds().size() == 1
                && needs.kinds().get(0).airfoils().cardinality() == count
                && needs.kinds().get(0).seen().all().isEmpty();
    }

    private OptionalDouble least(RemainingState start, RowNeeds needs, int most) {
        reached(start, 0, 0, needs);
        while (!queue.isEmpty()) {
            Node node = queue.remove();
            if (node.from().left().none() || followed >= most) {
                return OptionalDouble.of(node.atLeast());
            }
            if (node.next().isPresent()) {
                follow(node.from(), node.next().getAsInt());
            } else {
                goOn(node);
            }
        }
        return OptionalDouble.empty();
    }

    private void reached(RemainingState state, int used, double minutes, RowNeeds needs) {
        List<Left> left = needs.kinds().stream()
                .map(kind -> new Left(kind.airfoils(), kind.seen(), kind.shown()))
                .toList();
        Key key = new Key(used, state.now().seat(), state.place(row), left);
        if (closesAll(state, needs) && minutes < known.getOrDefault(key, Double.POSITIVE_INFINITY)) {
            known.put(key, minutes);
            add(new Reached(state, used, minutes, needs), OptionalInt.empty(), minutes);
        }
    }

    /** Whether all that could be closed at the start was, or still can be. */
    private boolean closesAll(RemainingState state, RowNeeds needs) {
        RowCoverage of = state.coverage().row(row.id());
        Map<Integer, ZoneSet> closable = new HashMap<>();
        needs.kinds().forEach(kind -> kind.airfoils().stream().forEach(n -> closable.put(n, kind.open())));
        return IntStream.rangeClosed(1, row.count()).allMatch(n -> {
            ZoneSet lost = Gaps.within(of, n).minus(closable.getOrDefault(n, ZoneSet.NONE));
            return lost.minus(asked).equals(lost);
        });
    }

    /** Whatever may come next, not yet followed. */
    private void goOn(Node node) {
        int here = node.from().state().port().map(ports::indexOf).orElse(-1);
        IntStream.range(0, options.size())
                .filter(option -> (node.from().used() >> option & 1) == 0)
                .filter(option -> rank(options.get(option)) >= here)
                .forEach(option -> add(node.from(), OptionalInt.of(option), node.atLeast()));
    }

    private void add(Reached from, OptionalInt next, double atLeast) {
        double minutes = from.minutes() + bound.ahead(from, next);
        if (minutes < Double.POSITIVE_INFINITY) {
            queue.add(new Node(from, next, Math.max(atLeast, minutes)));
        }
    }

    private int rank(ViewOption option) {
        return ports.indexOf(PortChoice.portOf(option));
    }

    private void follow(Reached from, int option) {
        ViewOption at = options.get(option);
        RotationProblem problem = problem(from.state(), at);
        int used = from.used() | 1 << option;
        for (Work work : problem.works(new Stay(at, List.of(), true))) {
            followed++;
            for (Spoken.Done whole : Spoken.of(from.state(), problem, work)) {
                if (whole.move().round() || !bound.tells(option)) {
                    double minutes = from.minutes() + whole.move().minutes();
                    reached(whole.after(), used, minutes, left(whole.after()));
                    Spoken.further(whole.after(), problem, work)
                            .filter(more -> bound.nearLandmark(more.after(), option))
                            .ifPresent(more -> reached(
                                    more.after(), used, minutes + more.move().minutes(), left(more.after())));
                }
            }
        }
    }

    private OrderBound.Alone alone(RemainingState start, int option) {
        ViewOption at = options.get(option);
        RotationProblem problem = problem(start, at);
        Work work = problem.works(new Stay(at, List.of(), true)).get(0);
        RemainingState after = Spoken.of(start, problem, work).stream()
                .map(Spoken.Done::after)
                .findFirst()
                .orElse(start);
        double further = Spoken.further(after, problem, work)
                .map(done -> done.move().minutes())
                .orElse(0.0);
        return start.rounds(row, at)
                ? new OrderBound.Alone(true, left(after), further, start.aim(row, at))
                : new OrderBound.Alone(false, left(after), 0, TypedDegrees.TURN);
    }

    private RowNeeds left(RemainingState state) {
        return RowNeeds.of(state.coverage(), row, OptionalDouble.empty(), options);
    }

    private RotationProblem problem(RemainingState state, ViewOption at) {
        Slack slack = slacks.computeIfAbsent(
                new SlackOf(at, state.place(row).isPresent()), key -> state.slack(row, key.option()));
        return RotationProblem.of(state, row, options, slack, false, this::rank, prices);
    }
}
