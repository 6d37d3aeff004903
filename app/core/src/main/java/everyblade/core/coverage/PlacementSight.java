package everyblade.core.coverage;

import everyblade.core.turning.Leg;
import everyblade.core.turning.Stance;
import java.util.Arrays;

/**
 * What was surely in sight from one placement of the scope tip, told apart by where within its tolerance it may have stood:
 * that place is unknown, but one and the same as long as the scope tip holds. Of a scope tip that was moved, by station
 * too.
 */
final class PlacementSight {

    private final int placement;
    private final boolean all;
    private final PatchBits[][] sure;
    private final PatchBits[][] whole;
    private final PatchBits fromEveryPose;

    private PlacementSight(
            int placement, boolean all, PatchBits[][] sure, PatchBits[][] whole, PatchBits fromEveryPose) {
        this.placement = placement;
        this.all = all;
        this.sure = sure;
        this.whole = whole;
        this.fromEveryPose = fromEveryPose;
    }

    /**
     * Nothing yet.
     *
     * @param leg the first one of the placement
     * @param poses how many stand for the tolerance
     */
    static PlacementSight start(Leg leg, int poses, int airfoils, int facets) {
        Stance stance = leg.stance();
        int slots = stance.moved() ? stance.stations().size() : 1;
        return new PlacementSight(
                leg.placement(),
                leg.from() != leg.to(),
                none(slots, poses, airfoils, facets),
                none(slots, poses, airfoils, facets),
                PatchBits.none(airfoils, facets));
    }

    private static PatchBits[][] none(int slots, int poses, int airfoils, int facets) {
        PatchBits[][] none = new PatchBits[slots][poses];
        for (PatchBits[] slot : none) {
            Arrays.setAll(slot, pose -> PatchBits.none(airfoils, facets));
        }
        return none;
    }

    PlacementSight copy() {
        return new PlacementSight(placement, all, copy(sure), copy(whole), fromEveryPose.copy());
    }

    private static PatchBits[][] copy(PatchBits[][] of) {
        return Arrays.stream(of)
                .map(slot -> Arrays.stream(slot).map(PatchBits::copy).toArray(PatchBits[]::new))
                .toArray(PatchBits[][]::new);
    }

    int placement() {
        return placement;
    }

    int poses() {
        return sure[0].length;
    }

    /** Whether it was moved through stations, so that what one of them shows is not all. */
    boolean moved() {
        return sure.length > 1;
    }

    /** What was surely in sight whichever pose it was, and so needs not be kept for each; of a scope tip that held. */
    PatchBits fromEveryPose() {
        return fromEveryPose;
    }

    /** What was surely in sight from one pose of the family at one station of those through which it was moved. */
    PatchBits sure(int station, int pose) {
        return sure[station][pose];
    }

    /** Of that, patches along an edge of sight that were in sight as a whole. */
    PatchBits whole(int station, int pose) {
        return whole[station][pose];
    }

    /**
     * Adds what this placement surely showed: what every pose shows; of a scope tip moved at rest what any station on the
     * way shows, of one moved while the rotor turned what all of them show.
     */
    void addTo(FacetsSeen sum) {
        sum.sure().add(shown(sure));
        sum.sure().add(fromEveryPose);
        sum.whole().add(shown(whole));
    }

    private PatchBits shown(PatchBits[][] bits) {
        PatchBits shown = null;
        for (PatchBits[] slot : bits) {
            PatchBits every = slot[0].copy();
            for (PatchBits pose : slot) {
                every.keep(pose);
            }
            if (shown == null) {
                shown = every;
            } else if (all) {
                shown.keep(every);
            } else {
                shown.add(every);
            }
        }
        return shown;
    }
}
