/**
 * Pictures of a view: one airfoil unrolled with how long each facet is in sight in a turn, and what the scope tip sees at one
 * shaft angle.
 *
 * <p>Takes a {@link everyblade.picture.sight.Vantage}, which is a station with all that sight from it is computed with, and
 * gives scenes and images; needs no display, and gives the same picture each time.
 */
package everyblade.picture.sight;
