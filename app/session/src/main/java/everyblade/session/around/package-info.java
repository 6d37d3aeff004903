/**
 * The world outside a job: streams, clock, environment, disk, the user's folders, and how a failure is told in one line.
 *
 * <p>Handed in by whoever starts the program, so that a test hands in its own.
 */
package everyblade.session.around;
