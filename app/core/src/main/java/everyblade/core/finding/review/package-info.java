/**
 * What a reviewer, who was not there, has to say of a record.
 *
 * <p>Takes their remarks, which stand beside the journal and never in it, and the journal folded. Gives the questions that
 * were sent back, each with what answers it.
 */
package everyblade.core.finding.review;
