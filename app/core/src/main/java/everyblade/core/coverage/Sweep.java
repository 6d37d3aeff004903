package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Placing;
import everyblade.core.turning.Placing.Place;
import everyblade.core.turning.Placing.Stand;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * What a pass swept of the circle, told by where airfoil 1 of the row stood. An angular range is surely met if it reaches
 * down to {@code sureTo} and up to {@code sureFrom}, maybe met if it reaches down to {@code maybeTo} and up to
 * {@code maybeFrom}.
 *
 * <p>{@code sureFrom} is the least of the greatest places that it may have had at the stops, {@code sureTo} the greatest
 * of the least: it was at or below the one at some stop, at or above the other at another, and ran through everything
 * between. Where a place is less certain than the sweep is long, {@code sureFrom} is the larger of the two, and only
 * ranges wider than that doubt are surely met. A further stop never takes anything away.
 *
 * @param sureFrom it was surely at this angle or a smaller one
 * @param sureTo it was surely at this angle or a larger one
 * @param maybeFrom least angle maybe reached
 * @param maybeTo greatest angle maybe reached
 * @param sure whether anything can be sure at all; not where the count was lost
 * @param anywhere whether the row may have stood anywhere
 */
record Sweep(Turn sureFrom, Turn sureTo, Turn maybeFrom, Turn maybeTo, boolean sure, boolean anywhere) {

    private static final Sweep ANYWHERE = new Sweep(Turn.ZERO, Turn.ZERO, Turn.ZERO, Turn.FULL, false, true);

    /** The sweeps of a pass from one stop to another of the row's track. */
    static List<Sweep> of(Placing placing, Row row, int from, int to) {
        List<Sweep> sweeps = new ArrayList<>();
        List<Stand> run = new ArrayList<>();
        int begun = from;
        for (int stop = from; stop <= to + 1; stop++) {
            Stand stand = stop <= to ? placing.at(row.id(), row.rock(), stop) : null;
            boolean slid = stand != null && stop > from && placing.lostAt(stop);
            if (stand == null || !run.isEmpty() && (slid || !alike(run.get(0), stand))) {
                add(sweeps, placing, run, begun, stop - 1, from, to);
                if (slid && run.get(0).sure() && stand.sure()) {
                    addDoubtful(sweeps, placing, last(run), stand, stop);
                }
                run.clear();
                begun = stop;
            }
            if (stand != null) {
                run.add(stand);
            }
        }
        return sweeps;
    }

    /** The leg from one known place to another between which the count was lost: counted on, or back. */
    private static void addDoubtful(List<Sweep> sweeps, Placing placing, Stand before, Stand after, int stop) {
        Turn counted = placing.counted(stop - 1, stop);
        Place start = before.place().get();
        Place end = after.place().get();
        sweeps.add(over(List.of(start, moved(start, counted)), false));
        sweeps.add(over(List.of(moved(end, counted.negated()), end), false));
    }

    private static Stand last(List<Stand> run) {
        return run.get(run.size() - 1);
    }

    private static boolean alike(Stand a, Stand b) {
        return a.place().isPresent() == b.place().isPresent() && a.sure() == b.sure();
    }

    private static void add(
            List<Sweep> sweeps, Placing placing, List<Stand> run, int begun, int ended, int from, int to) {
        if (run.get(0).place().isEmpty()) {
            sweeps.add(ANYWHERE);
        } else if (run.get(0).sure()) {
            sweeps.add(over(run.stream().map(stand -> stand.place().get()).toList(), true));
        } else {
            // The legs that lead in and out of a doubtful run are doubtful too.
            Turn in = begun > from ? placing.counted(begun - 1, begun).negated() : Turn.ZERO;
            Turn out = ended < to ? placing.counted(ended, ended + 1) : Turn.ZERO;
            sweeps.add(over(led(run.stream().map(stand -> stand.place().get()).toList(), in, out), false));
            sweeps.add(over(
                    led(run.stream().map(stand -> stand.otherwise().get()).toList(), in, out), false));
        }
    }

    private static List<Place> led(List<Place> places, Turn in, Turn out) {
        List<Place> all = new ArrayList<>(places);
        all.add(moved(places.get(0), in));
        all.add(moved(places.get(places.size() - 1), out));
        return all;
    }

    private static Place moved(Place place, Turn by) {
        return new Place(
                place.low().plus(by), place.high().plus(by), place.best().plus(by));
    }

    private static Sweep over(List<Place> places, boolean sure) {
        Turn sureFrom = places.get(0).high();
        Turn sureTo = places.get(0).low();
        Turn maybeFrom = sureTo;
        Turn maybeTo = sureFrom;
        for (Place place : places) {
            sureFrom = min(sureFrom, place.high());
            sureTo = max(sureTo, place.low());
            maybeFrom = min(maybeFrom, place.low());
            maybeTo = max(maybeTo, place.high());
        }
        return new Sweep(sureFrom, sureTo, maybeFrom, maybeTo, sure, false);
    }

    /**
     * A part of a leg along which the row was moved evenly.
     *
     * @param start by how much the row had moved at the beginning of the part since that of the leg
     * @param end by how much at the end of the part
     */
    static Sweep part(Placing placing, Row row, Leg leg, Turn start, Turn end) {
        Stand from = placing.at(row.id(), row.rock(), leg.from());
        Stand to = placing.at(row.id(), row.rock(), leg.to());
        if (from.place().isEmpty() || to.place().isEmpty()) {
            return ANYWHERE;
        }
        Turn left = end.minus(placing.counted(leg.from(), leg.to()));
        return over(List.of(moved(from.place().get(), start), moved(to.place().get(), left)), from.sure() && to.sure());
    }

    private static Turn min(Turn a, Turn b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static Turn max(Turn a, Turn b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
