/**
 * Words, tables and drawings put on A4 pages.
 *
 * <p>Takes blocks in the order in which they are read. Gives a PDF with its font inside, a title, a language, an
 * outline, and the same head and foot on every page. Knows nothing of engines.
 */
package everyblade.picture.report.page;
