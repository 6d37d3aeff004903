/**
 * A job read from its folder: its journal folded over its frozen engine model, with limits, review and previous record; and what
 * is said of it in the same words by window and command line.
 *
 * <p>What was computed before is taken from the user's cache; see the {@code Kept…} types.
 */
package everyblade.session.job;
