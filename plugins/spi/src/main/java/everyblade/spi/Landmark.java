package everyblade.spi;

/**
 * An airfoil that can be told from the others: where a count can start or be checked.
 *
 * @param airfoil its number, from 1
 * @param what how it is recognised
 */
public record Landmark(int airfoil, String what) {}
