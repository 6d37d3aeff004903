/**
 * Two records of engines of the same model held against each other.
 *
 * <p>Takes the coverage of both. Gives, row by row, the cells that both, one or none of them shows as seen.
 */
package everyblade.core.finding.compared;
