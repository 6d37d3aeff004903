package everyblade.record;

import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.fact.Fact;
import java.io.Closeable;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The only writer of a review: what it says is kept is safe on disk, and stays so. For one thread at a time. */
public final class ReviewWriter implements Closeable {

    private final ForcedLines end;
    private final Disk.Lock lock;
    private final String job;
    private Review review;
    private Optional<RecordProblem> stopped = Optional.empty();

    ReviewWriter(ForcedLines end, Disk.Lock lock, String job, Review review) {
        this.end = end;
        this.lock = lock;
        this.job = job;
        this.review = review;
    }

    /**
     * Something to be said.
     *
     * @param at when, UTC; cut to milliseconds
     * @param by who says it
     * @param head of the journal that lay before them
     * @param entries how many entries that had
     * @param what sort of remark
     * @param text in words
     * @param place where on the engine, if anywhere
     * @param of the number of the remark that is taken back, if one is
     */
    public record Said(
            Instant at,
            String by,
            String head,
            int entries,
            ReviewRemark.What what,
            String text,
            Optional<ReviewedPlace> place,
            OptionalInt of) {

        ReviewRemark numbered(int number) {
            return new ReviewRemark(
                    number, at.truncatedTo(ChronoUnit.MILLIS), by, head, entries, what, text, place, of);
        }
    }

    /** What came of appending. */
    public sealed interface Appended {}

    /** All are safe on disk. */
    public record Kept(List<ReviewRemark> remarks) implements Appended {}

    /** None of them is acknowledged. */
    public record NotKept(RecordProblem problem) implements Appended {}

    /** The name of the file into which a line was set aside that had no newline, so that nobody was told it was kept. */
    public Optional<String> setAside() {
        return end.setAside();
    }

    /** Keeps these, in this order, all or none. */
    public Appended append(List<Said> batch) {
        if (stopped.isPresent()) {
            return new NotKept(stopped.get());
        }
        List<byte[]> lines = new ArrayList<>();
        List<ReviewRemark> remarks = new ArrayList<>(review.remarks());
        String head = review.head();
        long length = review.length();
        try {
            if (review.length() == 0) {
                head = seal(head, ReviewFormat.firstLine(job), lines);
            }
            for (Said said : batch) {
                ReviewRemark remark = said.numbered(remarks.size() + 1);
                String text = ReviewFormat.remarkLine(remark);
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                if (!ReviewFormat.readRemark(bytes, remark.number()).equals(remark)
                        || bytes.length > LineSource.LONGEST / 2) {
                    throw new Unreadable(LineFlaw.Whole.NOT_AS_SAID);
                }
                remarks.add(remark);
                head = seal(head, text, lines);
            }
        } catch (Unreadable unreadable) {
            return new NotKept(notKept(unreadable.flaw(), Remedy.PLAIN_CHARACTERS_AND_SHORTER));
        }
        for (byte[] line : lines) {
            length += line.length + 1;
        }
        return keep(lines, new Review(remarks, head, length, false));
    }

    /** Keeps lines that were sealed elsewhere, byte for byte, behind those that are there; all or none. */
    public Appended follow(List<byte[]> sealed) {
        if (stopped.isPresent()) {
            return new NotKept(stopped.get());
        }
        List<ReviewRemark> remarks = new ArrayList<>(review.remarks());
        String head = review.head();
        long length = review.length();
        try {
            int first = length == 0 ? 0 : remarks.size() + 1;
            for (SealedLine line : SealedLine.following(head, first, sealed)
                    .orElseThrow(() -> new Unreadable(LineFlaw.Whole.NOT_THE_NEXT))) {
                if (line.n() > 0) {
                    remarks.add(ReviewFormat.readRemark(line.bytes(), line.n()));
                } else if (!ReviewFormat.readFirst(line.bytes()).equals(job)) {
                    throw new Unreadable(LineFlaw.Whole.OF_ANOTHER_JOB);
                }
                head = line.hash();
                length += line.bytes().length + 1;
            }
        } catch (Unreadable unreadable) {
            return new NotKept(notKept(new WriteFlaw.CameUnsound(unreadable.flaw()), Remedy.ASK_WHERE_THEY_CAME_FROM));
        }
        return keep(sealed, new Review(remarks, head, length, false));
    }

    private Appended keep(List<byte[]> lines, Review then) {
        Optional<WriteFlaw> why = end.append(lines);
        if (why.isPresent()) {
            stopped = Optional.of(notKept(why.get(), Remedy.SEE_TO_DISK_AND_REOPEN_REVIEW));
            return new NotKept(stopped.get());
        }
        List<ReviewRemark> added = List.copyOf(
                then.remarks().subList(review.remarks().size(), then.remarks().size()));
        review = then;
        return new Kept(added);
    }

    private static String seal(String before, String text, List<byte[]> lines) {
        Chain.Sealed line = Chain.seal(before, text);
        lines.add(line.bytes());
        return line.hash();
    }

    private static RecordProblem notKept(Fact why, Remedy toDo) {
        return RecordProblem.inFile(RecordProblem.What.NOT_KEPT, Review.FILE, why, toDo);
    }

    /** Gives the review free for other writers. */
    @Override
    public void close() {
        stopped = stopped.or(() -> Optional.of(notKept(WriteFlaw.Whole.REVIEW_CLOSED, Remedy.REOPEN)));
        end.close();
        JournalWriter.closeQuietly(lock);
    }
}
