package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a row stood at every stop of its track, with every sighting taken into account: the least squares solution over
 * all moves and sightings of the track, and what each place may be off.
 *
 * <p>Between two sightings the count error is shared over the moves in proportion to their variance; after the last one
 * the counted angle stands, with its errors growing. Where the count was lost between two sightings, the places between
 * them are doubtful: counted on from the earlier one, or back from the later one.
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
    public record Place(Turn low, Turn high, Turn best) {}

    /**
     * What is known of a row at a stop.
     *
     * @param place where it stood; empty if it may have stood anywhere
     * @param otherwise where it stood if the count was lost before this stop; then neither is sure
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
     * @param below what it may be off towards smaller angles, degrees
     * @param above what it may be off towards larger angles, degrees
     */
    record Estimate(Turn counted, double correction, double below, double above) {

        Place place() {
            Turn best = counted.plus(Turn.ofDegrees(correction));
            return new Place(best.minus(Turn.ofDegrees(below)), best.plus(Turn.ofDegrees(above)), best);
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
        double[] adjoint = new double[0];
        for (int i = count - 1; i >= 0; i--) {
            Fix fix = track.fixes().get(i);
            boolean eraEnds = i == count - 1 || track.fixes().get(i + 1).era() != fix.era();
            if (eraEnds) {
                adjoint = new double[fix.state().length];
                offsets[i] = fix.state();
            } else {
                offsets[i] = offsets[i + 1];
            }
            double correction = fix.state()[0];
            for (int j = 0; j < adjoint.length; j++) {
                correction -= fix.covariance()[0][j] * adjoint[j];
            }
            corrections[i] = correction;
            adjoint = before(fix, adjoint);
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

    /** One estimate where the row is known, none where it is not, two where the count was lost round this stop. */
    List<Estimate> estimates(String row, double rock, int stop) {
        int stretch = track.stops().get(stop).stretch();
        int last = knowing(row, stretch, fixesUpTo[stop] - 1, -1);
        int next = knowing(row, stretch, fixesUpTo[stop], 1);
        if (last < 0 && next < 0) {
            return List.of();
        }
        boolean seenHere = last >= 0 && track.fixes().get(last).sighting().stop() == stop;
        if (seenHere || next < 0) {
            return List.of(from(row, rock, stop, last));
        }
        if (last < 0) {
            Estimate back = from(row, rock, stop, next);
            return lostBetween(fixesUpTo[stop] - 1, next) ? List.of(back, back) : List.of(back);
        }
        if (lostBetween(last, next)) {
            return List.of(from(row, rock, stop, last), from(row, rock, stop, next));
        }
        return List.of(between(row, rock, track.stops().get(stop), last, next));
    }

    /** Whether an identification at this stop found that the count was lost on the way there. */
    public boolean lostAt(int stop) {
        for (int i = fixesUpTo[stop] - 1;
                i >= 0 && track.fixes().get(i).sighting().stop() == stop;
                i--) {
            if (track.fixes().get(i).lost()) {
                return true;
            }
        }
        return false;
    }

    /** The counted angle at a stop as a reading of the shaft would show it, without any correction; 0 to a turn. */
    public Turn counted(int stop) {
        return track.stops().get(stop).counted().plus(track.label()).wrapped();
    }

    /** By how much the track was turned from one stop to another, as counted. */
    public Turn counted(int from, int to) {
        return track.stops().get(to).counted().minus(track.stops().get(from).counted());
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
                if (from.stretch() == here.stretch()
                        && to.stretch() == here.stretch()
                        && !track.fixes().get(last + 1).lost()) {
                    correction = shared(here, from, to, corrections[last], corrections[last + 1]);
                }
            }
        }
        return here.counted()
                .plus(track.label())
                .plus(Turn.ofDegrees(correction))
                .wrapped();
    }

    private Stop stopOf(int fix) {
        return track.stops().get(track.fixes().get(fix).sighting().stop());
    }

    /** Index of the nearest fix from this one on that knows the row, in the stop's stretch; −1 if there is none. */
    private int knowing(String row, int stretch, int from, int step) {
        for (int i = from; i >= 0 && i < corrections.length; i += step) {
            if (stopOf(i).stretch() != stretch) {
                return -1;
            }
            if (track.fixes().get(i).frame(row) >= 0) {
                return i;
            }
        }
        return -1;
    }

    private boolean lostBetween(int last, int next) {
        for (int i = last + 1; i <= next; i++) {
            if (track.fixes().get(i).lost()) {
                return true;
            }
        }
        return false;
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
                off.below() + rock,
                off.above() + rock);
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
                spread + half + (1 - share) * a.minus() + share * b.minus(),
                spread + half + (1 - share) * a.plus() + share * b.plus());
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

    /** The count errors that identifications found, in order. */
    List<CountError> countErrors() {
        List<CountError> errors = new ArrayList<>();
        track.fixes().forEach(fix -> fix.countError().ifPresent(errors::add));
        return errors;
    }
}
