/**
 * Damage that was never done: invented from a number, and what it looks like.
 *
 * <p>Takes an airfoil's mesh, a recipe and a seed. Gives what is on each airfoil, {@link everyblade.practice.harm.Harm}, and its
 * looks as traces on a surface. The same seed gives the same on every machine: the dice are our own and sines are those of
 * {@link StrictMath}. mm, in the frame of the airfoil standing at clock 0.
 */
package everyblade.practice.harm;
