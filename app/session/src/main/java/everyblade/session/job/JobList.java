package everyblade.session.job;

import everyblade.core.coverage.Coverage;
import everyblade.core.move.Outline;
import everyblade.core.move.Ticked;
import everyblade.session.around.Surroundings;

/**
 * The plan of a job as the list of it, ticked off by its record. Nothing of it is kept in the job, so whoever sends a job cannot
 * tick anything but by what he says was seen.
 *
 * @param job whose it is
 * @param begun what is planned for it from nothing seen
 * @param now what was seen by now
 * @param ticked the plan held against that
 */
public record JobList(OpenedJob job, Prepared begun, Coverage now, Ticked ticked) {

    public static JobList of(Surroundings around, OpenedJob job) {
        Coverage now = job.coverage();
        Prepared begun = Prepared.of(around, job, now);
        return new JobList(job, begun, now, Ticked.of(Outline.of(begun.plan()), now));
    }
}
