package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.spi.Direction;
import everyblade.spi.Landmark;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Says a work as entries that a person can do: tries the ways of saying it, in the order in which a person would prefer
 * them, and takes the first that the record would keep without calling anything out.
 */
final class Spoken {

    private static final double TURN = 360;
    private static final double NOTHING = 1e-9;
    private static final double TENTH = 0.1;
    /** Not more than this is still a little further. */
    private static final double LITTLE = 30;

    private static final double FINEST = 1e-5;
    /** Share of a step that is taken for a slip of arithmetic. */
    private static final double ROUNDING = 1e-3;

    private final RemainingState state;
    private final RotationProblem problem;
    private final Work work;
    private final Row row;
    private final Prices prices;
    private final Steered steered;

    private Spoken(RemainingState state, RotationProblem problem, Work work) {
        this.state = state;
        this.problem = problem;
        this.work = work;
        this.row = problem.row();
        this.prices = problem.prices();
        this.steered = new Steered(state.spool(row));
    }

    /** A move, and the state after it. */
    record Done(Move move, RemainingState after) {}

    /** One way of saying a part of a work. */
    private record Saying(
            List<Entry> entries,
            OptionalInt identifies,
            double way,
            Optional<BigDecimal> from,
            double sweep,
            boolean round) {}

    /** The moves of a work; none if it may not be done, or shows nothing. */
    static List<Done> of(RemainingState state, RotationProblem problem, Work work) {
        if (work.how() != How.SWEEP) {
            return new Spoken(state, problem, work).whole().stream().toList();
        }
        List<Done> moves = new ArrayList<>();
        List<Sweeping.Stretch> stretches = work.sweeping().get().stretches();
        RemainingState at = state;
        for (int i = 0; i < stretches.size(); i++) {
            Sweeping.Stretch stretch = stretches.get(work.rising() ? i : stretches.size() - 1 - i);
            Optional<Done> done = new Spoken(at, problem, work).stretch(stretch, i == 0);
            if (done.isEmpty()) {
                return moves;
            }
            moves.add(done.get());
            at = done.get().after();
        }
        return moves;
    }

    private Optional<Done> whole() {
        List<Saying> ways = new ArrayList<>();
        if (work.how() == How.LOOK) {
            ways.addAll(look());
        }
        if (work.how() == How.ROUND) {
            ways.addAll(rounds(work.landmark().getAsInt()));
        }
        ways.addAll(wholeTurns());
        return first(ways);
    }

    private Optional<Done> stretch(Sweeping.Stretch stretch, boolean first) {
        List<Saying> ways = new ArrayList<>(first ? further() : List.of());
        ways.addAll(stretches(stretch, first));
        if (problem.rounds()) {
            problem.landmarks().forEach(landmark -> ways.addAll(rounds(landmark)));
            problem.landmarks().forEach(landmark -> ways.addAll(roundsAndOne(landmark)));
        }
        return first(ways);
    }

    /** The first way that is kept without being called out, else the one that is called out least. */
    private Optional<Done> first(List<Saying> ways) {
        Done best = null;
        int least = Integer.MAX_VALUE;
        for (Saying way : ways) {
            try {
                Trial after = state.trial().with(way.entries());
                if (after.warnings() < least) {
                    RemainingState later =
                            new RemainingState(after, state.coverage().afterWatching(row, after.situation()));
                    if (later.seen(row) > state.seen(row) + NOTHING) {
                        best = new Done(move(way, later), later);
                        least = after.warnings();
                    }
                }
            } catch (Refusal notThisWay) {
                continue;
            }
            if (least == 0) {
                break;
            }
        }
        return Optional.ofNullable(best);
    }

    private Move move(Saying way, RemainingState later) {
        return new Move(
                row,
                work.option().view(),
                work.option().station(),
                !work.option().holds(state.now().seat()),
                way.identifies(),
                number(way.way()),
                way.from(),
                number(way.sweep()),
                !problem.turns(),
                way.round(),
                state.now().engine().zonings().get(row.id()).all(),
                way.entries(),
                minutes(way),
                state.closed(row, later));
    }

