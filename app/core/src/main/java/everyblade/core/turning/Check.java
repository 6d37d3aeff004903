package everyblade.core.turning;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * What an identification says of the way on which its row was counted: nothing was lost on it, or something was, on one
 * step of it or several. A row is checked by its own identifications, and by those of rows whose place relative to it was
 * known before; the first datum of a row checks nothing, and no reading does, for the dial may slip on the shaft.
 *
 * <p>What identifications that agree have cleared is not suspected. Two losses that make each other good between two
 * identifications of a row cannot be noticed.
 *
 * @param steps of the way, each by the stop at which it ended; of one that agrees only those that it clears, and none
 *     once they are counted into the {@link Suspicion}
 * @param lost whether something was lost on the way
 * @param found the count error, empty if this only follows from another one of the same identification
 */
record Check(BitSet steps, boolean lost, Optional<CountError> found) {

    private static final double ROUNDING = 1e-9;

    /** Whether and how an identification checks what was counted; empty if it has nothing to compare with. */
    static Optional<Check> of(Track track, Sighting sighting) {
        Optional<Check> known = known(track, sighting);
        return known.isPresent() ? known : direct(track, sighting);
    }

    /** Against where the row is known to stand. */
    static Optional<Check> known(Track track, Sighting sighting) {
        return track.fixes()
                .last()
                .closing(track.stops(), sighting)
                .map(closing -> of(track, sighting, closing, Route.of(track, sighting.frame(), sighting.stop())));
    }

    /** Against the last identification of the same row, over steps that are in doubt. */
    private static Optional<Check> direct(Track track, Sighting sighting) {
        for (int i = track.sightings().size() - 1; i >= 0; i--) {
            Sighting before = track.sightings().get(i);
            if (before.frame().equals(sighting.frame())) {
                for (int stop = before.stop() + 1; stop <= sighting.stop(); stop++) {
                    if (track.stops().get(stop).way() == Stop.Way.SLIPPED) {
                        return Optional.empty();
                    }
                }
                BitSet steps = new BitSet();
                steps.set(before.stop() + 1, sighting.stop() + 1);
                return Optional.of(
                        of(track, sighting, KalmanUpdate.Closing.between(before, sighting, track.stops()), steps));
            }
        }
        return Optional.empty();
    }

    private static Check of(Track track, Sighting sighting, KalmanUpdate.Closing closing, BitSet route) {
        Uncertainty explained = closing.explained().and(new Uncertainty(0, sighting.rock(), sighting.rock()));
        double counted = closing.counted();
        boolean outside = counted > explained.below() + ROUNDING || counted < -explained.above() - ROUNDING;
        boolean lost = outside && Math.abs(counted) >= sighting.pitch() / 2 - ROUNDING;
        BitSet open = (BitSet) route.clone();
        if (lost) {
            open.andNot(track.suspicion().cleared());
        }
        CountError error = new CountError(
                sighting.entry(),
                since(track, sighting, open.isEmpty() ? sighting.stop() : open.nextSetBit(0) - 1),
                sighting.frame(),
                sighting.airfoil(),
                counted,
                explained,
                sighting.pitch(),
                outside,
                lost,
                false);
        return new Check(lost ? route : checked(route, track.stops()), lost, Optional.of(error));
    }

    /** The last identification or reading at a stop, from which was counted. */
    private static int since(Track track, Sighting sighting, int stop) {
        List<Sighting> sightings = track.sightings();
        for (int i = sightings.size() - 1; i >= 0 && sightings.get(i).stop() >= stop; i--) {
            if (sightings.get(i).stop() == stop && !sightings.get(i).reads()) {
                return sightings.get(i).entry();
            }
        }
        return track.stops().get(stop).entry();
    }

    /**
     * Of a way on which nothing was lost the steps on which singly nothing was: a counted move and the reading that
     * follows may have made each other good.
     */
    private static BitSet checked(BitSet route, List<Stop> stops) {
        BitSet clear = (BitSet) route.clone();
        for (int stop = route.nextSetBit(0); stop >= 0; stop = route.nextSetBit(stop + 1)) {
            if (stops.get(stop).way() == Stop.Way.READ) {
                int first = stop;
                while (route.get(first - 1) && stops.get(first - 1).way() == Stop.Way.COUNTED) {
                    first--;
                }
                if (first < stop) {
                    clear.clear(first, stop + 1);
                }
            }
        }
        return clear;
    }

    /** The steps that may hold the loss which this one has found. */
    static BitSet suspect(Track track, Check lost) {
        BitSet steps = (BitSet) lost.steps.clone();
        steps.andNot(track.suspicion().cleared());
        return steps;
    }

    /** The same, found where no step that was entered can hold the loss. */
    Check unlogged() {
        return new Check(new BitSet(), false, found.map(CountError::ofUnlogged));
    }

    /** The same, where the identification has told its count error already. */
    Check again() {
        return new Check(steps, lost, Optional.empty());
    }

    /** The same as a track keeps it: of one that agrees the steps would only say again what is cleared. */
    Check kept() {
        return lost ? this : new Check(new BitSet(), false, found);
    }
}
