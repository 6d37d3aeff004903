/**
 * A picture as records, in millimetres on the sheet, x to the right and y down, made without AWT.
 *
 * <p>A {@link everyblade.picture.scene.Scene} says which shapes lie where and in which named ink; it does not say what
 * colour an ink has. Interpreters elsewhere write it out as SVG or paint it. Whoever asks what lies under the mouse asks
 * the same records.
 */
package everyblade.picture.scene;
