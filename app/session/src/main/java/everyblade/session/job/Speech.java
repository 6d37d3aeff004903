package everyblade.session.job;

import everyblade.core.coverage.Coverage;
import everyblade.core.doubt.Doubt;
import everyblade.core.doubt.Doubts;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.EntryTime;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import everyblade.picture.letter.ReadableLetters;
import everyblade.record.Addition;
import everyblade.session.around.OneLine;
import everyblade.words.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Entries said one after the other: what they lead to so far, and who is taken to be speaking.
 *
 * @param fold of all entries so far, kept or about to be
 * @param starter who started the job
 * @param started when that was
 * @param speaker whoever took over last, else who started the job
 * @param readable whether pages can show what is said
 */
public record Speech(Fold fold, String starter, Instant started, String speaker, ReadableLetters readable) {

    /**
     * One more entry.
     *
     * @param after the speech with it
     * @param number K of the entry
     * @param addition what is to be kept
     * @param warnings that it gave rise to
     * @param doubts why to look twice at it
     */
    public record Said(Speech after, int number, Addition addition, List<Fact> warnings, List<Doubt> doubts) {

        /** What the command line has to say of it. */
        public List<String> remarks(Words words) {
            return Stream.concat(
                            warnings.stream().map(words::say),
                            // Of a lost count the identification itself warns, and says more.
                            doubts.stream()
                                    .filter(doubt -> doubt.kind() != Doubt.Kind.LOST)
                                    .map(doubt -> DoubtText.of(words, doubt)))
                    .map(remark -> OneLine.of(words.say("log.remark", number, remark)))
                    .toList();
        }
    }

    /** At the end of a job's journal. */
    public static Speech after(OpenedJob job) {
        String starter = job.beginning().by();
        return new Speech(
                job.fold(), starter, job.beginning().at(), speaker(job.fold(), starter), new ReadableLetters());
    }

    /**
     * With one more line, said now; nothing is written.
     *
     * @param by who says it, if not the speaker
     * @param seen the coverage of what was said so far
     */
    public Said with(String line, Instant at, Optional<String> by, boolean live, Supplier<Coverage> seen)
            throws Refusal {
        return with(line, at, at, by, live, seen);
    }

    /**
     * With one more line, of some time; nothing is written.
     *
     * @param now by this machine's clock
     * @param by who says it, if not the speaker
     * @param seen the coverage of what was said so far
     */
    public Said with(String line, Instant at, Instant now, Optional<String> by, boolean live, Supplier<Coverage> seen)
            throws Refusal {
        Entry entry = EntryParser.parse(line);
        String who = by.orElse(entry instanceof RecordEntry.Takeover takeover ? takeover.name() : speaker);
        Addition addition = new Addition(line.strip(), entry, at, who, live, Optional.of(now));
        int number = fold.entries().size() + 1;
        Logged logged = OpenedJob.logged(number, addition);
        Fold next = fold.with(logged);
        boolean another = entry instanceof RecordEntry.Takeover || entry instanceof RecordEntry.Void;
        Speech after = new Speech(next, starter, started, another ? speaker(next, starter) : speaker, readable);
        List<Fact> warnings = new ArrayList<>(next.warnings());
        readable.lacking(addition.text()).ifPresent(warnings::add);
        warnings.addAll(EntryTime.doubts(addition.at(), last(), now));
        return new Said(after, number, addition, List.copyOf(warnings), Doubts.about(fold, logged, next, seen));
    }

    private Instant last() {
        List<Logged> entries = fold.entries();
        return entries.isEmpty() ? started : entries.get(entries.size() - 1).at();
    }

    private static String speaker(Fold fold, String starter) {
        return fold.situation().ledger().inCharge().orElse(starter);
    }
}
