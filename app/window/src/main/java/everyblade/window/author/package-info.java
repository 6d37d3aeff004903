/**
 * What the window knows while a model author writes: the folder as it was last read, what is wrong with it and where, what can
 * be drawn of it, and what its views show.
 *
 * <p>Takes a folder with an {@code engine.json}, read again whenever it was saved. Gives values that never change, for panels
 * to show. Nothing here knows Swing, so all of it is tested without a display.
 */
package everyblade.window.author;
