/**
 * What the technician says: one short line of text, read into an {@link everyblade.core.entry.Entry}.
 *
 * <p>Takes lines of text and the rows of an engine model. Gives entries whose words are understood but not yet placed:
 * whether there is such a view, or whether the rotor may turn that way, depends on what was said before and is judged
 * in {@code turning}. Every value keeps the column at which it was said, so that a later refusal can still point at it.
 */
package everyblade.core.entry;
