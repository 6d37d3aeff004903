package everyblade.desktop.command;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.record.Addition;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Entries said one after the other: what they lead to so far, and who is taken to be speaking.
 *
 * @param fold of all entries so far, kept or about to be
 * @param starter who started the job
 * @param speaker whoever took over last, else who started the job
 */
public record Speech(Fold fold, String starter, String speaker) {

    /**
     * One more entry.
     *
     * @param after the speech with it
     * @param number K of the entry
     * @param addition what is to be kept
     * @param warnings that it gave rise to
     */
    public record Said(Speech after, int number, Addition addition, List<String> warnings) {}

    /** At the end of a job's journal. */
    public static Speech after(OpenedJob job) {
        String starter = job.beginning().by();
        return new Speech(job.fold(), starter, speaker(job.fold(), starter));
    }

    /**
     * With one more line; nothing is written.
     *
     * @param by who says it, if not the speaker
     */
    public Said with(String line, Instant at, Optional<String> by, boolean live) throws Refusal {
        Entry entry = EntryParser.parse(line);
        String who = by.orElse(entry instanceof Entry.Takeover takeover ? takeover.name() : speaker);
        Addition addition = new Addition(line.strip(), entry, at, who, live);
        int number = fold.entries().size() + 1;
        Fold next = fold.with(OpenedJob.logged(number, addition));
        boolean another = entry instanceof Entry.Takeover || entry instanceof Entry.Void;
        Speech after = new Speech(next, starter, another ? speaker(next, starter) : speaker);
        return new Said(after, number, addition, next.warnings());
    }

    private static String speaker(Fold fold, String starter) {
        List<Logged> entries = fold.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).entry() instanceof Entry.Takeover takeover
                    && !fold.isVoid(entries.get(i).number())) {
                return takeover.name();
            }
        }
        return starter;
    }
}
