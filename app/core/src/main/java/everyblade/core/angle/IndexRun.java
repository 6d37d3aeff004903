package everyblade.core.angle;

/**
 * A run of airfoil indices on the circle of a row.
 *
 * @param first 0 ≤ first &lt; the count of the row
 * @param length how many, from 0 to the count
 */
public record IndexRun(int first, int length) {

    public IndexRun {
        if (first < 0 || length < 0) {
            throw new IllegalArgumentException("a run of airfoils has no negative index or length");
        }
    }
}
