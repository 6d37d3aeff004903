package everyblade.core.coverage;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Patches;
import java.util.BitSet;
import java.util.Optional;

/**
 * What is to be said of the cells of one airfoil, worked out from plain sets of its patches, one patch at a time: the tests' own
 * reading of what a cell is and of page 6 of the decisions.
 */
final class NaiveCells {

    /** A sum may be off by so much of the surface. */
    private static final double SLACK = 1e-9;

    private final Zoning zoning;
    private final Patches patches;
    private final Judging judging;
    private final Airfoil airfoil;

    /**
     * Patches of which something is true.
     *
     * @param sure surely seen
     * @param whole of these, those along an edge of sight that were seen as a whole
     * @param maybe surely or maybe seen
     * @param reach within reach of some view, or surely seen
     */
    record Airfoil(BitSet sure, BitSet whole, BitSet maybe, BitSet reach) {

        /** The same airfoil if these patches had been seen, and no others. */
        Airfoil seeing(BitSet other, BitSet otherWhole) {
            return new Airfoil(other, otherWhole, maybe, reach);
        }
    }

    NaiveCells(Zoning zoning, Patches patches, Judging judging, Airfoil airfoil) {
        this.zoning = zoning;
        this.patches = patches;
        this.judging = judging;
        this.airfoil = airfoil;
    }

    /** An area, and how much of it lies in the outermost strip, mm². */
    record Amount(double all, double strip) {
        Amount less(Amount other) {
            return new Amount(all - other.all, strip - other.strip);
        }
    }

    State state(int zone) {
        return done(zone, airfoil.sure, true)
                .orElse(done(zone, airfoil.maybe, false)
                        .map(some -> State.MAYBE)
                        .orElse(State.UNSEEN));
    }

    /** Seen or seen in part, if it were for these patches. */
    Optional<State> done(int zone, BitSet of, boolean edgesDoubtful) {
        BitSet everything = new BitSet();
        everything.set(0, patches.count());
        Amount off = edgesDoubtful ? surely(zone, everything) : amount(zone, of);
        if (enough(off, amount(zone, everything), zone)) {
            return Optional.of(State.SEEN);
        }
        Amount ofReach = edgesDoubtful ? surely(zone, airfoil.reach) : amount(zone, of);
        return within(zone, airfoil.reach) && enough(ofReach, amount(zone, airfoil.reach), zone)
                ? Optional.of(State.PART)
                : Optional.empty();
    }

    private boolean enough(Amount seen, Amount of, int zone) {
        double slack = slack(zone);
        return seen.all >= judging.seen() * of.all - slack && seen.strip >= judging.edge() * of.strip - slack;
    }

    /** Whether so much of a zone belongs to these patches that it is within reach. */
    boolean within(int zone, BitSet some) {
        double area = amount(zone, some).all;
        return area > 0 && area >= judging.reach() * own(zone) - slack(zone);
    }

    double own(int zone) {
        BitSet everything = new BitSet();
        everything.set(0, patches.count());
        return amount(zone, everything).all;
    }

    private double slack(int zone) {
        return SLACK * own(zone);
    }

    /**
     * What was surely seen of a zone, less what may be cut off by the edge of sight: of a patch beside one that was not seen half,
     * or a twentieth if it was seen as a whole. Nothing where all of it was seen.
     *
     * @param of patches that count, there and beyond the edge
     */
    Amount surely(int zone, BitSet of) {
        Amount seen = amount(zone, airfoil.sure);
        if (seen.all >= amount(zone, of).all - slack(zone)) {
            return seen;
        }
        double all = 0;
        double strip = 0;
        for (int patch = 0; patch < patches.count(); patch++) {
            if (patches.zone(patch) == zone && airfoil.sure.get(patch) && borders(patch, of)) {
                double off = (airfoil.whole.get(patch) ? 0.05 : 0.5)
                        * patches.facets().area(patch);
                all += off;
                strip += inStrip(patch) ? off : 0;
            }
        }
        return seen.less(new Amount(all, strip));
    }

    private boolean borders(int patch, BitSet of) {
        boolean borders = false;
        for (int edge = 0; edge < patches.edges(patch); edge++) {
            int beyond = patches.beyond(patch, edge);
            borders |= beyond >= 0 && !airfoil.sure.get(beyond) && of.get(beyond);
        }
        return borders;
    }

    Amount amount(int zone, BitSet of) {
        double all = 0;
        double strip = 0;
        for (int patch = 0; patch < patches.count(); patch++) {
            if (patches.zone(patch) == zone && of.get(patch)) {
                all += patches.facets().area(patch);
                strip += inStrip(patch) ? patches.facets().area(patch) : 0;
            }
        }
        return new Amount(all, strip);
    }

    private boolean inStrip(int patch) {
        return patches.atEdge(patch) && zoning.atEdge(patches.zone(patch));
    }
}
