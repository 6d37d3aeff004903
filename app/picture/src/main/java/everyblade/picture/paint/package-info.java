/** Paints a scene with Graphics2D: on the screen, into an image, onto a page. Needs no display. */
package everyblade.picture.paint;