    private double minutes(Saying way) {
        boolean opens = way.entries().stream().anyMatch(entry -> entry instanceof Entry.Open);
        boolean searches = way.identifies().isPresent() && (way.from().isEmpty() || !way.round());
        long identified = way.entries().stream()
                .filter(entry ->
                        entry instanceof Entry.Here || entry instanceof Entry.Datum || entry instanceof Entry.Round)
                .count();
        return work.option().away(state.now().seat(), prices)
                + (opens ? prices.port() : 0)
                + prices.identification() * identified
                + (searches ? prices.searching() : 0)
                + prices.turning(way.way())
                + prices.watching(way.sweep());
    }

    private List<Saying> look() {
        return known().stream()
                .map(before -> new Saying(
                        with(before, new Entry.Look(Optional.empty(), Optional.empty())),
                        identified(before),
                        0,
                        Optional.of(shown(reading())),
                        0,
                        false))
                .toList();
    }

    private List<Saying> rounds(int landmark) {
        List<Saying> ways = new ArrayList<>();
        Entry round = new Entry.Round(new Said<>(landmark, 1), Optional.empty(), Optional.empty());
        double full = state.spool(row).map(Spool::normal).orElse(Direction.CW).sign() * TURN;
        OptionalDouble here = state.clock(row);
        if (here.isPresent()) {
            double grid = problem.slack().none() ? FINEST : TENTH;
            double way = problem.way(here.getAsDouble(), problem.atReference(work.option(), landmark));
            double to = Math.abs(way) < grid / 2 ? reading() : nearest(reading() + way, grid);
            List<Entry> said = to == reading()
                    ? seatings().get(0)
                    : with(seatings().get(0), steered.unwatched(turn(to), turn(to - reading())));
            ways.add(new Saying(
                    with(said, round), OptionalInt.of(landmark), to - reading(), Optional.of(shown(to)), full, true));
        }
        for (List<Entry> seating : seatings()) {
            List<Entry> said = state.anyKnown(row) ? with(seating, new Entry.Slip()) : seating;
            ways.add(new Saying(with(said, round), OptionalInt.of(landmark), 0, Optional.empty(), full, true));
        }
        return ways;
    }

    /** A round, and the next airfoil once more: its turn has no seam. */
    private List<Saying> roundsAndOne(int landmark) {
        return rounds(landmark).stream()
                .map(round -> new Saying(
                        with(round.entries(), steered.watchedBlades(1, round.sweep() > 0)),
                        round.identifies(),
                        round.way(),
                        round.from(),
                        round.sweep() + Math.signum(round.sweep()) * Engine.pitch(row),
                        true))
                .toList();
    }

    private List<Saying> wholeTurns() {
        double seam = Math.ceil(problem.slack().below() + problem.slack().above());
        double sweep = state.usual(row).sign() * (TURN + seam);
        boolean back = !problem.turns() && !work.option().holds(state.now().seat());
        return known().stream()
                .map(before -> new Saying(
                        with(before, steered.watched(turn(sweep))),
                        identified(before),
                        0,
                        identified(before).isPresent() || back ? Optional.empty() : Optional.of(shown(reading())),
                        sweep,
                        false))
                .toList();
    }

    private List<Saying> stretches(Sweeping.Stretch stretch, boolean first) {
        List<Saying> ways = new ArrayList<>();
        for (List<Entry> before : known()) {
            try {
                RemainingState there = new RemainingState(state.trial().with(before), state.coverage());
                if (there.place(row).isPresent()) {
                    Saying plain = stretch(stretch, first, before, there, 1);
                    ways.add(plain);
                    if (plain.sweep() == 0) {
                        ways.add(stretch(stretch, first, before, there, -1));
                    }
                    byBlades(plain, before).ifPresent(ways::add);
                }
            } catch (Refusal notThisWay) {
                continue;
            }
        }
        return ways;
    }

    /**
     * Rounded outwards: watching begins a little earlier and ends a little later, never the other way. A look is rounded up
     * or down, since either may be just out of sight.
     */
    private Saying stretch(
            Sweeping.Stretch stretch, boolean first, List<Entry> before, RemainingState there, int lookUp) {
        double here = there.clock(row).getAsDouble();
        double reading = there.now().reading(row).degrees();
        int sense = work.rising() ? 1 : -1;
        double length = stretch.to() - stretch.from();
        double begin = length == 0 && first ? problem.begin(work, here) : work.rising() ? stretch.from() : stretch.to();
        double way = first ? problem.way(here, begin) : sense * wrapped(sense * (begin - here));
        if (first && problem.watchedToo(work, way) <= prices.turning(way)) {
            length += Math.abs(way);
            way = 0;
        }
        double to = reading + way;
        boolean look = length == 0;
        double typed = way == 0 ? to : look ? lookUp * above(lookUp * to, FINEST) : sense * below(sense * to, grid());
        double sweep = look ? 0 : above(length + Math.abs(to - typed), grid());
        List<Entry> said =
                typed == reading ? before : with(before, steered.unwatched(turn(typed), turn(typed - reading)));
        return new Saying(
                with(said, steered.watched(turn(sense * sweep))),
                identified(before),
                typed - reading,
                Optional.of(shown(typed)),
                sense * sweep,
                false);
    }

