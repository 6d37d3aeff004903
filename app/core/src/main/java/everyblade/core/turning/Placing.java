package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * Where a row stood at every stop of its track, with every sighting taken into account: the least squares solution over
 * all moves and sightings of the track, and what each place may be off.
 *
 * <p>Between two sightings the count error is shared over the moves in proportion to their variance; after the last one
 * the counted angle stands, with its errors growing. Where the count may have been lost, nothing is sure that does not
 * hang on an identification by steps without a doubt: the row is counted on from the one before, or back from the one
 * after.
 *
 * <p>Runs the fixes backwards (Bryson and Frazier's form of the fixed-interval smoother, which divides by no matrix and
 * so bears moves and sightings without any error). Cost: the fixes once, then constant time a stop.
 */
public final class Placing {

    /**
     * Where airfoil 1 of a row stood at a stop: between two clock angles, unrolled, at 95 %.
     *
     * @param low least angle
     * @param high greatest angle
     * @param best most likely angle
     */
    public record Place(Turn low, Turn high, Turn best) {

        /** The same, turned further. */
        public Place plus(Turn by) {
            return new Place(low.plus(by), high.plus(by), best.plus(by));
        }
    }

    /**
     * What is known of a row at a stop.
     *
     * @param place where it stood; empty if it may have stood anywhere
     * @param otherwise where else it stood if the count may have been lost on the way; then neither is sure
     */
    public record Stand(Optional<Place> place, Optional<Place> otherwise) {

        /** Whether the place can be relied on. */
        public boolean sure() {
            return place.isPresent() && otherwise.isEmpty();
        }
    }

    /**
     * A place before it meets the grid.
     *
     * @param counted where airfoil 1 stood as counted
     * @param correction to be added, degrees
     * @param spread what it may be off either way by errors that add in quadrature, degrees
     * @param below what it may be off further towards smaller angles, degrees
     * @param above what it may be off further towards larger angles, degrees
     */
    record Estimate(Turn counted, double correction, double spread, double below, double above) {

        Place place() {
            Turn best = counted.plus(Turn.ofDegrees(correction));
            return new Place(
                    best.minus(Turn.ofDegrees(spread + below)), best.plus(Turn.ofDegrees(spread + above)), best);
        }

        private Estimate turned(double degrees) {
            return new Estimate(counted, correction + degrees, spread, below, above);
        }

        /** As sure as the other one, if that is surer: what is known later makes nothing less sure. */
        private Estimate asGoodAs(Estimate other) {
            return room() <= other.room()
                    ? this
                    : new Estimate(counted, correction, other.spread, other.below, other.above);
        }

        private double room() {
            return 2 * spread + below + above;
        }
    }

    private final Track track;
    /** Smoothed correction of the counted angle at each fix, degrees. */
    private final double[] corrections;
    /** Final state of the era of each fix. */
    private final double[][] offsets;
    /** For each stop the number of fixes at or before it. */
    private final int[] fixesUpTo;

    private Placing(Track track, double[] corrections, double[][] offsets, int[] fixesUpTo) {
        this.track = track;
        this.corrections = corrections;
        this.offsets = offsets;
        this.fixesUpTo = fixesUpTo;
    }

    static Placing of(Track track) {
        int count = track.fixes().size();
        double[] corrections = new double[count];
        double[][] offsets = new double[count][];
        Map<Integer, double[]> adjoints = new HashMap<>();
        Map<Integer, double[]> ends = new HashMap<>();
        for (int i = count - 1; i >= 0; i--) {
            Fix fix = track.fixes().get(i);
            offsets[i] = ends.computeIfAbsent(fix.era(), era -> fix.state());
            double[] adjoint = adjoints.computeIfAbsent(fix.era(), era -> new double[fix.state().length]);
            double correction = fix.state()[0];
            for (int j = 0; j < adjoint.length; j++) {
                correction -= fix.covariance()[0][j] * adjoint[j];
            }
            corrections[i] = correction;
            adjoints.put(fix.era(), before(fix, adjoint));
        }
        int[] fixesUpTo = new int[track.stops().size()];
        int next = 0;
        for (int stop = 0; stop < fixesUpTo.length; stop++) {
            while (next < count && track.fixes().get(next).sighting().stop() <= stop) {
                next++;
            }
            fixesUpTo[stop] = next;
        }
        return new Placing(track, corrections, offsets, fixesUpTo);
    }

    /** The adjoint before a fix, given the one after it. */
    private static double[] before(Fix fix, double[] after) {
        int slot = fix.frame(fix.sighting().frame()) + 1;
        return switch (fix.step()) {
            case ERA -> new double[0];
            case FRAME -> {
                double[] before = java.util.Arrays.copyOf(after, after.length - 1);
                before[0] -= after[slot];
                yield before;
            }
            case ANGLE -> {
                double[] before = after.clone();
                before[slot] -= after[0];
                before[0] = 0;
                yield before;
            }
            case SHARED -> {
                double[] before = after.clone();
                if (fix.innovationVariance() > 0) {
                    double along = fix.innovation() / fix.innovationVariance();
                    for (int j = 0; j < after.length; j++) {
                        along += fix.gain()[j] * after[j];
                    }
                    before[0] -= along;
                    before[slot] -= along;
                }
                yield before;
            }
        };
    }

