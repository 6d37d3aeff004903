package everyblade.core.move;

import static everyblade.core.move.Saying.with;
import static everyblade.core.move.TypedDegrees.FINEST;
import static everyblade.core.move.TypedDegrees.TENTH;
import static everyblade.core.move.TypedDegrees.TURN;
import static everyblade.core.move.TypedDegrees.above;
import static everyblade.core.move.TypedDegrees.below;
import static everyblade.core.move.TypedDegrees.nearest;
import static everyblade.core.move.TypedDegrees.turn;

import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The ways of saying a work, in the order in which a person would prefer them; worked out one by one, as they are asked for. */
final class Sayings {

    private final RemainingState state;
    private final RotationProblem problem;
    private final Work work;
    private final Row row;
    private final Steered steered;

    Sayings(RemainingState state, RotationProblem problem, Work work) {
        this.state = state;
        this.problem = problem;
        this.work = work;
        this.row = problem.row();
        this.steered = state.steered(row);
    }

    /** Of a work that is one watched move. */
    Stream<Saying> whole() {
        Stream<Saying> ways = work.how() == How.LOOK
                ? look()
                : work.how() == How.ROUND ? rounds(work.landmark().getAsInt()) : Stream.empty();
        return work.option().travels() ? Stream.concat(ways, Stream.of(this).flatMap(Sayings::wholeTurns)) : ways;
    }

    /** Of one stretch of a work. */
    Stream<Saying> stretch(Sweeping.Stretch stretch, boolean first) {
        Stream<Saying> ways =
                Stream.concat(first ? further(problem.slack()) : Stream.empty(), stretches(stretch, first));
        if (!problem.rounds().test(work.option())) {
            return ways;
        }
        return Stream.concat(
                ways,
                Stream.of(problem.landmarks())
                        .flatMap(landmarks -> Stream.of(
                                        landmarks.stream().flatMap(this::rounds),
                                        landmarks.stream().flatMap(this::roundsAndOne),
                                        roundsFromBeside())
                                .flatMap(rounds -> rounds)));
    }

    private boolean coarse() {
        return steered.coarse(row);
    }

    /** There, and it is known where the row stands. */
    private record Ready(Seating there, OptionalInt identified) {}

    private Stream<Saying> look() {
        return ready().map(ready -> new Saying(
                with(ready.there().entries(), new LookEntry.Look(Optional.empty(), Optional.empty())),
                ready.identified(),
                ready.there().closing(),
                ready.there().way(),
                Optional.of(shown(ready.there(), reading(ready.there()))),
                0,
                false));
    }

    private Stream<Saying> rounds(int landmark) {
        Entry round = Steered.round(landmark);
        double full = state.spool(row).map(Spool::normal).orElse(Direction.CW).sign() * TURN;
        return Seating.of(state, row, work.option()).flatMap(there -> {
            Stream<Saying> unknown = Stream.of(new Saying(
                    with(there.unsaid(row), round),
                    OptionalInt.of(landmark),
                    there.closing(),
                    0,
                    Optional.empty(),
                    full,
                    true));
            OptionalDouble here = there.after().likely(row);
            if (here.isEmpty()) {
                return unknown;
            }
            Stream<Saying> beside = there.after().beside(row, landmark).stream()
                    .mapToObj(airfoil -> new Saying(
                            with(there.entries(), Steered.round(airfoil)),
                            OptionalInt.of(airfoil),
                            there.closing(),
                            0,
                            Optional.of(shown(there, reading(there))),
                            full,
                            true));
            Seating at = brought(there, here.getAsDouble(), landmark);
            Saying known = new Saying(
                    with(at.entries(), round),
                    OptionalInt.of(landmark),
                    at.closing(),
                    at.way(),
                    Optional.of(shown(at, reading(at))),
                    full,
                    true);
            Stream<Saying> counted = counted(there, at.way() - there.way()).stream()
                    .map(eye -> new Saying(
                            with(eye.entries(), round),
                            OptionalInt.of(landmark),
                            eye.closing(),
                            eye.way(),
                            Optional.of(shown(eye, reading(eye))),
                            full,
                            true));
            Stream<Saying> byAngle = at.way() != there.way() && coarse() ? Stream.empty() : Stream.of(known);
            return Stream.of(beside, byAngle, counted, unknown).flatMap(ways -> ways);
        });
    }

