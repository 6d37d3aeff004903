package everyblade.core.coverage;

import everyblade.core.turning.Leg;
import everyblade.core.turning.Stance;
import java.util.List;

/**
 * What was surely in sight from one placement of the scope tip, told apart by where within its tolerance it may have stood:
 * that place is unknown, but one and the same as long as the scope tip holds. Of a scope tip that was moved, by station
 * too.
 */
final class PlacementSight {

    private final int placement;
    private final boolean all;
    private final PatchBits[][] sure;

    private PlacementSight(int placement, boolean all, PatchBits[][] sure) {
        this.placement = placement;
        this.all = all;
        this.sure = sure;
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
        PatchBits[][] sure = new PatchBits[slots][poses];
        for (PatchBits[] slot : sure) {
            for (int pose = 0; pose < poses; pose++) {
                slot[pose] = PatchBits.none(airfoils, facets);
            }
        }
        return new PlacementSight(leg.placement(), leg.from() != leg.to(), sure);
    }

    PlacementSight copy() {
        PatchBits[][] copies = new PatchBits[sure.length][];
        for (int slot = 0; slot < sure.length; slot++) {
            copies[slot] = List.of(sure[slot]).stream().map(PatchBits::copy).toArray(PatchBits[]::new);
        }
        return new PlacementSight(placement, all, copies);
    }

    int placement() {
        return placement;
    }

    int poses() {
        return sure[0].length;
    }

    /** What was surely in sight from one pose of the family at one station of those through which it was moved. */
    PatchBits sure(int station, int pose) {
        return sure[station][pose];
    }

    /**
     * Adds what this placement surely showed: what every pose shows; of a scope tip moved at rest what any station on the
     * way shows, of one moved while the rotor turned what all of them show.
     */
    void addTo(FacetsSeen sum) {
        PatchBits shown = null;
        for (PatchBits[] slot : sure) {
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
        sum.sure().add(shown);
    }
}
