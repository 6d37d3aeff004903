/**
 * What was found wrong, and what the entered limits say of it.
 *
 * <p>Takes a folded journal, its coverage, and limits as data. Gives every finding with its size and uncertainty
 * ({@link everyblade.core.finding.Findings}) and a judgement of each ({@link everyblade.core.finding.Judging}) that
 * shows the rule, the figure and the margin. The limits are the user's; nothing here is a verdict of its own.
 */
package everyblade.core.finding;