    /** The same counted by eye from the airfoil that is at the reference: where degrees would be too coarse to tell airfoils apart. */
    private Optional<Seating> counted(Seating there, double way) {
        double aim = there.after().now().engine().aim(there.after().now().seat().orElseThrow());
        int airfoils = ByEye.whole(way / Engine.pitch(row), aim / Engine.pitch(row));
        if (airfoils == 0) {
            return Optional.empty();
        }
        List<Entry> said = with(there.entries(), steered.unwatchedBlades(Math.abs(airfoils), airfoils > 0));
        double turned = airfoils * Engine.pitch(row);
        return state.following(said).map(after -> new Seating(said, there.closing(), there.way() + turned, after));
    }

    /** With the row turned, unwatched, until an airfoil is at the reference. */
    private Seating brought(Seating there, double here, int landmark) {
        double stated = steered.plusMinus().isPresent() ? TypedDegrees.grid(problem.slack()) : TENTH;
        double grid = problem.slack().none() ? FINEST : stated;
        double way = problem.way(here, problem.atReference(work.option(), landmark));
        double reading = reading(there);
        double to = nearest(reading + way, grid);
        if (Math.abs(way) < grid / 2) {
            return there;
        }
        List<Entry> said = with(there.entries(), steered.unwatched(turn(to), turn(to - reading)));
        return state.following(said)
                .map(after -> new Seating(said, there.closing(), there.way() + to - reading, after))
                .orElse(there);
    }

    /** A round, and the next airfoil once more: its turn has no seam. */
    private Stream<Saying> roundsAndOne(int landmark) {
        return rounds(landmark)
                .map(round -> new Saying(
                        with(round.entries(), steered.watchedBlades(1, round.sweep() > 0)),
                        round.identifies(),
                        round.closing(),
                        round.way(),
                        round.from(),
                        round.sweep() + Math.signum(round.sweep()) * Engine.pitch(row),
                        true));
    }

    /**
     * A round from an airfoil as far from a landmark as can be told at a glance, for the landmark itself: where airfoils stand so
     * close that angles do not tell them apart, it is neither seen surely at a seam where it stands, nor is one beside it.
     */
    private Stream<Saying> roundsFromBeside() {
        double full = state.spool(row).map(Spool::normal).orElse(Direction.CW).sign() * TURN;
        double past = Math.signum(full) * ToldBy.BESIDE * Engine.pitch(row);
        return Seating.of(state, row, work.option()).flatMap(this::identified).flatMap(ready -> {
            List<Entry> said = with(ready.there().entries(), steered.unwatchedBlades(ToldBy.BESIDE, full > 0));
            return state
                    .following(said)
                    .map(after -> new Seating(
                            said, ready.there().closing(), ready.there().way() + past, after))
                    .stream()
                    .flatMap(at -> at
                            .after()
                            .countedByEye(at.after().now().seat().orElseThrow())
                            .stream()
                            .mapToObj(airfoil -> new Saying(
                                    with(at.entries(), Steered.round(airfoil)),
                                    ready.identified(),
                                    at.closing(),
                                    at.way(),
                                    Optional.of(shown(at, reading(at))),
                                    full,
                                    true)));
        });
    }

