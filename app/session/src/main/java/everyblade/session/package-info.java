/**
 * A job open for work, as the window has it open: what a person types is shown before it is kept, judged, forced to disk and
 * only then told.
 *
 * <p>Takes a job folder and lines of text; gives a {@link everyblade.session.JobState} after each. Beside it stand the two ways
 * from command line to window and back, {@link everyblade.session.Opening} and {@link everyblade.session.CommandRun}, which keep
 * the two from knowing each other.
 */
package everyblade.session;