    /**
     * A little further from where watching ended: what was left at the seam of a turn is then seen, since watching went on
     * without a break. To the next airfoil, so that one stands at the reference again.
     */
    private List<Saying> further() {
        if (!problem.turns()
                || problem.slack().none()
                || !work.option().holds(state.now().seat())
                || work.sweeping().get().length() > LITTLE) {
            return List.of();
        }
        double doubt = Math.ceil(problem.slack().below() + problem.slack().above());
        double sweep = state.usual(row).sign() * doubt;
        List<Entry> before = seatings().get(0);
        Saying degrees = new Saying(
                with(before, steered.watched(turn(sweep))),
                OptionalInt.empty(),
                0,
                Optional.of(shown(reading())),
                sweep,
                false);
        List<Saying> ways = new ArrayList<>();
        byBlades(degrees, before).ifPresent(ways::add);
        ways.add(degrees);
        return ways;
    }

    /** A few airfoils further, counted by eye: that has no error, and so never makes a count doubtful. */
    private Optional<Saying> byBlades(Saying plain, List<Entry> before) {
        double pitch = Engine.pitch(row);
        long steps = (long) Math.ceil(Math.abs(plain.sweep()) / pitch - ROUNDING);
        boolean each = steps == 1 || steps == 2 && row.count() % 2 == 1;
        if (!problem.turns() || plain.way() != 0 || !each) {
            return Optional.empty();
        }
        return Optional.of(new Saying(
                with(before, steered.watchedBlades(steps, plain.sweep() > 0)),
                plain.identifies(),
                0,
                plain.from(),
                Math.signum(plain.sweep()) * steps * pitch,
                false));
    }

    /** What comes first so that the scope tip is there and it is known where the row stands. */
    private List<List<Entry>> known() {
        List<List<Entry>> ways = new ArrayList<>();
        if (state.place(row).isPresent()) {
            ways.add(seatings().get(0));
        }
        if (!ways.isEmpty() && !problem.turns()) {
            return ways;
        }
        int landmark = problem.landmarks().get(0);
        Entry identification = state.now().counting(row)
                ? new Entry.Here(new Said<>(landmark, 1), Optional.empty())
                : new Entry.Datum(new Said<>(row.id(), 1), new Said<>(landmark, 1), Optional.empty(), Optional.empty());
        for (List<Entry> seating : seatings()) {
            List<Entry> said = problem.turns() && state.anyKnown(row) ? with(seating, new Entry.Slip()) : seating;
            ways.add(with(said, identification));
        }
        return ways;
    }

    private OptionalInt identified(List<Entry> before) {
        boolean identifies =
                before.stream().anyMatch(entry -> entry instanceof Entry.Here || entry instanceof Entry.Datum);
        return identifies ? OptionalInt.of(problem.landmarks().get(0)) : OptionalInt.empty();
    }

    /** What seats the scope tip there, watching everything; and the same after the count was closed on a known airfoil. */
    private List<List<Entry>> seatings() {
        List<Entry> seating = seating();
        List<List<Entry>> all = new ArrayList<>(List.of(seating));
        closedCounts().forEach(closed -> all.add(joined(closed, seating)));
        return all;
    }