    /** By angle, or by as many airfoils, which adds nothing to the doubt about the count. */
    private Stream<Saying> wholeTurns() {
        double seam = Math.ceil(problem.slack().below() + problem.slack().above());
        int sense = state.usual(row).sign();
        int airfoils = row.count() + (int) Math.ceil(seam / Engine.pitch(row));
        return Stream.concat(counted(), ready()).flatMap(ready -> {
            Saying byAngle = wholeTurn(ready, steered.watched(turn(sense * (TURN + seam))), sense * (TURN + seam));
            Saying byBlades =
                    wholeTurn(ready, steered.watchedBlades(airfoils, sense > 0), sense * airfoils * Engine.pitch(row));
            return coarse() ? Stream.of(byBlades) : Stream.of(byAngle, byBlades);
        });
    }

    private Saying wholeTurn(Ready ready, Entry watched, double sweep) {
        boolean back = !problem.turns() && !work.option().holds(state.now().seat());
        return new Saying(
                with(ready.there().entries(), watched),
                ready.identified(),
                ready.there().closing(),
                ready.there().way(),
                ready.identified().isPresent() || back
                        ? Optional.empty()
                        : Optional.of(shown(ready.there(), reading(ready.there()))),
                sweep,
                false);
    }

    private Stream<Saying> stretches(Sweeping.Stretch stretch, boolean first) {
        return ready().filter(ready -> ready.there().after().place(row).isPresent())
                .flatMap(ready -> {
                    Saying plain = stretch(stretch, first, ready, 1);
                    Stream<Saying> other =
                            plain.sweep() == 0 ? Stream.of(stretch(stretch, first, ready, -1)) : Stream.empty();
                    Stream<Saying> byAngle = Stream.concat(Stream.of(plain), other);
                    return coarse()
                            ? Stream.concat(byBlades(plain, ready), byAngle)
                            : Stream.concat(byAngle, byBlades(plain, ready));
                });
    }

    /**
     * Rounded outwards: watching begins a little earlier and ends a little later, never the other way. A look is rounded up
     * or down, since either may be just out of sight.
     */
    private Saying stretch(Sweeping.Stretch stretch, boolean first, Ready ready, int lookUp) {
        double here = ready.there().after().clock(row).getAsDouble();
        double reading = reading(ready.there());
        double grid = TypedDegrees.grid(problem.slack());
        int sense = work.rising() ? 1 : -1;
        double length = stretch.to() - stretch.from();
        double begin = length == 0 && first ? problem.begin(work, here) : work.rising() ? stretch.from() : stretch.to();
        double way = first ? problem.way(here, begin) : sense * TypedDegrees.wrapped(sense * (begin - here));
        if (first && problem.watchedToo(work, way) <= problem.prices().turning(way)) {
            length += Math.abs(way);
            way = 0;
        }
        double to = reading + way;
        boolean look = length == 0;
        double typed = way == 0 ? to : look ? lookUp * above(lookUp * to, FINEST) : sense * below(sense * to, grid);
        double sweep = look ? 0 : above(length + Math.abs(to - typed), grid);
        List<Entry> before = ready.there().entries();
        List<Entry> said =
                typed == reading ? before : with(before, steered.unwatched(turn(typed), turn(typed - reading)));
        return new Saying(
                with(said, steered.watched(turn(sense * sweep))),
                ready.identified(),
                ready.there().closing(),
                ready.there().way() + typed - reading,
                Optional.of(shown(ready.there(), typed)),
                sense * sweep,
                false);
    }

    /**
     * A little further from where a whole turn ended: what was left at its seam is then seen, since watching went on without a
     * break. To an airfoil, so that one stands at the reference again.
     *
     * @param off by how much the row may be off where the turn began and where it ended
     */
    Stream<Saying> further(Slack off) {
        if (!problem.turns()
                || problem.slack().none()
                || !state.turnedWhole()
                || !work.option().holds(state.now().seat())) {
            return Stream.empty();
        }
        double doubt = Math.ceil(off.below() + off.above());
        double sweep = state.usual(row).sign() * doubt;
        return Seating.of(state, row, work.option()).limit(1).flatMap(there -> {
            Saying degrees = new Saying(
                    with(there.entries(), steered.watched(turn(sweep))),
                    OptionalInt.empty(),
                    there.closing(),
                    0,
                    Optional.of(shown(there, reading(there))),
                    sweep,
                    false);
            return Stream.concat(byBlades(degrees, new Ready(there, OptionalInt.empty())), Stream.of(degrees));
        });
    }