    /**
     * Where airfoil 1 of a row stood.
     *
     * @param row a row that was identified on this track at any time; otherwise it may have stood anywhere
     * @param rock by how much its airfoils lean either way, degrees
     */
    public Stand at(String row, double rock, int stop) {
        List<Estimate> estimates = estimates(row, rock, stop);
        return new Stand(
                estimates.stream().findFirst().map(Estimate::place),
                estimates.stream().skip(1).findFirst().map(Estimate::place));
    }

    /**
     * Where airfoil 1 of a row stood at each stop from one to another, unrolled along the counted moves: what is known of
     * two stops may come from identifications that nothing but the row connects.
     */
    public List<Stand> course(String row, double rock, int from, int to) {
        List<Stand> course = new ArrayList<>();
        for (int stop = from; stop <= to; stop++) {
            Stand stand = at(row, rock, stop);
            Optional<Place> before = course.isEmpty()
                    ? Optional.empty()
                    : course.get(stop - from - 1).place();
            if (before.isPresent() && stand.place().isPresent()) {
                double off = before.get()
                        .best()
                        .plus(counted(stop - 1, stop))
                        .minus(stand.place().get().best())
                        .degrees();
                Turn turns = Turn.FULL.times(Math.round(off / 360), 1);
                stand = new Stand(
                        stand.place().map(place -> place.plus(turns)),
                        stand.otherwise().map(place -> place.plus(turns)));
            }
            course.add(stand);
        }
        return course;
    }

    /** One estimate where the row is known, none where it is not, two where the count may have been lost round this stop. */
    List<Estimate> estimates(String row, double rock, int stop) {
        int stretch = track.stops().get(stop).stretch();
        int last = nearest(stretch, fixesUpTo[stop] - 1, -1, fix -> fix.frame(row) >= 0);
        int next = nearest(stretch, fixesUpTo[stop], 1, fix -> fix.frame(row) >= 0);
        if (last < 0 && next < 0) {
            return doubtful(row, rock, stop);
        }
        Estimate best = estimate(row, rock, stop, last, next);
        int telling = nearest(stretch, last, -1, fix -> fix.tells(row));
        int tellingNext = next < 0 ? next : nearest(stretch, next, 1, fix -> fix.tells(row));
        if (telling != last || tellingNext != next) {
            best = best.asGoodAs(estimate(row, rock, stop, telling, tellingNext));
        }
        return List.of(telling < 0 ? best : best.asGoodAs(from(row, rock, stop, telling)));
    }

    private Estimate estimate(String row, double rock, int stop, int last, int next) {
        boolean seenHere = last >= 0 && track.fixes().get(last).sighting().stop() == stop;
        if (seenHere || next < 0) {
            return from(row, rock, stop, last);
        }
        return last < 0
                ? from(row, rock, stop, next)
                : between(row, rock, track.stops().get(stop), last, next);
    }

    /** Over steps that may hold a loss: counted on from before, or back from after; known from one side only, with the loss or without. */
    private List<Estimate> doubtful(String row, double rock, int stop) {
        int last = unslipped(row, stop, fixesUpTo[stop] - 1, -1);
        int next = unslipped(row, stop, fixesUpTo[stop], 1);
        if (last < 0 && next < 0) {
            return List.of();
        }
        if (last < 0) {
            Estimate back = from(row, rock, stop, next);
            return List.of(
                    back,
                    back.turned(lost(stop, track.fixes().get(next).sighting().stop())));
        }
        Estimate on = from(row, rock, stop, last);
        return List.of(
                on,
                next < 0
                        ? on.turned(-lost(track.fixes().get(last).sighting().stop(), stop))
                        : from(row, rock, stop, next));
    }

    /** By how much the count was found off over a step between two stops, degrees. */
    private double lost(int from, int to) {
        return track.checks().stream()
                .filter(Check::lost)
                .filter(check -> {
                    int step = check.steps().nextSetBit(from + 1);
                    return step >= 0 && step <= to;
                })
                .flatMap(check -> check.found().stream())
                .mapToDouble(CountError::degrees)
                .reduce(0, (earlier, later) -> later);
    }

    /** Whether the count may have been lost on the way to a stop from the one before. */
    public boolean doubtful(int stop) {
        return track.stops().get(stop).doubtful();
    }

    /** The counted angle at a stop as a reading of the shaft would show it, without any correction; 0 to a turn. */
    public Turn counted(int stop) {
        return track.stops().get(stop).counted().plus(track.offset(stop)).wrapped();
    }

