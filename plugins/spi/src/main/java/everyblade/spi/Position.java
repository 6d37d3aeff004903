package everyblade.spi;

/**
 * One setting of movable vanes.
 *
 * @param stagger added to the stagger of every section, degrees
 */
public record Position(double stagger) {}
