/**
 * The map and the unrolled row as components of the window.
 *
 * <p>Takes a coverage; shows its cells, tells which one is pointed at or chosen, by mouse and by keyboard. What is shown
 * is a scene of records, made elsewhere; painting it and asking what lies under the mouse use the same scene through the
 * same transform.
 */
package everyblade.window.map;