    /** By how much the track was turned from one stop to another, as counted. */
    public Turn counted(int from, int to) {
        return track.stops().get(to).counted().minus(track.stops().get(from).counted());
    }

    /** What the way from one stop to another, either of them first, may be off, degrees; empty if it was not counted. */
    public OptionalDouble apart(int one, int other) {
        Stop from = track.stops().get(Math.min(one, other));
        Stop to = track.stops().get(Math.max(one, other));
        Uncertainty way = to.total().since(from.total());
        return from.stretch() == to.stretch()
                ? OptionalDouble.of(Math.max(way.below(), way.above()))
                : OptionalDouble.empty();
    }

    /** The counted angle at a stop with its correction, as a reading of the shaft would show it; 0 to a turn. */
    public Turn adjusted(int stop) {
        Stop here = track.stops().get(stop);
        int last = fixesUpTo[stop] - 1;
        double correction = 0;
        if (last >= 0) {
            correction = corrections[last];
            Fix fix = track.fixes().get(last);
            if (last + 1 < corrections.length && fix.sighting().stop() != stop) {
                Stop from = stopOf(last);
                Stop to = stopOf(last + 1);
                if (from.stretch() == here.stretch() && to.stretch() == here.stretch()) {
                    correction = shared(here, from, to, corrections[last], corrections[last + 1]);
                }
            }
        }
        return here.counted()
                .plus(track.offset(stop))
                .plus(Turn.ofDegrees(correction))
                .wrapped();
    }

    private Stop stopOf(int fix) {
        return track.stops().get(track.fixes().get(fix).sighting().stop());
    }

    /** Index of the nearest such fix from this one on, in the stretch; −1 if there is none. */
    private int nearest(int stretch, int from, int step, Predicate<Fix> such) {
        for (int i = from; i >= 0 && i < corrections.length && stopOf(i).stretch() == stretch; i += step) {
            if (such.test(track.fixes().get(i))) {
                return i;
            }
        }
        return -1;
    }

    /** Index of the nearest fix from this one on that knows the row, with no slip between; −1 if there is none. */
    private int unslipped(String row, int stop, int from, int step) {
        for (int i = from; i >= 0 && i < corrections.length; i += step) {
            if (track.fixes().get(i).frame(row) >= 0) {
                int seen = track.fixes().get(i).sighting().stop();
                for (int s = Math.min(seen, stop) + 1; s <= Math.max(seen, stop); s++) {
                    if (track.stops().get(s).way() == Stop.Way.SLIPPED) {
                        return -1;
                    }
                }
                return i;
            }
        }
        return -1;
    }

    /** Counted on, or back, from one fix. */
    private Estimate from(String row, double rock, int index, int fixIndex) {
        Fix fix = track.fixes().get(fixIndex);
        Stop stop = track.stops().get(index);
        Stop other = stopOf(fixIndex);
        int frame = fix.frame(row);
        Uncertainty link = fix.sighting().stop() <= index
                ? stop.total().since(other.total())
                : other.total().since(stop.total()).reversed();
        Uncertainty off = fix.off()[frame].and(link);
        return new Estimate(
                fix.origins().get(frame).plus(stop.counted()),
                corrections[fixIndex] + offsets[fixIndex][frame + 1],
                Math.sqrt(off.variance()),
                off.minus() + rock,
                off.plus() + rock);
    }

    private Estimate between(String row, double rock, Stop stop, int last, int next) {
        Fix earlier = track.fixes().get(last);
        Fix later = track.fixes().get(next);
        Stop from = stopOf(last);
        Stop to = stopOf(next);
        int frame = earlier.frame(row);
        double share = share(stop, from, to);
        Uncertainty a = earlier.off()[frame];
        Uncertainty b = later.off()[later.frame(row)];
        Uncertainty on = stop.total().since(from.total());
        Uncertainty back = to.total().since(stop.total());
        double ends = (1 - share) * Math.sqrt(a.variance()) + share * Math.sqrt(b.variance());
        double spread =
                Math.sqrt(ends * ends + (1 - share) * (1 - share) * on.variance() + share * share * back.variance());
        double half = (1 - share) * on.halfWidth() + share * back.halfWidth() + rock;
        return new Estimate(
                earlier.origins().get(frame).plus(stop.counted()),
                shared(stop, from, to, corrections[last], corrections[next]) + offsets[last][frame + 1],
                spread,
                half + (1 - share) * a.minus() + share * b.minus(),
                half + (1 - share) * a.plus() + share * b.plus());
    }

    private static double share(Stop stop, Stop from, Stop to) {
        double whole = to.weight() - from.weight();
        return whole > 0 ? (stop.weight() - from.weight()) / whole : 0;
    }

    private static double shared(Stop stop, Stop from, Stop to, double atFrom, double atTo) {
        double middle = stop.total().since(from.total()).middle();
        double all = to.total().since(from.total()).middle();
        return atFrom + middle + share(stop, from, to) * (atTo - atFrom - all);
    }
}
