package everyblade.record;

import everyblade.core.entry.EntryParser;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Refusal;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.NotedHead;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Torn;
import everyblade.record.JobFolder.Verification;
import everyblade.record.derived.SeenHeads;
import everyblade.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Goes through a whole record and finds the first thing that is not as it was kept: a line, what it says in two ways, a
 * file that was frozen into the job, a picture, an end that is missing. Holds one line at a time.
 */
final class RecordCheck {

    private final JobFiles files;
    private final Photos photos;
    private final ReviewFile reviews;
    private final Optional<NotedHead> noted;
    private final SeenHeads seen;
    private final List<JournalLine> pictured = new ArrayList<>();
    private ReviewFile.Reading reviewed = new ReviewFile.Readable(Review.NONE);
    private final Map<Integer, String> reviewedHeads = new HashMap<>();
    private OptionalInt notedAt = OptionalInt.empty();

    RecordCheck(JobFiles files, Optional<NotedHead> noted, SeenHeads seen) {
        this.seen = seen;
        this.files = files;
        this.photos = new Photos(files);
        this.noted = noted;
        this.reviews = new ReviewFile(files.disk(), files.root(), files);
    }

    /** The whole record, with the one that it is compared with. */
    Verification verify() {
        try (InputStream in = files.open(Journal.FILE, Journal.LARGEST)) {
            JournalStream lines = new JournalStream(in);
            readReview(lines.head());
            note(lines);
            Optional<RecordProblem> twofold = Optional.empty();
            for (Optional<byte[]> next = lines.next(); next.isPresent(); next = lines.next()) {
                note(lines);
                JournalLine line = lines.understood(next.get());
                twofold = twofold.or(() -> contradiction(line));
                if (line.entry().photo().isPresent()) {
                    pictured.add(line);
                }
            }
            return twofold.<Verification>map(Broken::new).orElseGet(() -> rest(lines.journal(List.of()), lines));
        } catch (UnsoundJournal unsound) {
            return new Broken(unsound.problem());
        } catch (IOException failure) {
            return new Broken(new JobReader(files).unreadable(Journal.FILE, failure));
        }
    }

    /** Read first, so that of the journal's heads only those are held that were reviewed. */
    private void readReview(String firstHash) {
        reviewed = reviews.read(firstHash);
        if (reviewed instanceof ReviewFile.Readable readable) {
            readable.review().remarks().forEach(remark -> reviewedHeads.put(remark.entries(), ""));
        }
    }

    private void note(JournalStream lines) {
        reviewedHeads.computeIfPresent(lines.entries(), (entries, none) -> lines.head());
        if (noted.isPresent() && noted.get().hash().equals(lines.head())) {
            notedAt = OptionalInt.of(lines.entries());
        }
    }

    private Verification rest(Journal journal, JournalStream lines) {
        Optional<RecordProblem> problem = newer(journal)
                .or(() -> new JobReader(files).frozenOtherwise(journal))
                .or(() -> missing(journal, lines))
                .or(() -> review(lines))
                .or(() -> pictured.stream()
                        .flatMap(line -> photos.changed(line).stream())
                        .findFirst());
        if (problem.isPresent()) {
            return new Broken(problem.get());
        }
        if (journal.torn().isPresent()) {
            return new Torn(
                    lines.entries(),
                    lines.head(),
                    new RecordProblem(
                            "Torn line",
                            Journal.FILE,
                            journal.torn().get().line(),
                            "it has no newline, so it is not acknowledged, or not yet if somebody is writing",
                            "open the job for writing, which sets the line aside"));
        }
        return new Sound(lines.entries(), lines.head(), notedAt);
    }

    /** What is wrong with what reviewers said, or with the journal since. */
    private Optional<RecordProblem> review(JournalStream lines) {
        if (reviewed instanceof ReviewFile.Refused refused) {
            return Optional.of(refused.problem());
        }
        Review review = ((ReviewFile.Readable) reviewed).review();
        return review.unbound(entries ->
                        Optional.ofNullable(reviewedHeads.get(entries)).filter(head -> entries <= lines.entries()))
                .or(review::tornLine);
    }

    /** What a newer version may have added is not known here, so it cannot be called sound. */
    private static Optional<RecordProblem> newer(Journal journal) {
        return journal.newerVersion()
                .map(version -> new RecordProblem(
                        "Newer journal",
                        Journal.FILE,
                        1,
                        "it is of version " + version
                                + "; every line is the one that was written, but this program knows"
                                + " only what version 1.0 says",
                        "verify it with a newer program"));
    }

    private Optional<RecordProblem> missing(Journal journal, JournalStream lines) {
        return noted.filter(head -> notedAt.isEmpty()).map(head -> {
            int end = lines.entries() + 2;
            String none = "no line has the hash " + head.hash();
            OptionalInt entry = head.entry().isPresent() ? head.entry() : seen.entry(journal.firstHash(), head.hash());
            if (entry.isEmpty()) {
                return new RecordProblem(
                        "Lines missing or rewritten",
                        Journal.FILE,
                        end,
                        none
                                + ", though every line follows from the one before: the journal once went on beyond its end,"
                                + " or was written anew from some line on; with the number of the entry, as --head"
                                + " K:HASH, it can be told which",
                        "look for a copy of the job that has it");
            }
            int k = entry.getAsInt();
            return k > lines.entries()
                    ? new RecordProblem(
                            "Lines missing",
                            Journal.FILE,
                            end,
                            none + "; it was that of entry " + k + ", and the journal ends with entry "
                                    + lines.entries() + ", so it was cut short",
                            "look for a copy of the job that has it")
                    : new RecordProblem(
                            "Journal rewritten",
                            Journal.FILE,
                            k + 1,
                            none + "; it was that of entry " + k + ", and this line now has another, so it or a line"
                                    + " before it was written anew, and all after it",
                            "compare it with a copy of the job that has it, and ask who rewrote it");
        });
    }

    /** What is wrong if the text of a line and what is kept as its meaning say two different things. */
    static Optional<RecordProblem> contradiction(JournalLine line) {
        try {
            if (Meaning.isSame(EntryParser.parse(line.text()), line.means())) {
                return Optional.empty();
            }
            return Optional.of(twofold(
                    line,
                    "its text says \"" + line.text() + "\", but what counts of it means \"" + EntryText.of(line.means())
                            + "\""));
        } catch (Refusal refusal) {
            return Optional.of(twofold(
                    line,
                    "its text \"" + line.text() + "\" is no entry ("
                            + Words.of(Locale.ENGLISH).say(refusal.why()) + "), but what counts of it" + " means \""
                            + EntryText.of(line.means()) + "\""));
        }
    }

    private static RecordProblem twofold(JournalLine line, String why) {
        return new RecordProblem(
                "Text and meaning differ",
                Journal.FILE,
                line.k() + 1,
                why,
                "ask who kept it; if it should not count, void entry " + line.k());
    }
}
