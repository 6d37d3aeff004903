package everyblade.core.move;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import everyblade.core.move.CoverSearch.RowPlan;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Reach;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Seat;
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
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;
import java.util.function.Predicate;

/**
 * Plans what closes all gaps, port by port: the port in use first, then those that are open, then the others in the
 * model's order, and each is finished before it is left. Every move is followed through fold and coverage before it is
 * given away, so what it claims is so.
 */
public final class PlanBuilder {

    /** How often a row is gone back to where moves showed less than they should. */
    private static final int MOST_TRIES = 4;

    private static final double ROUNDING = 1e-6;

    private static final int MOST_STAYS = 40;
    /** To prove a plan the least, a second of trying at most. */
    private static final int MOST_TURNS = 300;

    private final Prices prices;
    private final int most;
    private final Progress watching;
    private final List<Move> moves = new ArrayList<>();
    /** Options of rows that showed nothing in this try, or from which nothing may be turned. */
    private final Set<ViewOption> vain = new HashSet<>();

    private final Map<String, Slack> slacks = new HashMap<>();
    /** A row is asked about again and again before anything of it is watched. */
    private final Map<Asked, RowNeeds> needs = new HashMap<>();

    private final Map<Showing, List<ViewOption>> options = new HashMap<>();

    private final RemainingState start;

    private RemainingState state;
    /** Of the first choice, which is over all that is left. */
    private double bound;

    private LeastTurns least = LeastTurns.NONE;
    /** Of whole turns in every order; empty if more than such turns is left. */
    private Optional<EveryOrder.Least> orders = Optional.empty();

    /**
     * What is asked about a row.
     *
     * @param first clock angle of airfoil 1, where it is known
     * @param may be used, of its options
     */
    private record Asked(RowCoverage of, OptionalDouble first, BitSet may) {}

    /** What the options of a row rest on. */
    private record Showing(String row, Optional<List<Reach.FromStation>> stations) {

        static Showing of(RowCoverage row) {
            return new Showing(row.row().id(), row.reach().map(Reach::stations));
        }
    }

    private PlanBuilder(RemainingState state, Prices prices, int most, Progress watching) {
        this.watching = watching;
        this.start = state;
        this.state = state;
        this.prices = prices;
        this.most = most;
    }

    /**
     * The moves that close all gaps of a fold.
     *
     * @param coverage of this fold
     */
    public static Plan of(Fold fold, Coverage coverage, Prices prices) {
        PlanBuilder builder = built(fold, coverage, prices, Integer.MAX_VALUE, Progress.NONE);
        builder.orders.flatMap(EveryOrder.Least::order).ifPresent(builder::takeIfLess);
        return new Plan(builder.moves, builder.bound(), left(coverage, Gaps::beyond), builder.open(), builder.least);
    }

    /**
     * The first of these moves; empty if none closes anything.
     *
     * @param watching may stop it; it then ends with a {@link CancellationException}
     */
    public static Optional<Move> next(Fold fold, Coverage coverage, Prices prices, Progress watching) {
        return built(fold, coverage, prices, 1, watching).moves.stream().findFirst();
    }

    private static PlanBuilder built(Fold fold, Coverage coverage, Prices prices, int most, Progress watching) {
        try {
            RemainingState now = new RemainingState(Trial.of(fold), coverage);
            PlanBuilder builder = new PlanBuilder(now, prices, most, watching);
            for (int tries = 0; tries < MOST_TRIES && (tries == 0 || builder.goesOn()); tries++) {
                List<RowNeeds> open = builder.left();
                PortChoice choice = builder.choice(open, true);
                if (tries == 0) {
                    builder.bound = choice.bound();
                    if (most == Integer.MAX_VALUE) {
                        builder.least = LeastTurns.of(open);
                        builder.orders = EveryOrder.least(now, open, builder.ports(), prices, MOST_TURNS);
                    }
                }
                builder.follow(choice);
                // What showed nothing then may show what was left since.
                builder.vain.clear();
            }
            return builder;
        } catch (Refusal refused) {
            throw new IllegalStateException("a planned entry was refused: " + refused.getMessage(), refused);
        }
    }

