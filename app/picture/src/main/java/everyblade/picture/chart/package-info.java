/**
 * Ordinary charts: the share seen against time, and the cells of each airfoil of a row.
 *
 * <p>Takes a folded journal or the coverage of a row. Paints with Graphics2D.
 */
package everyblade.picture.chart;
