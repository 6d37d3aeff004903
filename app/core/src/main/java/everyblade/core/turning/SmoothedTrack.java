package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.util.ArrayList;
import java.util.List;
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
 * <p>Cost: the fixes once, from the last one back as far as is asked, then little for a stop.
 */
public final class SmoothedTrack {

    /**
     * Where airfoil 1 of a row stood at a stop: between two clock angles, unrolled, at 95 %.
     *
     * @param low least angle
     * @param high greatest angle
     * @param best most likely angle
     */
    public record Place(Turn low, Turn high, Turn best) {

        /** The same with its ± so many times as wide. */
        Place widened(double times) {
            return new Place(
                    best.minus(Turn.ofDegrees(times * best.minus(low).degrees())),
                    best.plus(Turn.ofDegrees(times * high.minus(best).degrees())),
                    best);
        }

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

        /** The same for a claim that is one of many: see {@link SmoothedTrack#widening}. */
        public Stand widened(int run) {
            double times = widening(run);
            return times == 1
                    ? this
                    : new Stand(place.map(at -> at.widened(times)), otherwise.map(at -> at.widened(times)));
        }

        /** Whether the place can be relied on. */
        public boolean sure() {
            return place.isPresent() && otherwise.isEmpty();
        }
    }

    /** No fix is such. */
    private static final int NONE = -1;

    /** So many runs are claimed at their stated ±. */
    private static final int AT_FULL = 10;

    private final Track track;
    private final FixedIntervalSmoother smoothed;
    private final Reckoning reckoning;

    private SmoothedTrack(Track track) {
        this.track = track;
        this.smoothed = new FixedIntervalSmoother(track.fixes());
        this.reckoning = new Reckoning(track, smoothed);
    }

    static SmoothedTrack of(Track track) {
        return new SmoothedTrack(track);
    }

    /**
     * Where airfoil 1 of a row stood.
     *
     * @param row a row that was identified on this track at any time; otherwise it may have stood anywhere
     * @param rock by how much its airfoils lean either way, degrees
     */
    public Stand at(String row, double rock, int stop) {
        List<Reckoning.Estimate> estimates = estimates(row, rock, stop);
        return new Stand(
                estimates.stream().findFirst().map(Reckoning.Estimate::place),
                estimates.stream().skip(1).findFirst().map(Reckoning.Estimate::place));
    }

