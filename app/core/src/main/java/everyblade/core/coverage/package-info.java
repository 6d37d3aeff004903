/**
 * What was seen of every cell.
 *
 * <p>Takes a {@link everyblade.core.turning.Situation} and what the views show. Gives, row by row, which cells are seen,
 * only maybe seen, or unseen, and why; and the shares of them. Coverage is the union over all passes of what was in
 * sight and watched.
 */
package everyblade.core.coverage;
