package everyblade.core.surface;

import java.util.Arrays;

/** Where facets begin and end along chord and span, as rising shares from 0 to 1. */
final class Divisions {

    /** The share of the chord that each edge band takes. */
    static final double EDGE = 0.2;

    private Divisions() {}

    /**
     * Shares of the chord: a quarter of the facets, at least one, in each edge band, crowding towards the edge; the others
     * evenly between.
     *
     * @param split into how many each of these is divided, by the same law
     */
    static double[] chord(int facets, int split) {
        int whole = Math.max(1, Math.round(facets / 4f));
        int edge = split * whole;
        int middle = split * Math.max(1, facets - 2 * whole);
        double[] shares = new double[2 * edge + middle + 1];
        for (int i = 0; i <= edge; i++) {
            double crowded = EDGE * i * i / ((double) edge * edge);
            shares[i] = crowded;
            shares[shares.length - 1 - i] = 1 - crowded;
        }
        for (int i = 1; i < middle; i++) {
            shares[edge + i] = Between.mix(EDGE, 1 - EDGE, (double) i / middle);
        }
        return shares;
    }

    /** Shares of the span: equal bands, each divided evenly and alike, and each of these split again. */
    static double[] span(int bands, int facets, int split) {
        int each = (facets + bands - 1) / bands * split;
        double[] shares = new double[bands * each + 1];
        Arrays.setAll(shares, i -> (double) i / (bands * each));
        return shares;
    }

    /** The band in which a share of the whole lies, of so many equal ones. */
    static int band(double share, int bands) {
        return Math.max(0, Math.min(bands - 1, (int) (share * bands)));
    }

    /** 0 for the leading, 1 for the middle, 2 for the trailing band. */
    static int chordBand(double share) {
        return share < EDGE ? 0 : share <= 1 - EDGE ? 1 : 2;
    }
}
