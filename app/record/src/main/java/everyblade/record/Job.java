package everyblade.record;

import everyblade.fact.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A job as it stood when it was opened: every line sound, and the files beside the journal those that were frozen.
 *
 * @param journal what was said
 * @param model the frozen engine model
 * @param meshes the frozen files of shapes that the engine model names, by their names
 * @param limits the frozen limits for findings, if there are any
 * @param drill what a drill is; empty for a job
 * @param previous the earlier record that this one is compared with, if there is one
 */
public record Job(
        Journal journal,
        FrozenFile model,
        SortedMap<String, FrozenFile> meshes,
        Optional<FrozenFile> limits,
        Optional<FrozenFile> drill,
        Optional<Job> previous) {

    /** The job as it was after so many entries. */
    public Job upTo(int entries) {
        return new Job(journal.upTo(entries), model, meshes, limits, drill, previous);
    }

    /** What a person should be told on opening the job, one line each; nothing of it hinders reading. */
    public List<Fact> notices() {
        List<Fact> notices = new ArrayList<>();
        journal.torn().ifPresent(torn -> notices.add(new Notice.Torn(torn.line(), torn.bytes())));
        journal.newerVersion().ifPresent(version -> notices.add(new Notice.Newer(version)));
        return notices;
    }
}
