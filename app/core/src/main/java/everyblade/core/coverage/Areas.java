package everyblade.core.coverage;

/**
 * Shares of a surface, each from 0 to 1; where no surface is known, every cell weighs the same.
 *
 * @param reach within reach of some view
 * @param seen surely seen
 * @param maybe surely or maybe seen
 */
public record Areas(double reach, double seen, double maybe) {

    /** What is surely seen, of what is within reach; 0 if nothing is. */
    public double seenOfReach() {
        return reach > 0 ? seen / reach : 0;
    }
}
