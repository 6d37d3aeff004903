package everyblade.record;

import java.util.Optional;

/**
 * The files that are frozen into a job when it starts.
 *
 * @param model the engine model
 * @param limits for findings, if the user gave any
 * @param previous the record that this job is compared with
 */
public record Frozen(FrozenFile model, Optional<FrozenFile> limits, Optional<PreviousRecord> previous) {

    /** A model, and nothing else. */
    public static Frozen of(byte[] engineModel) {
        return new Frozen(FrozenFile.of(engineModel), Optional.empty(), Optional.empty());
    }
}
