/**
 * What is left, told as a person would.
 *
 * <p>Takes a coverage. Gives runs of airfoils with the same zones neither seen nor seen in part, why, and the view and
 * the turn that reach them.
 */
package everyblade.core.gap;
