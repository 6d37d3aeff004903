package everyblade.window.view;

import everyblade.picture.RowProgress;
import everyblade.session.JobState;
import everyblade.words.Words;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * A job that was worked on, as it was when it was left: enough to know it again before it is opened.
 *
 * @param folder of the job
 * @param left what was told of it then; empty of one that was opened and not left yet
 */
public record RecentJob(Path folder, Optional<Glance> left) {

    /**
     * What was told of a job.
     *
     * @param done share of the cells that views can show that is done, such as {@code 4 %}
     * @param open how much was to be closed
     * @param on the day, as ISO 8601 writes it
     */
    public record Glance(String engine, String serial, String task, String done, int open, String on) {}

    /** The job of this state, left at this time with so much to be closed. */
    public static RecentJob of(JobState state, int open, Instant at, ZoneId zone) {
        return new RecentJob(
                state.folder(),
                Optional.of(new Glance(
                        state.model().name(),
                        state.beginning().serial(),
                        state.beginning().task(),
                        RowProgress.of(state.coverage().rows()).percent(),
                        open,
                        LocalDate.ofInstant(at, zone).toString())));
    }

    /** In a line or two. */
    public String told(Words words) {
        return left.map(was -> words.say(
                        "start.job", was.engine(), was.serial(), was.task(), was.done(), was.open(), was.on(), folder))
                .orElseGet(folder::toString);
    }

    private static final List<String> NAMES = List.of("engine", "serial", "task", "done", "open", "on");

    /** As kept under this name; empty if no job is. */
    static Optional<RecentJob> read(Properties kept, String name) {
        return Choices.path(kept.getProperty(name)).map(folder -> new RecentJob(folder, glance(kept, name)));
    }

    private static Optional<Glance> glance(Properties kept, String name) {
        List<String> all = NAMES.stream()
                .map(one -> kept.getProperty(name + "." + one, ""))
                .toList();
        return all.get(4).matches("\\d{1,6}")
                ? Optional.of(new Glance(
                        all.get(0), all.get(1), all.get(2), all.get(3), Integer.parseInt(all.get(4)), all.get(5)))
                : Optional.empty();
    }

    /** Keeps it under this name. */
    void write(Properties into, String name) {
        into.setProperty(name, folder.toString());
        left.ifPresent(was -> {
            List<String> all =
                    List.of(was.engine(), was.serial(), was.task(), was.done(), Integer.toString(was.open()), was.on());
            for (int i = 0; i < NAMES.size(); i++) {
                into.setProperty(name + "." + NAMES.get(i), all.get(i));
            }
        });
    }
}
