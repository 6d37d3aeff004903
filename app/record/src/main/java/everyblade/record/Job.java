package everyblade.record;

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
    public List<String> notices() {
        List<String> notices = new ArrayList<>();
        journal.torn()
                .ifPresent(torn -> notices.add("Torn line: " + Journal.FILE + " line " + torn.line() + ": its last "
                        + torn.bytes() + " bytes have no newline, so that entry was never acknowledged; it is left out,"
                        + " and set aside when the job is next written to"));
        journal.newerVersion()
                .ifPresent(version -> notices.add("Newer journal: " + Journal.FILE + " line 1: it is of version "
                        + version + " and this program writes version 1.0; it can only be read, use a newer program to"
                        + " add to it"));
        return notices;
    }
}
