package everyblade.practice.progress;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * So many of so many were found, whatever their size.
 *
 * @param found of them
 * @param of all
 */
public record ShareFound(int found, int of) {

    public ShareFound {
        if (found < 0 || of < 1 || found > of) {
            throw new IllegalArgumentException("of at least one thing, from none to all are found");
        }
    }

    /** The share. */
    public double share() {
        return (double) found / of;
    }

    /**
     * The share that is really found at least, with this confidence, by the exact method: C. J. Clopper, E. S. Pearson, Biometrika
     * 26 (1934) 404–413.
     *
     * @param confidence one-sided, as 0.95
     */
    public double atLeast(double confidence) {
        return found == 0
                ? 0
                : new BetaDistribution(found, of - found + 1).inverseCumulativeProbability(1 - confidence);
    }
}
