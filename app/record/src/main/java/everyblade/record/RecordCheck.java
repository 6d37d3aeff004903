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
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
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
                            RecordProblem.What.TORN_LINE,
                            Journal.FILE,
                            journal.torn().get().line(),
                            JournalFlaw.Whole.NO_NEWLINE,
                            Remedy.OPEN_TO_WRITE));
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
                        RecordProblem.What.NEWER_JOURNAL,
                        Journal.FILE,
                        1,
                        new JournalFlaw.NotAllKnown(version),
                        Remedy.VERIFY_WITH_NEWER_PROGRAM));
    }

    private Optional<RecordProblem> missing(Journal journal, JournalStream lines) {
        return noted.filter(head -> notedAt.isEmpty()).map(head -> {
            int end = lines.entries() + 2;
            OptionalInt entry = head.entry().isPresent() ? head.entry() : seen.entry(journal.firstHash(), head.hash());
            if (entry.isEmpty()) {
                return new RecordProblem(
                        RecordProblem.What.LINES_MISSING_OR_REWRITTEN,
                        Journal.FILE,
                        end,
                        new JournalFlaw.HashGone(head.hash()),
                        Remedy.FIND_COPY);
            }
            int k = entry.getAsInt();
            return k > lines.entries()
                    ? new RecordProblem(
                            RecordProblem.What.LINES_MISSING,
                            Journal.FILE,
                            end,
                            new JournalFlaw.CutShort(head.hash(), k, lines.entries()),
                            Remedy.FIND_COPY)
                    : new RecordProblem(
                            RecordProblem.What.JOURNAL_REWRITTEN,
                            Journal.FILE,
                            k + 1,
                            new JournalFlaw.Rewritten(head.hash(), k),
                            Remedy.COMPARE_AND_ASK_WHO_REWROTE);
        });
    }

    /** What is wrong if the text of a line and what is kept as its meaning say two different things. */
    static Optional<RecordProblem> contradiction(JournalLine line) {
        try {
            if (Meaning.isSame(EntryParser.parse(line.text()), line.means())) {
                return Optional.empty();
            }
            return Optional.of(twofold(line, new JournalFlaw.OtherMeaning(line.text(), EntryText.of(line.means()))));
        } catch (Refusal refusal) {
            return Optional.of(
                    twofold(line, new JournalFlaw.NoEntry(line.text(), refusal.why(), EntryText.of(line.means()))));
        }
    }

    private static RecordProblem twofold(JournalLine line, JournalFlaw why) {
        return new RecordProblem(
                RecordProblem.What.TWO_MEANINGS, Journal.FILE, line.k() + 1, why, new JournalFlaw.VoidIt(line.k()));
    }
}
