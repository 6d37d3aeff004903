package everyblade.practice.harm;

/**
 * Numbers that look like chance and are the same for the same seed on every machine and version of Java. The generator is
 * SplitMix64: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014, figure 17.
 */
public final class Dice {

    private static final long GOLDEN = 0x9e3779b97f4a7c15L;

    private long state;

    public Dice(long seed) {
        state = seed;
    }

    /** Any number. */
    public long next() {
        state += GOLDEN;
        long z = state;
        z = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L;
        z = (z ^ z >>> 27) * 0x94d049bb133111ebL;
        return z ^ z >>> 31;
    }

    /** From 0 up to, not including, 1. */
    public double share() {
        return (next() >>> 11) * 0x1p-53;
    }

    /** From one value up to another. */
    public double between(double from, double to) {
        return from + share() * (to - from);
    }

    /** A whole number from 0 up to, not including, this one. */
    public int below(int bound) {
        return (int) (share() * bound);
    }
}
