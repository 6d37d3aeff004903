/**
 * Writes a scene out as SVG text.
 *
 * <p>The same scene and theme give the same bytes, whatever the machine, its locale and its fonts.
 */
package everyblade.picture.svg;
