/**
 * What became of findings since the same engine's last record.
 *
 * <p>Takes the findings of both records and the hours and cycles that each states. Gives pairs of the same finding,
 * how each size grew, with its uncertainty, and what is new or was not entered again.
 */
package everyblade.core.finding.growth;
