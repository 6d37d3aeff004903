package everyblade.record;

import everyblade.core.finding.review.ReviewRemark;
import everyblade.fact.Fact;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What reviewers said of a job, in a chain of lines of its own beside the journal; every line is the one that was written,
 * in its place. Made only by {@link #read}, or empty.
 *
 * @param remarks in the order in which they were made
 * @param head hash of the last line; empty if there is none
 * @param length of the lines, newlines included; bytes
 * @param torn whether more stands behind them that has no newline and was never acknowledged
 */
public record Review(List<ReviewRemark> remarks, String head, long length, boolean torn) {

    static final String FILE = "review.jsonl";

    /** Largest file, bytes; far more than anybody says. */
    static final long LARGEST = 64L << 20;

    /** Of a job that nobody has reviewed. */
    public static final Review NONE = new Review(List.of(), Chain.START, 0, false);

    public Review {
        remarks = List.copyOf(remarks);
    }

    /**
     * Reads the lines of a review.
     *
     * @param job hash of the first line of the journal beside it
     */
    static Review read(InputStream in, String job) throws IOException, UnsoundJournal {
        LineSource source = new LineSource(in);
        List<ReviewRemark> remarks = new ArrayList<>();
        String head = Chain.START;
        long length = 0;
        int number = 1;
        for (Optional<byte[]> next = line(source, number); next.isPresent(); next = line(source, number)) {
            byte[] line = next.get();
            int here = number;
            head = Chain.check(head, line)
                    .orElseThrow(() -> unsound(
                            RecordProblem.What.DAMAGED_LINE,
                            here,
                            JournalFlaw.Whole.OTHER_HASH,
                            Remedy.COMPARE_AND_ASK_REVIEWER));
            length += line.length + 1;
            understand(line, number, job).ifPresent(remarks::add);
            number++;
        }
        return new Review(remarks, head, length, source.rest() > 0);
    }

    /** The remark of a line; none is in the first one, which says of which job the review is. */
    private static Optional<ReviewRemark> understand(byte[] line, int number, String job) throws UnsoundJournal {
        try {
            if (number > 1) {
                return Optional.of(ReviewFormat.readRemark(line, number - 1));
            }
            if (!ReviewFormat.readFirst(line).equals(job)) {
                throw unsound(
                        RecordProblem.What.REVIEW_OF_ANOTHER_JOB,
                        1,
                        JournalFlaw.Whole.OTHER_JOURNAL_BESIDE,
                        Remedy.PUT_BACK_REVIEW);
            }
            return Optional.empty();
        } catch (Unreadable unreadable) {
            throw notUnderstood(number, unreadable);
        }
    }

    private static Optional<byte[]> line(LineSource source, int number) throws IOException, UnsoundJournal {
        try {
            return source.next();
        } catch (Unreadable tooLong) {
            throw notUnderstood(number, tooLong);
        }
    }

    private static UnsoundJournal notUnderstood(int line, Unreadable why) {
        return unsound(RecordProblem.What.LINE_NOT_UNDERSTOOD, line, why.flaw(), Remedy.USE_PROGRAM_THAT_WROTE_IT);
    }

    private static UnsoundJournal unsound(RecordProblem.What what, int line, Fact why, Remedy toDo) {
        return new UnsoundJournal(new RecordProblem(what, FILE, line, why, toDo));
    }

    /** Hash of the line of an entry, or of the first line for 0; empty if there is no such entry. */
    interface Heads {

        Optional<String> after(int entries);
    }

    /** What is wrong if a remark is about a journal that is not, or not any more, the one beside it. */
    Optional<RecordProblem> unbound(Heads heads) {
        for (ReviewRemark remark : remarks) {
            Optional<String> there = heads.after(remark.entries());
            if (!there.equals(Optional.of(remark.head()))) {
                return Optional.of(new RecordProblem(
                        there.isEmpty() ? RecordProblem.What.LINES_MISSING : RecordProblem.What.JOURNAL_REWRITTEN,
                        Journal.FILE,
                        remark.entries() + 1,
                        there.isEmpty()
                                ? new JournalFlaw.RemarkCutShort(remark.number(), remark.head())
                                : new JournalFlaw.RemarkRewritten(remark.number(), remark.head()),
                        Remedy.FIND_COPY));
            }
        }
        return Optional.empty();
    }

    /** The same of a journal that was read. */
    public Optional<RecordProblem> unbound(Journal journal) {
        return unbound(entries -> entries > journal.lines().size()
                ? Optional.empty()
                : Optional.of(
                        entries == 0
                                ? journal.firstHash()
                                : journal.lines().get(entries - 1).hash()));
    }

    /** What a person should be told on reading, if its last line is torn. */
    public Optional<RecordProblem> tornLine() {
        return torn
                ? Optional.of(new RecordProblem(
                        RecordProblem.What.TORN_LINE,
                        FILE,
                        remarks.size() + (length == 0 ? 1 : 2),
                        JournalFlaw.Whole.NO_NEWLINE,
                        Remedy.REPEAT_REMARK))
                : Optional.empty();
    }
}
