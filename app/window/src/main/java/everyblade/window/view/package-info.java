/**
 * What the window knows and decides, without any window: the job as it stands, what an entry will do, what is left, which
 * key does what.
 *
 * <p>Takes a job folder and what a person types. Gives records of words and numbers for panels to show. Nothing here
 * knows Swing, so all of it is tested without a display.
 */
package everyblade.window.view;
