/**
 * A job's pictures: when and where each was taken, what it likely shows, and how long something in it is.
 *
 * <p>Takes the folded journal, the engine's geometry and the files that entries name. Gives pictures ready to be shown and
 * sizes with their uncertainty; nothing here writes anything.
 */
package everyblade.session.photo;
