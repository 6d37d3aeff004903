/**
 * The record of a job: a folder with an append-only journal, the engine model as it was, and photos.
 *
 * <p>Takes entries that were judged already, gives them back unchanged, and says so when it cannot. It stores what was
 * said together with what it means; it computes nothing from it. {@link everyblade.record.JobFolder} is the way in:
 * start, read, write, verify. {@code Journal} and what it uses are pure functions of bytes; only
 * {@link everyblade.record.Disk} and those who are given one touch files.
 */
package everyblade.record;