    private Stream<Saying> byBlades(Saying plain, Ready ready) {
        if (!problem.turns() && !coarse()) {
            return Stream.empty();
        }
        double pitch = Engine.pitch(row);
        int sense = plain.sweep() < 0 ? -1 : 1;
        double way = sense * (plain.way() - ready.there().way());
        return ByEye.of(way / pitch, Math.abs(plain.sweep()) / pitch, row.count()).stream()
                .map(eye -> {
                    List<Entry> before = ready.there().entries();
                    List<Entry> said = eye.skipped() == 0
                            ? before
                            : with(before, steered.unwatchedBlades(Math.abs(eye.skipped()), sense * eye.skipped() > 0));
                    double skipped = sense * eye.skipped() * pitch;
                    return new Saying(
                            with(said, steered.watchedBlades(eye.watched(), sense > 0)),
                            plain.identifies(),
                            plain.closing(),
                            ready.there().way() + skipped,
                            Optional.of(shown(ready.there(), reading(ready.there()) + skipped)),
                            sense * eye.watched() * pitch,
                            false);
                });
    }

    /** There, round a row that stands still and is counted, though not surely: a whole turn passes all of it, whichever is where. */
    private Stream<Ready> counted() {
        return problem.turns() || state.place(row).isPresent()
                ? Stream.empty()
                : Seating.of(state, row, work.option())
                        .filter(there -> there.after().likely(row).isPresent())
                        .map(there -> new Ready(there, OptionalInt.empty()));
    }

    /** What comes first so that the scope tip is there and it is known where the row stands. */
    private Stream<Ready> ready() {
        Stream<Ready> known = Seating.of(state, row, work.option())
                .filter(there -> there.after().place(row).isPresent())
                .map(there -> new Ready(there, OptionalInt.empty()));
        if (state.place(row).isPresent() && !problem.turns()) {
            return known;
        }
        return Stream.concat(known, Seating.of(state, row, work.option()).flatMap(this::identified));
    }

    private Stream<Ready> identified(Seating there) {
        int landmark = problem.landmarks().get(0);
        Entry identification = state.now().counting(row)
                ? new TurnEntry.Here(new Said<>(landmark, 1), Optional.empty())
                : new TurnEntry.Datum(
                        new Said<>(row.id(), 1), new Said<>(landmark, 1), Optional.empty(), Optional.empty());
        Stream<Seating> unknown = Stream.of(new Seating(there.unsaid(row), there.closing(), 0, there.after()));
        OptionalDouble here = there.after().likely(row);
        Stream<Seating> likely = here.isPresent() && problem.turns() && !coarse()
                ? Stream.of(brought(there, here.getAsDouble(), landmark))
                : Stream.empty();
        return Stream.concat(likely, unknown).flatMap(at -> {
            List<Entry> said = with(at.entries(), identification);
            return state.following(said).stream()
                    .map(after ->
                            new Ready(new Seating(said, at.closing(), at.way(), after), OptionalInt.of(landmark)));
        });
    }

    /** Reading of the shaft there; of a row that stands still, of its angle to the scope tip. */
    private double reading(Seating there) {
        return there.after().now().reading(row).degrees();
    }

    /** As it is told: of a row that stands still the clock angle of the scope tip. */
    private BigDecimal shown(Seating there, double reading) {
        double angle = problem.turns() ? reading : work.option().view().reference() - reading;
        return TypedDegrees.number(TypedDegrees.wrapped(angle));
    }
}
