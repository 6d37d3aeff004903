package everyblade.core.angle;

/**
 * The clock positions of the airfoils of a row, evenly spaced: number i (from 0, modulo the count) stands at
 * {@code base + i · turn / count}, computed from the index and never summed.
 *
 * @param base where number 0 stands
 * @param count how many airfoils, at least one
 */
public record PitchGrid(Turn base, int count) {

    public PitchGrid {
        if (count < 1) {
            throw new IllegalArgumentException("a row needs at least one airfoil");
        }
    }

    /** Where number i stands, floored to the grid once, 0 ≤ tick &lt; a turn. */
    public long tick(int i) {
        return base.plus(Turn.ofFraction(Math.floorMod(i, count), count))
                .wrapped()
                .floorTicks();
    }

    /**
     * The airfoils that stand in the half-open range from one angle to another, unrolled; all of them if it is a turn or
     * more, none if it is empty. Exact, in constant time.
     */
    public IndexRun between(Turn from, Turn to) {
        return run(from.ceilPitchesFrom(base, count), to.ceilPitchesFrom(base, count), count);
    }

    /**
     * The airfoils that come to stand in the half-open range from one angle to another, unrolled, while number 0 is turned
     * through all angles from {@code first} to {@code last}. Exact, in constant time.
     */
    public static IndexRun passing(Turn from, Turn to, Turn first, Turn last, int count) {
        return run(from.ceilPitchesFrom(last, count), to.ceilPitchesFrom(first, count), count);
    }

    private static IndexRun run(long first, long end, int count) {
        if (end <= first) {
            return new IndexRun(0, 0);
        }
        return end - first >= count
                ? new IndexRun(0, count)
                : new IndexRun(Math.floorMod(first, count), (int) (end - first));
    }
}
