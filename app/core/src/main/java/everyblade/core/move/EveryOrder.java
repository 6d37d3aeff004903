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
import java.util.ArrayList;
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
     * The least of all orders.
     *
     * @param minutes that each takes at least
     * @param order that takes no more; empty if more turns would have to be followed to find it
     */
    record Least(double minutes, Optional<Reached> order) {}

    /**
     * Where an order has led to.
     *
     * @param moves so far
     * @param used options before which it turned, as a bit mask
     */
    record Reached(RemainingState state, List<Move> moves, int used, RowNeeds left) {

        double minutes() {
            return moves.stream().mapToDouble(Move::minutes).sum();
        }
    }

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
     * The least of all such orders. Empty if anything else is left, or whole turns are not what closes this.
     *
     * @param left of all rows
     * @param ports in their order
     * @param most turns to be followed
     */
    static Optional<Least> least(
            RemainingState start, List<RowNeeds> left, List<String> ports, Prices prices, int most) {
        return left.stream()
                .filter(needs -> left.size() == 1 && nothingSeen(needs))
                .filter(needs ->
                        !start.slack(needs.row(), needs.options().get(0)).none())
                .findFirst()
                .flatMap(needs -> new EveryOrder(start, needs, ports, prices).least(start, needs, most));
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

    private Optional<Least> least(RemainingState start, RowNeeds needs, int most) {
        reached(new Reached(start, List.of(), 0, needs));
        while (!queue.isEmpty()) {
            Node node = queue.remove();
            boolean all = node.from().left().none();
            if (all || followed >= most) {
                return Optional.of(
                        new Least(node.atLeast(), Optional.of(node.from()).filter(from -> all)));
            }
            if (node.next().isPresent()) {
                follow(node.from(), node.next().getAsInt());
            } else {
                goOn(node);
            }
        }
        return Optional.empty();
    }

    private void reached(Reached there) {
        List<Left> left = there.left().kinds().stream()
                .map(kind -> new Left(kind.airfoils(), kind.seen(), kind.shown()))
                .toList();
        RemainingState state = there.state();
        Key key = new Key(there.used(), state.now().seat(), state.place(row), left);
        double minutes = there.minutes();
        if (closesAll(state, there.left()) && minutes < known.getOrDefault(key, Double.POSITIVE_INFINITY)) {
            known.put(key, minutes);
            add(there, OptionalInt.empty(), minutes);
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
                    Reached turned = reached(from.moves(), whole, used);
                    reached(turned);
                    Spoken.further(whole.after(), problem, work)
                            .filter(more -> bound.nearLandmark(more.after(), option))
                            .ifPresent(more -> reached(reached(turned.moves(), more, used)));
                }
            }
        }
    }

    private Reached reached(List<Move> before, Spoken.Done done, int used) {
        List<Move> moves = new ArrayList<>(before);
        moves.add(done.move());
        return new Reached(done.after(), List.copyOf(moves), used, left(done.after()));
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
