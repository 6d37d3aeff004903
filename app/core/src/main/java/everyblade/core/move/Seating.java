package everyblade.core.move;

import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.spi.Landmark;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Entries that bring the scope tip to an option, watching everything.
 *
 * @param entries in order
 * @param closing how far a shaft is turned to close its count, degrees
 * @param way how far the row is then turned unwatched, degrees; positive clockwise
 * @param after the state after them; nothing is watched on the way
 */
record Seating(List<Entry> entries, double closing, double way, RemainingState after) {

    /**
     * The ways of getting there: at once, and after the count was closed on an airfoil that is known. That comes first where
     * the count would stay open while another shaft is turned, or none. Round a row that stands still also by taking the view
     * anew, since the scope tip is then where the view has it, however doubtful it became as it was drawn.
     */
    static Stream<Seating> of(RemainingState state, Row row, ViewOption option) {
        Closed none = new Closed(List.of(), 0);
        Stream<Seating> atOnce = Stream.of(none).flatMap(first -> said(state, option, first, false));
        if (!RemainingState.turns(row) && option.through(state.now().seat())) {
            return Stream.concat(atOnce, Stream.of(none).flatMap(first -> said(state, option, first, true)));
        }
        if (!open(state)) {
            return atOnce;
        }
        Row seen = state.now().seat().orElseThrow().row();
        Stream<Seating> closed = closed(state, seen).flatMap(first -> said(state, option, first, false));
        boolean leaves = !seen.spool().equals(row.spool()) || !RemainingState.turns(row);
        return leaves && state.anyUnknown() ? Stream.concat(closed, atOnce) : Stream.concat(atOnce, closed);
    }

    /** The entries, and that the shaft is turned by nobody knows how much, if anybody could think that it is where it was. */
    List<Entry> unsaid(Row row) {
        return RemainingState.turns(row) && after.anyKnown(row) ? Saying.with(entries, new TurnEntry.Slip()) : entries;
    }

    /**
     * Entries that close a count.
     *
     * @param way how far the shaft is turned for it
     */
    private record Closed(List<Entry> entries, double way) {}

    private static Stream<Seating> said(RemainingState state, ViewOption option, Closed closed, boolean anew) {
        List<Entry> all = new ArrayList<>(closed.entries());
        all.addAll(seating(state, option, anew));
        return state.following(all).map(after -> new Seating(List.copyOf(all), closed.way(), 0, after)).stream();
    }

    /** Whether what was watched last hangs on moves that no identification has confirmed. */
    private static boolean open(RemainingState state) {
        boolean turns =
                state.now().seat().filter(in -> RemainingState.turns(in.row())).isPresent();
        return turns
                && state.following(List.of(new TurnEntry.Slip()))
                        .filter(slipped -> slipped.trial().warnings() > 0)
                        .isPresent();
    }

    /** What was counted so far is closed on an airfoil that is known: on one counted by eye, or on a landmark. */
    private static Stream<Closed> closed(RemainingState state, Row seen) {
        if (state.place(seen).isEmpty()) {
            return Stream.empty();
        }
        Seat seat = state.now().seat().orElseThrow();
        double here = state.clock(seen).getAsDouble();
        List<Closed> ways = new ArrayList<>();
        OptionalInt counted = state.countedByEye(seat);
        counted.ifPresent(airfoil -> ways.add(new Closed(List.of(here(airfoil)), 0)));
        int landmark =
                seen.landmarks().stream().findFirst().map(Landmark::airfoil).orElse(1);
        double reference =
                seat.view().reference() - Engine.fromFirst(seen, landmark).degrees();
        double reading = state.now().reading(seen).degrees();
        double way = RotationProblem.way(here, reference, state.ways(seen));
        double typed = TypedDegrees.nearest(reading + way, TypedDegrees.TENTH);
        if (Math.abs(way) < TypedDegrees.TENTH / 2) {
            ways.add(new Closed(List.of(here(landmark)), 0));
        } else if (!state.steered(seen).coarse(seen)) {
            Entry there = state.steered(seen).unwatched(TypedDegrees.turn(typed), TypedDegrees.turn(typed - reading));
            ways.add(new Closed(List.of(there, here(landmark)), Math.abs(typed - reading)));
        }
        return ways.stream();
    }

    private static Entry here(int airfoil) {
        return new TurnEntry.Here(new Said<>(airfoil, 1), Optional.empty());
    }

    /** A port that is left is shut before the next is opened: everything that can be seen through it was. */
    private static List<Entry> seating(RemainingState state, ViewOption option, boolean anew) {
        List<Entry> said = new ArrayList<>();
        Optional<Seat> seat = state.now().seat();
        View view = option.view();
        boolean sameView =
                option.through(seat) && !anew && !astray(state, seat.get().row());
        if (state.now().among()) {
            said.add(new LookEntry.Clear());
        }
        if (!sameView) {
            Set<String> open = state.now().ledger().openings().keySet();
            state.port()
                    .filter(port -> !view.port().equals(Optional.of(port)) && open.contains(port))
                    .ifPresent(port -> {
                        if (!seat.get().out()) {
                            said.add(new LookEntry.Out());
                        }
                        said.add(new RecordEntry.Shut(new Said<>(port, 1), ""));
                    });
            view.port()
                    .filter(port -> !open.contains(port))
                    .ifPresent(port -> said.add(new RecordEntry.Open(new Said<>(port, 1))));
            said.add(new LookEntry.View(new Said<>(view.id(), 1), Optional.empty()));
        } else if (!seat.get().watching().equals(everything(state, seat.get().row()))) {
            said.add(new LookEntry.Watch(List.of(new Said<>("all", 1))));
        }
        Optional<String> at = sameView
                ? seat.get().station().map(Station::id)
                : view.stations().stream().findFirst().map(Station::id);
        option.station()
                .filter(station -> !at.equals(Optional.of(station)))
                .ifPresent(station -> said.add(new LookEntry.At(new Said<>(station, 1))));
        return said;
    }

    /** Whether the scope tip was drawn round a row until nobody knows where it is: seated again it is where the view has it. */
    private static boolean astray(RemainingState state, Row row) {
        return !RemainingState.turns(row)
                && state.now().counting(row)
                && state.place(row).isEmpty();
    }

    private static ZoneSet everything(RemainingState state, Row row) {
        return state.now().engine().zonings().get(row.id()).all();
    }
}
