package everyblade.record;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The files that are frozen into a job when it starts.
 *
 * @param model the engine model
 * @param meshes files of shapes that the engine model names, by their names
 * @param limits for findings, if the user gave any
 * @param previous the record that this job is compared with
 * @param drill what a drill is; with it the folder becomes a drill's, without it a job's
 */
public record Frozen(
        FrozenFile model,
        SortedMap<String, FrozenFile> meshes,
        Optional<FrozenFile> limits,
        Optional<PreviousRecord> previous,
        Optional<FrozenFile> drill) {

    public Frozen {
        meshes = Collections.unmodifiableSortedMap(new TreeMap<>(meshes));
    }

    /** The files of a job. */
    public Frozen(
            FrozenFile model,
            SortedMap<String, FrozenFile> meshes,
            Optional<FrozenFile> limits,
            Optional<PreviousRecord> previous) {
        this(model, meshes, limits, previous, Optional.empty());
    }

    /** A model, and nothing else. */
    static Frozen of(byte[] engineModel) {
        return new Frozen(FrozenFile.of(engineModel), Collections.emptySortedMap(), Optional.empty(), Optional.empty());
    }
}
