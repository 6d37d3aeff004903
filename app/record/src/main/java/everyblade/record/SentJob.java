package everyblade.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A job as it travels to another place: its lines as they were sealed, and its other files one by one.
 *
 * @param journal every acknowledged line, the first one included
 * @param review the same of what reviewers said; empty if nobody did
 * @param files names of the other files, with / between folders
 */
public record SentJob(List<SealedLine> journal, List<SealedLine> review, List<String> files) {

    public SentJob {
        journal = List.copyOf(journal);
        review = List.copyOf(review);
        files = List.copyOf(files);
    }

    static SentJob of(JobFiles files) throws UnsoundJournal {
        TreeSet<String> names = new TreeSet<>(OwnFiles.of(files).largest().keySet());
        boolean reviewed = names.remove(Review.FILE);
        names.remove(Journal.FILE);
        List<SealedLine> journal = journal(files);
        return new SentJob(journal, reviewed ? review(files, journal.get(0).hash()) : List.of(), List.copyOf(names));
    }

    private static List<SealedLine> journal(JobFiles files) throws UnsoundJournal {
        List<byte[]> lines = new ArrayList<>();
        try (InputStream in = files.open(Journal.FILE, Journal.LARGEST)) {
            byte[] all = in.readAllBytes();
            Journal.Reading reading = Journal.read(new ByteArrayInputStream(all));
            if (reading instanceof Journal.Unsound unsound) {
                throw new UnsoundJournal(unsound.problem());
            }
            Journal journal = ((Journal.Sound) reading).journal();
            split(Arrays.copyOf(all, Math.toIntExact(journal.length())), lines);
        } catch (IOException failure) {
            throw new UnsoundJournal(new JobReader(files).unreadable(Journal.FILE, failure));
        }
        return sealed(lines);
    }

    private static List<SealedLine> review(JobFiles files, String job) throws UnsoundJournal {
        List<byte[]> lines = new ArrayList<>();
        try (InputStream in = files.open(Review.FILE, Review.LARGEST)) {
            byte[] all = in.readAllBytes();
            Review review = Review.read(new ByteArrayInputStream(all), job);
            split(Arrays.copyOf(all, Math.toIntExact(review.length())), lines);
        } catch (IOException failure) {
            throw new UnsoundJournal(new JobReader(files).unreadable(Review.FILE, failure));
        }
        return sealed(lines);
    }

    private static void split(byte[] all, List<byte[]> lines) {
        int start = 0;
        for (int i = 0; i < all.length; i++) {
            if (all[i] == '\n') {
                lines.add(Arrays.copyOfRange(all, start, i));
                start = i + 1;
            }
        }
    }

    private static List<SealedLine> sealed(List<byte[]> lines) {
        Optional<List<SealedLine>> sealed = SealedLine.following(Chain.START, 0, lines);
        return sealed.orElseThrow(() -> new IllegalStateException("these lines were just read and found sound"));
    }
}
