/**
 * The report of a job: what was asked, what was seen and what not, what was found, what is open, and the log.
 *
 * <p>Takes a folded journal, its coverage and gaps, and what was fixed when the job started. Gives a PDF. Every number
 * in it can be computed again from the record, whose head hash stands on every page.
 */
package everyblade.picture.report;