    /**
     * Where airfoil 1 of a row stood at each stop from one to another, unrolled along the counted moves: what is known of
     * two stops may come from identifications that nothing but the row connects.
     *
     * @param run number of the run of watching
     */
    public List<Stand> course(String row, double rock, int from, int to, int run) {
        List<Stand> course = new ArrayList<>();
        for (int stop = from; stop <= to; stop++) {
            Stand stand = at(row, rock, stop).widened(run);
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
    List<Reckoning.Estimate> estimates(String row, double rock, int stop) {
        int stretch = track.stops().get(stop).stretch();
        int last = nearest(stretch, track.fixesUpTo(stop) - 1, -1, fix -> fix.knows(row));
        int next = nearest(stretch, track.fixesUpTo(stop), 1, fix -> fix.knows(row));
        if (last == NONE && next == NONE) {
            return doubtful(row, rock, stop);
        }
        Reckoning.Estimate best = estimate(row, rock, stop, last, next);
        int telling = nearest(stretch, last, -1, fix -> fix.tells(row));
        int tellingNext = nearest(stretch, next, 1, fix -> fix.tells(row));
        if (telling != last || tellingNext != next) {
            best = best.asGoodAs(estimate(row, rock, stop, telling, tellingNext));
        }
        return List.of(telling == NONE ? best : best.asGoodAs(reckoning.from(row, rock, stop, telling)));
    }

    private Reckoning.Estimate estimate(String row, double rock, int stop, int last, int next) {
        boolean seenHere = last != NONE && track.fixes().get(last).sighting().stop() == stop;
        if (seenHere || next == NONE) {
            return reckoning.from(row, rock, stop, last);
        }
        return last == NONE
                ? reckoning.from(row, rock, stop, next)
                : reckoning.between(row, rock, track.stops().get(stop), last, next);
    }

    /** Over steps that may hold a loss: counted on from before, or back from after; known from one side only, with the loss or without. */
    private List<Reckoning.Estimate> doubtful(String row, double rock, int stop) {
        int last = unslipped(row, stop, track.fixesUpTo(stop) - 1, -1);
        int next = unslipped(row, stop, track.fixesUpTo(stop), 1);
        if (last == NONE && next == NONE) {
            return List.of();
        }
        if (last == NONE) {
            Reckoning.Estimate back = reckoning.from(row, rock, stop, next);
            return List.of(
                    back,
                    back.turned(lost(stop, track.fixes().get(next).sighting().stop())));
        }
        Reckoning.Estimate on = reckoning.from(row, rock, stop, last);
        return List.of(
                on,
                next == NONE
                        ? on.turned(-lost(track.fixes().get(last).sighting().stop(), stop))
                        : reckoning.from(row, rock, stop, next));
    }

    /** By how much the count was found off over a step between two stops, degrees. */
    private double lost(int from, int to) {
        return track.checks().stream()
                .filter(check -> {
                    int step = check.steps().nextSetBit(from + 1);
                    return step >= 0 && step <= to;
                })
                .flatMap(check -> check.found().stream())
                .mapToDouble(CountError::degrees)
                .reduce(0, (earlier, later) -> later);
    }

    /**
     * How many times wider ± is taken where a run of watching is one of many. A job's claims are to hold all together at
     * 95 %, and each run adds two ends that may be wrong. Ten runs stay well within that; those after them share what is
     * left, so that the chance of a wrong end falls with the cube of a run's number. What was claimed before stays as it is.
     *
     * @param run number of the run in the job, from 1
     */
    public static double widening(int run) {
        return run <= AT_FULL ? 1 : Math.sqrt(1 + 1.5 * Math.log((double) run / AT_FULL));
    }

    /** Whether the count may have been lost on the way to a stop from the one before. */
    public boolean doubtful(int stop) {
        return track.stops().get(stop).doubtful();
    }

    /** The counted angle at a stop as a reading of the shaft would show it, without any correction; 0 to a turn. */
    public Turn counted(int stop) {
        return track.stops()
                .get(stop)
                .counted()
                .plus(track.label(stop).offset())
                .wrapped();
    }

    /** By how much the track was turned from one stop to another, as counted. */
    public Turn counted(int from, int to) {
        return track.stops().get(to).counted().minus(track.stops().get(from).counted());
    }

    /** What the way from one stop to another, either of them first, may be off in a run, degrees; empty if it was not counted. */
    public OptionalDouble apart(int one, int other, int run) {
        Stop from = track.stops().get(Math.min(one, other));
        Stop to = track.stops().get(Math.max(one, other));
        Uncertainty way = to.total().since(from.total());
        return from.stretch() == to.stretch()
                ? OptionalDouble.of(widening(run) * Math.max(way.below(), way.above()))
                : OptionalDouble.empty();
    }

    /** The counted angle at a stop, corrected since the reading was set, as a reading of the shaft would show it; 0 to a turn. */
    public Turn adjusted(int stop) {
        int set = track.fixesUpTo(track.label(stop).from()) - 1;
        int last = track.fixesUpTo(stop) - 1;
        double beyond = new Dial(track.fixes(), smoothed::correction).beyondCounted(set, last, correction(stop, last));
        return counted(stop).plus(Turn.ofDegrees(beyond)).wrapped();
    }

    /** Correction of the counted angle at a stop, degrees; it is shared out where counted moves lead from the last fix to the next. */
    private double correction(int stop, int last) {
        double correction = smoothed.correction(last);
        if (last + 1 == track.fixes().size()
                || track.fixes().get(last).sighting().stop() == stop) {
            return correction;
        }
        Stop here = track.stops().get(stop);
        Stop from = reckoning.stopOf(last);
        Stop to = reckoning.stopOf(last + 1);
        return from.stretch() == here.stretch() && to.stretch() == here.stretch()
                ? Reckoning.shared(here, from, to, correction, smoothed.correction(last + 1))
                : correction;
    }

    /** Index of the nearest such fix from this one on, in the stretch; {@link #NONE} if there is none. */
    private int nearest(int stretch, int from, int step, Predicate<KalmanUpdate> such) {
        for (int i = from;
                i >= 0 && i < track.fixes().size() && reckoning.stopOf(i).stretch() == stretch;
                i += step) {
            if (such.test(track.fixes().get(i))) {
                return i;
            }
        }
        return NONE;
    }

    /** Index of the nearest fix from this one on that knows the row, with no slip between; {@link #NONE} if there is none. */
    private int unslipped(String row, int stop, int from, int step) {
        for (int i = from; i >= 0 && i < track.fixes().size(); i += step) {
            if (track.fixes().get(i).knows(row)) {
                int seen = track.fixes().get(i).sighting().stop();
                for (int s = Math.min(seen, stop) + 1; s <= Math.max(seen, stop); s++) {
                    if (track.stops().get(s).way() == Stop.Way.SLIPPED) {
                        return NONE;
                    }
                }
                return i;
            }
        }
        return NONE;
    }
}
