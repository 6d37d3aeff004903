package everyblade.core.turning;

import everyblade.core.angle.Turn;

/**
 * Where a row stood by dead reckoning: counted on, or back, from a fix that knows it, or shared between two.
 *
 * @param track whose stops are asked about
 * @param smoothed its fixes with every later sighting taken into account
 */
record Reckoning(Track track, FixedIntervalSmoother smoothed) {

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

        SmoothedTrack.Place place() {
            Turn best = counted.plus(Turn.ofDegrees(correction));
            return new SmoothedTrack.Place(
                    best.minus(Turn.ofDegrees(spread + below)), best.plus(Turn.ofDegrees(spread + above)), best);
        }

        Estimate turned(double degrees) {
            return new Estimate(counted, correction + degrees, spread, below, above);
        }

        /** As sure as the other one, if that is surer: what is known later makes nothing less sure. */
        Estimate asGoodAs(Estimate other) {
            return room() <= other.room()
                    ? this
                    : new Estimate(counted, correction, other.spread, other.below, other.above);
        }

        private double room() {
            return 2 * spread + below + above;
        }
    }

    Stop stopOf(int fix) {
        return track.stops().get(track.fixes().get(fix).sighting().stop());
    }

    /** Counted on, or back, from one fix. */
    Estimate from(String row, double rock, int index, int fixIndex) {
        KalmanUpdate fix = track.fixes().get(fixIndex);
        Stop stop = track.stops().get(index);
        Stop other = stopOf(fixIndex);
        int frame = fix.frame(row);
        Uncertainty link = fix.sighting().stop() <= index
                ? stop.total().since(other.total())
                : other.total().since(stop.total()).reversed();
        Uncertainty off = fix.off()[frame].and(link);
        return new Estimate(
                fix.origins().get(frame).plus(stop.counted()),
                smoothed.correction(fixIndex) + smoothed.offset(fixIndex, row),
                Math.sqrt(off.variance()),
                off.minus() + rock,
                off.plus() + rock);
    }

    Estimate between(String row, double rock, Stop stop, int last, int next) {
        KalmanUpdate earlier = track.fixes().get(last);
        KalmanUpdate later = track.fixes().get(next);
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
                shared(stop, from, to, smoothed.correction(last), smoothed.correction(next))
                        + smoothed.offset(last, row),
                spread,
                half + (1 - share) * a.minus() + share * b.minus(),
                half + (1 - share) * a.plus() + share * b.plus());
    }

    private static double share(Stop stop, Stop from, Stop to) {
        double whole = to.weight() - from.weight();
        return whole > 0 ? (stop.weight() - from.weight()) / whole : 0;
    }

    static double shared(Stop stop, Stop from, Stop to, double atFrom, double atTo) {
        double middle = stop.total().since(from.total()).middle();
        double all = to.total().since(from.total()).middle();
        return atFrom + middle + share(stop, from, to) * (atTo - atFrom - all);
    }
}