    /** A port that is left is shut before the next is opened: everything that can be seen through it was. */
    private List<Entry> seating() {
        List<Entry> said = new ArrayList<>();
        Optional<Seat> seat = state.now().seat();
        View view = work.option().view();
        boolean sameView = work.option().through(seat);
        if (state.now().among()) {
            said.add(new Entry.Clear());
        }
        if (!sameView) {
            Set<String> open = state.now().ledger().openings().keySet();
            state.port()
                    .filter(port -> !view.port().equals(Optional.of(port)) && open.contains(port))
                    .ifPresent(port -> {
                        if (!seat.get().out()) {
                            said.add(new Entry.Out());
                        }
                        said.add(new Entry.Shut(new Said<>(port, 1), ""));
                    });
            view.port()
                    .filter(port -> !open.contains(port))
                    .ifPresent(port -> said.add(new Entry.Open(new Said<>(port, 1))));
            said.add(new Entry.View(new Said<>(view.id(), 1), Optional.empty()));
        } else if (!seat.get().watching().equals(everything())) {
            said.add(new Entry.Watch(List.of(new Said<>("all", 1))));
        }
        Optional<String> at = sameView
                ? seat.get().station().map(Station::id)
                : view.stations().stream().findFirst().map(Station::id);
        work.option()
                .station()
                .filter(station -> !at.equals(Optional.of(station)))
                .ifPresent(station -> said.add(new Entry.At(new Said<>(station, 1))));
        return said;
    }

    private ZoneSet everything() {
        return state.now().engine().zonings().get(row.id()).all();
    }

    /** Before a rotor is turned by nobody knows how much: what was counted so far is closed on an airfoil that is known. */
    private List<List<Entry>> closedCounts() {
        Optional<Seat> seat = state.now()
                .seat()
                .filter(in -> RemainingState.turns(in.row()) && in.row().spool().equals(row.spool()))
                .filter(in ->
                        state.place(in.row()).isPresent() && state.place(row).isEmpty());
        if (seat.isEmpty()) {
            return List.of();
        }
        Row seen = seat.get().row();
        double here = state.clock(seen).getAsDouble();
        int landmark =
                seen.landmarks().stream().findFirst().map(Landmark::airfoil).orElse(1);
        double way = problem.way(here, reference(seat.get(), landmark));
        double typed = nearest(reading() + way, TENTH);
        List<Entry> onLandmark = Math.abs(way) < TENTH / 2
                ? List.of()
                : List.of(steered.unwatched(turn(typed), turn(typed - reading())));
        List<List<Entry>> ways = new ArrayList<>();
        ways.add(with(onLandmark, here(landmark)));
        int nearest = state.now().airfoilAtReference(seat.get()).orElse(landmark);
        if (Math.abs(problem.way(here, reference(seat.get(), nearest)))
                <= state.now().engine().aim(seat.get())) {
            ways.add(List.of(here(nearest)));
        }
        return ways;
    }

    private static double reference(Seat seat, int airfoil) {
        return seat.view().reference() - Engine.fromFirst(seat.row(), airfoil).degrees();
    }

    private static Entry here(int airfoil) {
        return new Entry.Here(new Said<>(airfoil, 1), Optional.empty());
    }

    // ---- angles ----

    /** Reading of the shaft now; of a row that stands still, of its angle to the scope tip. */
    private double reading() {
        return state.now().reading(row).degrees();
    }

    /** As it is told: of a row that stands still the clock angle of the scope tip. */
    private BigDecimal shown(double reading) {
        double angle = problem.turns() ? reading : work.option().view().reference() - reading;
        return number(wrapped(angle));
    }

    /** What is typed: whole degrees where nothing is known closer than that anyway, else as fine as it must be. */
    private double grid() {
        double doubt = problem.slack().below() + problem.slack().above();
        return doubt >= 1 ? 1 : doubt > 0 ? TENTH : FINEST;
    }

    private static double wrapped(double degrees) {
        double once = degrees - TURN * Math.floor(degrees / TURN);
        return once > TURN - NOTHING ? 0 : once;
    }

    private static double nearest(double degrees, double grid) {
        return Math.rint(degrees / grid) * grid;
    }

    private static double below(double degrees, double grid) {
        return Math.floor(degrees / grid + ROUNDING) * grid;
    }

    private static double above(double degrees, double grid) {
        return Math.ceil(degrees / grid - ROUNDING) * grid;
    }

    private static Turn turn(double degrees) {
        return Turn.ofDegrees(BigDecimal.valueOf(degrees).setScale(5, RoundingMode.HALF_EVEN));
    }

    private static BigDecimal number(double degrees) {
        BigDecimal number =
                BigDecimal.valueOf(degrees).setScale(5, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    private static List<Entry> with(List<Entry> entries, Entry last) {
        return joined(entries, List.of(last));
    }

    private static List<Entry> joined(List<Entry> entries, List<Entry> more) {
        List<Entry> all = new ArrayList<>(entries);
        all.addAll(more);
        return all;
    }
}
