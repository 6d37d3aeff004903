package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.angle.PitchGrid;
import everyblade.core.angle.Turn;
import everyblade.core.turning.Leg;
import everyblade.core.turning.SmoothedTrack;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.SmoothedTrack.Stand;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
 * <p>Where it began may be less certain than how far it went: what is as long as the rest of the turn is met by every
 * airfoil, wherever that turn began.
 *
 * @param sureFrom it was surely at this angle or a smaller one
 * @param sureTo it was surely at this angle or a larger one
 * @param maybeFrom least angle maybe reached
 * @param maybeTo greatest angle maybe reached
 * @param length how far it surely went
 * @param sure whether anything can be sure at all; not where the count was lost
 * @param anywhere whether the row may have stood anywhere
 */
record Sweep(Turn sureFrom, Turn sureTo, Turn maybeFrom, Turn maybeTo, Turn length, boolean sure, boolean anywhere) {

    private static final Sweep ANYWHERE = new Sweep(Turn.ZERO, Turn.ZERO, Turn.ZERO, Turn.FULL, Turn.ZERO, false, true);

    /** The sweeps from one stop of the row's track to another, in a run of this number. */
    static List<Sweep> of(SmoothedTrack placing, Row row, int from, int to, int run) {
        List<Sweep> sweeps = new ArrayList<>();
        List<Stand> stands = new ArrayList<>();
        int begun = from;
        List<Stand> course = placing.course(row.id(), row.rock(), from, to, run);
        for (int stop = from; stop <= to; stop++) {
            Stand stand = course.get(stop - from);
            if (!stands.isEmpty() && (placing.doubtful(stop) || !alike(stands.get(0), stand))) {
                add(sweeps, placing, row, stands, begun, run);
                addDoubtful(sweeps, stands.get(stands.size() - 1), stand, placing.counted(stop - 1, stop));
                stands.clear();
                begun = stop;
            }
            stands.add(stand);
        }
        add(sweeps, placing, row, stands, begun, run);
        return sweeps;
    }

    private static boolean alike(Stand a, Stand b) {
        return a.place().isPresent() == b.place().isPresent() && a.sure() == b.sure();
    }

    /** Stops that follow each other without a doubt between. */
    private static void add(
            List<Sweep> sweeps, SmoothedTrack placing, Row row, List<Stand> stands, int begun, int run) {
        if (stands.get(0).place().isEmpty()) {
            sweeps.add(ANYWHERE);
            return;
        }
        List<Place> places = stands.stream().map(stand -> stand.place().get()).toList();
        if (stands.get(0).sure()) {
            sweeps.add(over(places, length(placing, row, places, begun, run)));
        } else {
            sweeps.add(over(places));
            sweeps.add(
                    over(stands.stream().map(stand -> stand.otherwise().get()).toList()));
        }
    }

    /** A step that may hold a loss: counted on from any place before it, or back from any place after it. */
    private static void addDoubtful(List<Sweep> sweeps, Stand before, Stand after, Turn counted) {
        places(before).forEach(place -> sweeps.add(over(List.of(place, place.plus(counted)))));
        places(after).forEach(place -> sweeps.add(over(List.of(place.plus(counted.negated()), place))));
    }

    private static Stream<Place> places(Stand stand) {
        return Stream.concat(stand.place().stream(), stand.otherwise().stream());
    }

    /** How far the row surely went between the stops of a run that lie farthest apart. */
    private static Turn length(SmoothedTrack placing, Row row, List<Place> places, int begun, int run) {
        int least = 0;
        int greatest = 0;
        for (int i = 1; i < places.size(); i++) {
            least = places.get(i).best().compareTo(places.get(least).best()) < 0 ? i : least;
            greatest = places.get(i).best().compareTo(places.get(greatest).best()) > 0 ? i : greatest;
        }
        Turn length = places.get(greatest).best().minus(places.get(least).best());
        OptionalDouble off = placing.apart(begun + least, begun + greatest, run);
        return off.isEmpty() ? Turn.ZERO : length.minus(Turn.ofDegrees(off.getAsDouble() + 2 * row.rock()));
    }

    private static Sweep over(List<Place> places) {
        return over(places, Turn.ZERO, false);
    }

    private static Sweep over(List<Place> places, Turn length) {
        return over(places, length, true);
    }

    private static Sweep over(List<Place> places, Turn length, boolean sure) {
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
        return new Sweep(sureFrom, sureTo, maybeFrom, maybeTo, length, sure, false);
    }

    /**
     * A part of a leg along which the row was moved evenly.
     *
     * @param start by how much the row had moved at the beginning of the part since that of the leg
     * @param end by how much at the end of the part
     */
    static Sweep part(SmoothedTrack placing, Row row, Leg leg, Turn start, Turn end) {
        List<Stand> course = placing.course(row.id(), row.rock(), leg.from(), leg.to(), leg.run());
        Stand from = course.get(0);
        Stand to = course.get(course.size() - 1);
        if (from.place().isEmpty() || to.place().isEmpty()) {
            return ANYWHERE;
        }
        Turn left = end.minus(placing.counted(leg.from(), leg.to()));
        return over(
                List.of(from.place().get().plus(start), to.place().get().plus(left)),
                Turn.ZERO,
                from.sure()
                        && to.sure()
                        && IntStream.rangeClosed(leg.from() + 1, leg.to()).noneMatch(placing::doubtful));
    }

    /**
     * The airfoils that surely came between two clock angles.
     *
     * @param low clock angle at which an airfoil comes into sight
     * @param high the tick after the last at which it is
     */
    IndexRun surely(Row row, Turn low, Turn high) {
        return surely(row, low, high, high.minus(low));
    }

    /**
     * The airfoils that surely came between two clock angles of which it is known how far they are apart at least.
     *
     * @param low the largest clock angle at which an airfoil may come into sight
     * @param high the least tick after the last at which it is; may be below {@code low}
     * @param least for how far it is in sight at least
     */
    IndexRun surely(Row row, Turn low, Turn high, Turn least) {
        if (!sure) {
            return new IndexRun(0, 0);
        }
        return length.compareTo(Turn.FULL.minus(least)) >= 0
                ? new IndexRun(0, row.count())
                : met(row, low, high, sureFrom, sureTo);
    }

    /** The airfoils that surely or maybe came between two clock angles. */
    IndexRun maybe(Row row, Turn low, Turn high) {
        return anywhere ? new IndexRun(0, row.count()) : met(row, low, high, maybeFrom, maybeTo);
    }

    private static IndexRun met(Row row, Turn low, Turn high, Turn from, Turn to) {
        IndexRun clockwise = PitchGrid.passing(low, high, from, to, row.count());
        if (row.numbering() == Direction.CW || clockwise.length() == row.count()) {
            return clockwise;
        }
        return new IndexRun(Math.floorMod(1 - clockwise.first() - clockwise.length(), row.count()), clockwise.length());
    }

    private static Turn min(Turn a, Turn b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static Turn max(Turn a, Turn b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
