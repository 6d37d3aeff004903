/**
 * Angles without rounding: positions and lengths on a circle in whole ticks, arcs, sets of arcs, and exact amounts of
 * turning.
 *
 * <p>Takes degrees, fractions and airfoil counts. Gives values that add up exactly: degrees typed to five decimals,
 * gear ratios and pitches stay exact until they meet the grid of ticks, once. An arc is half-open, a start and a length
 * from nothing to a full turn, so that empty and full cannot be confused.
 */
package everyblade.core.angle;
