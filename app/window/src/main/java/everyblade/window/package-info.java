/**
 * The window: panels that show what the view package says, and keys and buttons that say entries.
 *
 * <p>Takes a job folder and a person's hands. Everything that may take time goes through one door off the event thread.
 */
package everyblade.window;
