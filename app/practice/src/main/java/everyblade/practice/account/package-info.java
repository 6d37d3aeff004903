/**
 * The truth afterwards: what was in sight, what was called, and what became of each piece of damage.
 *
 * <p>Takes the truth of a drill, its track and its fold. Gives how long each piece of damage was in sight and how well
 * ({@link everyblade.practice.account.TargetSighting}), and a {@link everyblade.practice.account.Debrief}.
 */
package everyblade.practice.account;
