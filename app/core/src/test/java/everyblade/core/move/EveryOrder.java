package everyblade.core.move;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.gap.Gaps;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.turning.Fold;
import everyblade.spi.Port;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The least minutes in which a rotor of which nothing was seen is turned whole before stations that are enough together: every
 * set of them in every order in which no port is entered twice, from every airfoil that can be told, each turn with and without
 * going a little further, followed through fold and coverage. Slow: some seconds a row.
 */
final class EveryOrder {

    private static final double ROUNDING = 1e-6;

    private final Row row;
    private final Prices prices;
    private final List<ViewOption> options;
    private final List<Integer> enough;
    private final Map<String, Double> known = new HashMap<>();
    private double best;
    private int tried;

    /** A turn, perhaps with a little more, and where it leads. */
    private record Turned(int option, double minutes, RemainingState after) {}

    private EveryOrder(RemainingState state, Row row, Prices prices, double best) {
        this.row = row;
        this.prices = prices;
        this.best = best;
        Coverage coverage = state.coverage();
        options = ViewOption.of(coverage, coverage.row(row.id()));
        RowNeeds needs = RowNeeds.of(coverage, row, OptionalDouble.empty(), options);
        if (needs.kinds().size() != 1 || needs.kinds().get(0).airfoils().cardinality() != row.count()) {
            throw new IllegalArgumentException("something was seen of " + row.id());
        }
        enough = IntStream.range(1, 1 << options.size())
                .filter(set -> needs.covers(set, needs.kinds().get(0)))
                .boxed()
                .toList();
    }

    /**
     * The least minutes there are.
     *
     * @param known minutes of some plan
     */
    static EveryOrder of(Fold fold, Coverage coverage, Row row, Prices prices, double known) throws Exception {
        RemainingState state = new RemainingState(Trial.of(fold), coverage);
        EveryOrder search = new EveryOrder(state, row, prices, known);
        search.go(state, 0, 0, Set.of());
        return search;
    }

    double minutes() {
        return best;
    }

    /** How many turns were followed. */
    int tried() {
        return tried;
    }

    private void go(RemainingState state, int used, double minutes, Set<String> left) {
        if (minutes + ahead(state, used) >= best - ROUNDING || seenBefore(state, used, minutes)) {
            return;
        }
        if (enough.contains(used) && closed(state)) {
            best = minutes;
            return;
        }
        List<Turned> next = new ArrayList<>();
        for (int option = 0; option < options.size(); option++) {
            if ((used >> option & 1) == 0 && !left.contains(port(option))) {
                next.addAll(turned(state, option));
            }
        }
        next.sort(Comparator.comparingDouble(Turned::minutes));
        for (Turned turned : next) {
            Set<String> shut = new HashSet<>(left);
            state.port().filter(port -> !port.equals(port(turned.option()))).ifPresent(shut::add);
            go(turned.after(), used | 1 << turned.option(), minutes + turned.minutes(), shut);
        }
    }

    private String port(int option) {
        return PortChoice.portOf(options.get(option));
    }

    /** What every way from here to a set that is enough takes at least: ports, seats and turns, without ways and seams. */
    private double ahead(RemainingState state, int used) {
        return enough.stream()
                .filter(set -> (set & used) == used)
                .mapToDouble(set -> {
                    Set<String> ports = new HashSet<>();
                    Map<String, Integer> views = new HashMap<>();
                    double sum = 0;
                    for (int option = 0; option < options.size(); option++) {
                        if (((set & ~used) >> option & 1) != 0) {
                            ViewOption to = options.get(option);
                            ports.add(port(option));
                            views.merge(to.view().id(), 1, Integer::sum);
                            sum += prices.watching(TypedDegrees.TURN);
                        }
                    }
                    Set<String> open = state.now().ledger().openings().keySet();
                    sum += prices.port()
                            * ports.stream()
                                    .filter(port -> !open.contains(port))
                                    .count();
                    Optional<String> here =
                            state.now().seat().map(seat -> seat.view().id());
                    for (Map.Entry<String, Integer> view : views.entrySet()) {
                        boolean there = here.equals(Optional.of(view.getKey()));
                        sum += there
                                ? prices.station() * view.getValue()
                                : prices.view() + prices.station() * (view.getValue() - 1);
                    }
                    return sum;
                })
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean seenBefore(RemainingState state, int used, double minutes) {
        RowCoverage of = state.coverage().row(row.id());
        List<BitSet> seen =
                IntStream.rangeClosed(1, row.count()).mapToObj(of::surely).toList();
        String key = used + " " + state.now().seat() + " " + state.clock(row) + " " + seen;
        Double before = known.get(key);
        if (before != null && before <= minutes + ROUNDING) {
            return true;
        }
        known.put(key, minutes);
        return false;
    }

    private boolean closed(RemainingState state) {
        return IntStream.rangeClosed(1, row.count())
                .allMatch(n -> Gaps.within(state.coverage().row(row.id()), n).isEmpty());
    }

    private List<Turned> turned(RemainingState state, int option) {
        List<Turned> all = new ArrayList<>();
        ViewOption at = options.get(option);
        RotationProblem problem = problem(state, at);
        for (Work work : problem.works(new Stay(at, List.of(), true))) {
            tried++;
            for (Spoken.Done whole : Spoken.of(state, problem, work)) {
                double minutes = whole.move().minutes();
                all.add(new Turned(option, minutes, whole.after()));
                Spoken.further(whole.after(), problem, work)
                        .ifPresent(more ->
                                all.add(new Turned(option, minutes + more.move().minutes(), more.after())));
            }
        }
        return all;
    }

    private RotationProblem problem(RemainingState state, ViewOption at) {
        List<String> ports =
                state.now().engine().model().ports().stream().map(Port::id).toList();
        return new RotationProblem(
                row,
                true,
                state.ways(row),
                true,
                state.slack(row, at),
                state.clock(row),
                OptionalDouble.empty(),
                false,
                state.seated(options),
                option -> ports.indexOf(PortChoice.portOf(option)),
                prices);
    }
}
