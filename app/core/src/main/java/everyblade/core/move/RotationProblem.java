package everyblade.core.move;

import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Landmark;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * One row, and what must pass before which station: in which order to go to the stations, where to begin at each and which
 * way to turn, so that it takes least time. Exact over all orders in which no port is entered twice, all beginnings and
 * both ways (dynamic programming over sets of stations).
 *
 * @param row that is turned, or round which the scope tip is drawn
 * @param turns whether it turns
 * @param ways in which it may be turned
 * @param rounds where a whole turn may be told by an airfoil that comes round again
 * @param aim how exactly an airfoil is put to the reference, ± degrees
 * @param shifted by how many airfoils a whole turn may have ended elsewhere than is said here: none to plan, some to bound
 * @param slack by how much it may be off where watching begins and ends
 * @param place clock angle of airfoil 1, degrees; empty if nobody knows
 * @param setBack where a row that stands still is from the scope tip as newly seated
 * @param fromAnywhere whether the way to where a stay begins costs nothing, since others turn the row in between
 * @param seated where the scope tip is
 * @param rank ports of lower rank come first
 */
record RotationProblem(
        Row row,
        boolean turns,
        Set<Direction> ways,
        Predicate<ViewOption> rounds,
        ToDoubleFunction<ViewOption> aim,
        int shifted,
        Slack slack,
        OptionalDouble place,
        OptionalDouble setBack,
        boolean fromAnywhere,
        Optional<ViewOption> seated,
        ToIntFunction<ViewOption> rank,
        Prices prices) {

    /**
     * From here on a rotor whose moves have errors is turned whole: it then ends where it began, at an airfoil that is
     * known, and that closes the count.
     */
    static final double NEARLY_WHOLE = 300;

    private static final double TURN = 360;
    private static final double ROUNDING = 1e-7;

    /**
     * What must pass before an option.
     *
     * @param windows by airfoil that must pass, where airfoil 1 then stands; none if a look is all that is sure
     * @param all whether every airfoil must pass, and the rotor is turned whole
     */
    record Stay(ViewOption option, List<VisibilityWindow> windows, boolean all) {

        Stay(ViewOption option, List<VisibilityWindow> windows) {
            this(option, windows, false);
        }
    }

    /** How a stay is done. */
    enum How {
        /** A whole watched turn from an airfoil that is known until it is back. */
        ROUND,
        /** A whole watched turn from wherever it stands, and as much further as it may be off. */
        WHOLE,
        /** Watched stretches. */
        SWEEP,
        /** A look at rest. */
        LOOK
    }

    /**
     * A stay, and how it is done.
     *
     * @param rising whether clock angles rise on the way
     * @param landmark of a round
     * @param minutes it takes once there
     */
    record Work(Stay stay, How how, Optional<Sweeping> sweeping, boolean rising, OptionalInt landmark, double minutes) {

        Work(Stay stay, How how, double minutes) {
            this(stay, how, Optional.empty(), true, OptionalInt.empty(), minutes);
        }

        ViewOption option() {
            return stay.option();
        }
    }

    /** Works in order, and the minutes they take with all that leads to them. */
    record Course(List<Work> works, double minutes) {}

    /**
     * Of a row as it stands.
     *
     * @param options of the row
     */
    static RotationProblem of(
            RemainingState state,
            Row row,
            List<ViewOption> options,
            Slack slack,
            boolean fromAnywhere,
            ToIntFunction<ViewOption> rank,
            Prices prices) {
        return new RotationProblem(
                row,
                RemainingState.turns(row),
                state.ways(row),
                option -> state.rounds(row, option),
                option -> state.aim(row, option),
                0,
                slack,
                state.clock(row),
                state.setBack(row),
                fromAnywhere,
                state.seated(options),
                rank,
                prices);
    }

    /** The same where nobody says a whole turn as a round. */
    RotationProblem withoutRounds() {
        return with(option -> false, shifted);
    }

    /** The same for whoever may go a little further after each whole turn: what it takes is no more than that. */
    RotationProblem loosely() {
        return with(rounds, ToldBy.FURTHEST);
    }

    private RotationProblem with(Predicate<ViewOption> rounds, int shifted) {
        return new RotationProblem(
                row, turns, ways, rounds, aim, shifted, slack, place, setBack, fromAnywhere, seated, rank, prices);
    }

    /**
     * The quickest course through all stays.
     *
     * @param works of each stay, every sensible way of doing it
     */
    Course course(List<List<Work>> works) {
        return new CourseSearch(this, works).quickest();
    }

    /** Every sensible way of doing a stay. */
    List<Work> works(Stay stay) {
        if (!stay.option().travels() || !stay.all() && stay.windows().isEmpty()) {
            return List.of(new Work(stay, How.LOOK, prices.watching(0)));
        }
        List<Sweeping> sweepings = stay.all()
                ? List.of()
                : Sweeping.of(
                        stay.windows().stream()
                                .map(window -> window.safe(slack))
                                .toList(),
                        prices);
        double least = sweepings.stream().mapToDouble(Sweeping::length).min().orElse(TURN);
        boolean whole = least >= TURN - ROUNDING || !slack.none() && least >= NEARLY_WHOLE;
        List<Work> works = new ArrayList<>();
        boolean told = rounds.test(stay.option());
        if (whole && told) {
            for (int landmark : landmarks()) {
                works.add(new Work(
                        stay,
                        How.ROUND,
                        Optional.empty(),
                        true,
                        OptionalInt.of(landmark),
                        prices.identification() + prices.watching(TURN)));
            }
        }
        if (whole && (!told || slack.none() && !stay.all())) {
            works.add(new Work(stay, How.WHOLE, prices.watching(TURN + slack.below() + slack.above())));
        }
        if (!whole) {
            works.addAll(sweeps(stay, sweepings));
        }
        return works;
    }

    private List<Work> sweeps(Stay stay, List<Sweeping> sweepings) {
        return sweepings.stream()
                .flatMap(sweeping -> ways.stream()
                        .map(way -> new Work(
                                stay,
                                How.SWEEP,
                                Optional.of(sweeping),
                                way == Direction.CW,
                                OptionalInt.empty(),
                                sweeping.minutes(prices))))
                .toList();
    }

    /** Watching may also begin right here, before anything comes into sight, if that saves a move. */
    List<Work> beginningHere(Stay stay, double here) {
        List<VisibilityWindow> andHere = new ArrayList<>(stay.windows());
        andHere.add(new VisibilityWindow(here, here));
        return sweeps(stay, Sweeping.of(andHere, prices));
    }

    /** Airfoils that can be told from the others; the first if none was described, to be marked. */
    List<Integer> landmarks() {
        return landmarks(row);
    }

    static List<Integer> landmarks(Row row) {
        return row.landmarks().isEmpty()
                ? List.of(1)
                : row.landmarks().stream().map(Landmark::airfoil).toList();
    }

    /** Where airfoil 1 stands while this one is at the reference of an option. */
    double atReference(ViewOption option, int airfoil) {
        return option.view().reference() - Engine.fromFirst(row, airfoil).degrees();
    }

    /** Degrees from one place to another, the shorter way of those allowed; positive clockwise. */
    double way(double from, double to) {
        return way(from, to, ways);
    }

    static double way(double from, double to, Set<Direction> ways) {
        double clockwise = (to - from) - TURN * Math.floor((to - from) / TURN);
        if (clockwise < ROUNDING || clockwise > TURN - ROUNDING) {
            return 0;
        }
        if (!ways.contains(Direction.CCW)) {
            return clockwise;
        }
        return ways.contains(Direction.CW) && clockwise <= TURN / 2 ? clockwise : clockwise - TURN;
    }

    /**
     * Minutes from where the row stands until a work can begin, without what it takes to get there with the scope tip.
     *
     * @param from clock angle of airfoil 1; empty if nobody knows
     * @param seated whether the scope tip is newly seated for it
     */
    double leading(Work work, OptionalDouble from, boolean seated) {
        if (from.isEmpty()) {
            return prices.searching() + (work.how() == How.ROUND ? 0 : prices.identification());
        }
        double here = seated && setBack.isPresent() ? setBack.getAsDouble() : from.getAsDouble();
        if (fromAnywhere) {
            return 0;
        }
        if (work.how() == How.ROUND) {
            return Math.min(bringing(work, here), prices.searching());
        }
        double way = way(here, begin(work, here));
        return Math.min(prices.turning(way), watchedToo(work, way)) + further(work, here);
    }

    /** Minutes to bring an airfoil to the reference from which a whole turn can be told. */
    private double bringing(Work work, double here) {
        if (shifted == 0) {
            return isTold(work, here) ? 0 : prices.turning(way(here, begin(work, here)));
        }
        return IntStream.rangeClosed(-shifted, shifted)
                .mapToDouble(apart -> here + apart * Engine.pitch(row))
                .map(there -> ToldBy.off(there, told(work, there)) - aim.applyAsDouble(work.option()))
                .map(off -> prices.turning(Math.max(0, off - ROUNDING)))
                .min()
                .orElseThrow();
    }

    /** Where airfoil 1 stands while the landmark of a round is at the reference, or the airfoil beside it that is nearest. */
    private double told(Work work, double here) {
        return ToldBy.nearest(
                row, work.landmark().getAsInt(), here, work.option().view().reference(), ToldBy.BESIDE);
    }

    private boolean isTold(Work work, double here) {
        return ToldBy.off(here, told(work, here)) <= aim.applyAsDouble(work.option()) + ROUNDING;
    }

    /** What the way costs if it is watched too, as a part of the move that follows; not where that goes the other way. */
    double watchedToo(Work work, double way) {
        boolean joins = work.how() == How.SWEEP && way > 0 == work.rising();
        return joins ? prices.watching(way) - prices.watching(0) : Double.POSITIVE_INFINITY;
    }

    /** What a sweep costs more for beginning where it best begins for whoever comes from here. */
    private double further(Work work, double here) {
        return work.how() == How.SWEEP
                ? prices.unwatched() * work.sweeping().get().longer(begin(work, here), work.rising()) / TURN
                : 0;
    }

    /** Where a work begins, for whoever comes from here. */
    double begin(Work work, double here) {
        return switch (work.how()) {
            case ROUND ->
                isTold(work, here)
                        ? told(work, here)
                        : atReference(work.option(), work.landmark().getAsInt());
            case SWEEP -> work.sweeping().get().begin(here, work.rising(), this::way);
            case WHOLE, LOOK -> here;
        };
    }

    OptionalDouble after(Work work, OptionalDouble from) {
        double here =
                from.orElseGet(() -> atReference(work.option(), landmarks().get(0)));
        double end = work.how() == How.SWEEP && work.sweeping().get().length() > 0
                ? work.rising()
                        ? work.sweeping().get().to()
                        : work.sweeping().get().from()
                : begin(work, here);
        return OptionalDouble.of(end - TURN * Math.floor(end / TURN));
    }
}
