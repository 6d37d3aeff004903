/**
 * The map: what was inspected, drawn.
 *
 * <p>Takes a {@link everyblade.core.coverage.Coverage} and what the title block says; makes a
 * {@link everyblade.picture.scene.Scene} and gives it as SVG, PNG or PDF. All rows stand as rings, where they are now;
 * or one row large, with the same row unrolled beside it. Needs no display, reads no file and no clock: the same job gives
 * the same bytes.
 */
package everyblade.picture;
