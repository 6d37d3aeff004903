package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Says a work as entries that a person can do: tries the ways of saying it, and takes the first that the record would keep
 * without calling anything out.
 */
final class Spoken {

    private static final double NOTHING = 1e-9;

    private final RemainingState state;
    private final RotationProblem problem;
    private final Work work;
    private final Row row;

    private Spoken(RemainingState state, RotationProblem problem, Work work) {
        this.state = state;
        this.problem = problem;
        this.work = work;
        this.row = problem.row();
    }

    /** A move, and the state after it. */
    record Done(Move move, RemainingState after) {

        private int cells() {
            return move.closes().stream()
                    .mapToInt(closing ->
                            closing.airfoils().size() * closing.zones().size())
                    .sum();
        }
    }

    /** The moves of a work; none if it may not be done, or shows nothing. */
    static List<Done> of(RemainingState state, RotationProblem problem, Work work) {
        if (work.how() != How.SWEEP) {
            Stream<Saying> ways = new Sayings(state, problem, work).whole();
            return new Spoken(state, problem, work).first(ways).stream().toList();
        }
        List<Done> moves = new ArrayList<>();
        List<Sweeping.Stretch> stretches = work.sweeping().get().stretches();
        RemainingState at = state;
        for (int i = 0; i < stretches.size(); i++) {
            Sweeping.Stretch stretch = stretches.get(work.rising() ? i : stretches.size() - 1 - i);
            Stream<Saying> ways = new Sayings(at, problem, work).stretch(stretch, i == 0);
            Optional<Done> done = new Spoken(at, problem, work).first(ways);
            if (done.isEmpty()) {
                return moves;
            }
            moves.add(done.get());
            at = done.get().after();
        }
        return moves;
    }

    /**
     * The move that goes a little further after a whole turn, so that its seam is seen too: to the next airfoil, or past as many
     * as one may be taken for here if that closes more. Empty if neither shows anything.
     */
    static Optional<Done> further(RemainingState state, RotationProblem problem, Work work) {
        Sayings sayings = new Sayings(state, problem, work);
        Slack here = state.slack(problem.row(), work.option());
        Spoken spoken = new Spoken(state, problem, work);
        Optional<Done> next = spoken.first(sayings.further(problem.slack()));
        return here.below() + here.above() <= Engine.pitch(problem.row())
                ? next
                : Stream.concat(next.stream(), spoken.first(sayings.further(here)).stream())
                        .max(Comparator.comparingInt(Done::cells));
    }

    /** The first way that is kept without being called out, else the one that is called out least. */
    private Optional<Done> first(Stream<Saying> ways) {
        Done best = null;
        int least = Integer.MAX_VALUE;
        for (Iterator<Saying> rest = ways.iterator(); least > 0 && rest.hasNext(); ) {
            Saying way = rest.next();
            try {
                Trial after = state.trial().with(way.entries());
                int called = called(after);
                if (called < least) {
                    RemainingState later =
                            new RemainingState(after, state.coverage().afterWatching(row, after.situation()));
                    if (later.seen(row) > state.seen(row) + NOTHING) {
                        best = new Done(move(way, later), later);
                        least = called;
                    }
                }
            } catch (Refusal notThisWay) {
                continue;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * How much speaks against it: each warning, that nobody knows any more which airfoil is where, and, least of all, that the
     * next move would be warned of.
     */
    private int called(Trial after) throws Refusal {
        if (!problem.turns()) {
            return 2 * after.warnings();
        }
        RemainingState then = new RemainingState(after, state.coverage());
        Turn reading = then.now().reading(row);
        boolean warned = false;
        for (Direction way : state.ways(row)) {
            Turn little = TypedDegrees.turn(way.sign());
            Entry next = state.steered(row).unwatched(reading.plus(little), little);
            warned |= after.with(next).warnings() > 0;
        }
        return 2 * after.warnings() + (then.place(row).isEmpty() ? 2 : 0) + (warned ? 1 : 0);
    }

    private Move move(Saying way, RemainingState later) {
        return new Move(
                row,
                work.option().view(),
                work.option().station(),
                !work.option().holds(state.now().seat()) || takenAnew(way),
                way.identifies(),
                TypedDegrees.number(way.closing()),
                TypedDegrees.number(way.way()),
                way.from(),
                TypedDegrees.number(way.sweep()),
                !problem.turns(),
                way.round(),
                state.now().engine().zonings().get(row.id()).all(),
                way.entries(),
                minutes(way),
                state.closed(row, later));
    }

    /** Whether the view that the scope tip is in is taken once more. */
    private boolean takenAnew(Saying way) {
        return work.option().through(state.now().seat())
                && way.entries().stream().anyMatch(entry -> entry instanceof LookEntry.View);
    }

    private double minutes(Saying way) {
        boolean opens = way.entries().stream().anyMatch(entry -> entry instanceof RecordEntry.Open);
        boolean searches = way.identifies().isPresent() && (way.from().isEmpty() || !way.round());
        long identified = way.entries().stream()
                .filter(entry -> EntryKind.of(entry).identifies())
                .count();
        Prices prices = problem.prices();
        return work.option()
                        .away(takenAnew(way) ? Optional.empty() : state.now().seat(), prices)
                + (opens ? prices.port() : 0)
                + prices.identification() * identified
                + (searches ? prices.searching() : 0)
                + prices.turning(way.closing())
                + prices.turning(way.way())
                + prices.watching(way.sweep());
    }
}
