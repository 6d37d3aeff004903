package everyblade.fleet;

import java.time.Instant;
import java.util.Optional;

/**
 * A chain as the store has it.
 *
 * @param first hash of its first line, by which it is known
 * @param job that of the journal that it is, or is a review of
 * @param site at which it is kept
 * @param year in which the job began, UTC
 * @param last number of its last line; −1 while none came
 * @param head hash of the last line
 * @param model id of the engine model
 * @param serial number of the engine
 * @param task what was to be done
 * @param by who began the job
 * @param begun when; empty while no line came, as are the others
 */
public record KeptChain(
        String first,
        String job,
        String site,
        int year,
        int last,
        String head,
        String model,
        String serial,
        String task,
        String by,
        Optional<Instant> begun) {}
