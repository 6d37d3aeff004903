/**
 * Which airfoil a picture shows, told from when it was taken.
 *
 * <p>Takes the folded journal and the time at which a picture was taken. Gives the view in use, the shaft angle and the
 * most likely airfoil, each with what it may be off. A person confirms it; until then it is only likely.
 */
package everyblade.core.finding.photo;
