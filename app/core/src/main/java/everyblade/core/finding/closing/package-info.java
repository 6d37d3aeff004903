/**
 * Closing up: everything that is still open in a record, so that nothing is forgotten and nothing stays inside.
 *
 * <p>Takes the folded journal, its gaps and the judgements of its findings. Gives a list in which each thing names the
 * entry that opened it, where it is, and who said so.
 */
package everyblade.core.finding.closing;