    /** An order that takes less does instead, if it begins with the move that is told as the next. */
    private void takeIfLess(EveryOrder.Reached order) {
        if (order.minutes() < minutes() - ROUNDING && begin(order.moves()).equals(begin(moves))) {
            moves.clear();
            moves.addAll(order.moves());
            state = order.state();
        }
    }

    private static Optional<List<Entry>> begin(List<Move> moves) {
        return moves.stream().findFirst().map(Move::entries);
    }

    private double minutes() {
        return moves.stream().mapToDouble(Move::minutes).sum();
    }

    /**
     * Both bounds are of plans that say a whole turn as a round, if an airfoil can be told there; one that takes less says some
     * turn otherwise, and then only what holds for such turns does.
     */
    private double bound() {
        double minutes = minutes();
        double rounds = Math.max(bound, orders.map(EveryOrder.Least::minutes).orElse(bound));
        if (rounds <= minutes + ROUNDING) {
            return rounds;
        }
        PlanBuilder otherwise = new PlanBuilder(start, prices, most, watching);
        return Math.min(minutes, otherwise.choice(otherwise.left(), false).bound());
    }

    /** How many cells are left, by why. */
    private static SortedMap<Why, Integer> left(Coverage coverage, BiFunction<RowCoverage, Integer, ZoneSet> which) {
        SortedMap<Why, Integer> cells = new TreeMap<>();
        for (RowCoverage row : coverage.rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                ZoneSet zones = which.apply(row, n);
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    if (zones.contains(zone)) {
                        cells.merge(row.why(n, zone).orElseThrow(), 1, Integer::sum);
                    }
                }
            }
        }
        return cells;
    }

    private SortedMap<Why, Integer> open() {
        return left(state.coverage().after(state.now()), Gaps::within);
    }

    private boolean goesOn() {
        return moves.size() < most
                && rows().stream().anyMatch(row -> !needs(row, option -> true).none());
    }

    /** All rows, the one in view first. */
    private List<Row> rows() {
        Optional<Row> inView = state.now().seat().map(Seat::row);
        return state.now().engine().rows().values().stream()
                .sorted(Comparator.comparing(row -> !inView.equals(Optional.of(row))))
                .toList();
    }

    private List<ViewOption> optionsOf(Row row) {
        RowCoverage of = state.coverage().row(row.id());
        return options.computeIfAbsent(Showing.of(of), showing -> ViewOption.of(state.coverage(), of));
    }

    private RowNeeds needs(Row row, Predicate<ViewOption> allowed) {
        if (watching.cancelled()) {
            throw new CancellationException();
        }
        RowCoverage of = state.coverage().row(row.id());
        List<ViewOption> all = state.anyLeft(row) ? optionsOf(row) : List.of();
        BitSet may = new BitSet();
        for (int i = 0; i < all.size(); i++) {
            may.set(i, allowed.test(all.get(i)) && !vain.contains(all.get(i)));
        }
        OptionalDouble first = state.setBackOrClock(row);
        return needs.computeIfAbsent(
                new Asked(of, first, may),
                asked -> RowNeeds.of(
                        state.coverage(),
                        row,
                        first,
                        may.stream().mapToObj(all::get).toList()));
    }

    /** What is left of each row of which anything is. */
    private List<RowNeeds> left() {
        return rows().stream()
                .map(row -> needs(row, option -> true))
                .filter(needs -> !needs.none())
                .toList();
    }

    /** @param rounds whether whole turns are told as rounds wherever they can be */
    private PortChoice choice(List<RowNeeds> open, boolean rounds) {
        List<String> order = ports();
        List<List<RowPlan>> plans = new ArrayList<>();
        for (RowNeeds needs : open) {
            // Where a shaft stands when the turn comes to a row is not known while others turn it too.
            boolean shared = open.stream()
                    .anyMatch(other -> other != needs
                            && RemainingState.turns(needs.row())
                            && RemainingState.turns(other.row())
                            && other.row().spool().equals(needs.row().spool()));
            RotationProblem problem = problem(needs, order, shared);
            plans.add(CoverSearch.of(needs, rounds ? problem : problem.withoutRounds()));
        }
        return PortChoice.of(order, plans, port -> openingPrice(port));
    }

    private double openingPrice(String port) {
        return state.now().ledger().openings().containsKey(port) ? 0 : prices.port();
    }

    /** All ports, first the one in use, then those that are open. */
    private List<String> ports() {
        Set<String> open = state.now().ledger().openings().keySet();
        Optional<String> inUse = state.port();
        return state.now().engine().model().ports().stream()
                .map(Port::id)
                .sorted(Comparator.comparing((String port) -> !inUse.equals(Optional.of(port)))
                        .thenComparing(port -> !open.contains(port)))
                .toList();
    }

    private RotationProblem problem(RowNeeds needs, List<String> order, boolean fromAnywhere) {
        Row row = needs.row();
        return RotationProblem.of(
                state,
                row,
                needs.options(),
                slack(row, needs.options().get(0)),
                fromAnywhere,
                option -> option.view().port().map(order::indexOf).orElse(-1),
                prices);
    }

    /** The same at every stop that is known, and at every one that is not: worth finding out once. */
    private Slack slack(Row row, ViewOption option) {
        String key = option.view().id()
                + state.ways(row)
                + state.place(row).isPresent()
                + state.steered(row).plusMinus();
        return slacks.computeIfAbsent(key, one -> state.slack(row, option));
    }

    private void follow(PortChoice choice) {
        List<String> left = new ArrayList<>(choice.ports());
        left.add(0, PortChoice.NO_PORT);
        while (!left.isEmpty() && moves.size() < most) {
            String port = left.get(0);
            for (Row row : rows()) {
                finish(row, port, left);
            }
            left.remove(0);
        }
    }

    /** The plan as it was when a whole turn at an option had been done. */
    private record Turned(RemainingState state, int moves) {}

    /**
     * Does at a port whatever a row needs there, so that the ports to come can do the rest. Whoever would have to come back to
     * an option for the seam of its turn, or to turn once more, goes a little further at once instead, while the scope tip is
     * still there.
     */
    private void finish(Row row, String port, List<String> ports) {
        if (optionsOf(row).stream()
                .noneMatch(option -> PortChoice.portOf(option).equals(port))) {
            return;
        }
        Map<ViewOption, Turned> turned = new HashMap<>();
        if (state.turnedWhole()) {
            optionsOf(row).stream()
                    .filter(option -> option.holds(state.now().seat()))
                    .forEach(option -> turned.put(option, new Turned(state, moves.size())));
        }
        // What comes next after a whole turn hangs on whether somebody would have to come back.
        int enough = turned.isEmpty() ? most : Integer.MAX_VALUE;
        for (int done = 0; done < MOST_STAYS && moves.size() < enough; done++) {
            RowNeeds needs = needs(row, option -> ports.contains(PortChoice.portOf(option)));
            boolean anyHere = needs.options().stream()
                    .anyMatch(option -> PortChoice.portOf(option).equals(port));
            if (needs.none() || !anyHere) {
                return;
            }
            RotationProblem problem = problem(needs, ports, false);
            Optional<Work> here = CoverSearch.of(needs, problem).stream()
                    .min(Comparator.comparingDouble(RowPlan::minutes))
                    .flatMap(plan -> plan.course().works().stream().findFirst())
                    .filter(work -> PortChoice.portOf(work.option()).equals(port));
            if (here.isEmpty()) {
                return;
            }
            Work work = here.get();
            if (!wentFurther(problem, work, turned)) {
                say(problem, work);
                if (state.turnedWhole()) {
                    turned.put(work.option(), new Turned(state, moves.size()));
                }
            }
        }
    }

    /** Takes back what was planned since the whole turn at an option, if a little further there shows more. */
    private boolean wentFurther(RotationProblem problem, Work work, Map<ViewOption, Turned> turned) {
        Optional<Turned> since = Optional.ofNullable(turned.remove(work.option()));
        Optional<Spoken.Done> further = since.flatMap(then -> Spoken.further(then.state(), problem, work));
        further.ifPresent(done -> {
            moves.subList(since.get().moves(), moves.size()).clear();
            turned.values().removeIf(other -> other.moves() > moves.size()); // they are taken back with them
            moves.add(done.move());
            state = done.after();
        });
        return further.isPresent();
    }

    private void say(RotationProblem problem, Work work) {
        List<Spoken.Done> done = Spoken.of(state, problem, work);
        if (done.isEmpty()) {
            vain.add(work.option());
        }
        for (Spoken.Done one : done) {
            moves.add(one.move());
            state = one.after();
        }
    }
}
