package everyblade.session.job;

import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.FoldSnapshot;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Trail;
import everyblade.record.Journal;
import everyblade.record.Understood;
import everyblade.record.derived.DerivedFiles;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * Folds of long journals, kept among what this user's program derived, so that opening goes on from there. One is used
 * only for a journal that begins with the same line, which names model and settings, and has the same head after as many
 * entries.
 */
final class KeptFolds implements Understood {

    private static final String KIND = "fold";
    private static final int HASH = 64;

    /** Fewer entries than this are folded in no time. */
    private static final int LEAST = 1000;

    private final DerivedFiles files;
    private Optional<Found> found = Optional.empty();

    /** What is kept of the journal that begins with a line: the fold, deflated, from some byte of the content on. */
    private record Found(String first, Mark mark, byte[] content, int from) {

        byte[] fold() {
            try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(content, from, content.length))) {
                return in.readAllBytes();
            } catch (IOException impossible) {
                throw new IllegalStateException("the seal says that these are the bytes that were kept", impossible);
            }
        }
    }

    KeptFolds(DerivedFiles files) {
        this.files = files;
    }

    /** Where it is kept, and all else; asked for once, since to tell this program from others takes as long as to answer. */
    DerivedFiles files() {
        return files;
    }

    @Override
    public Optional<Mark> upTo(String first) {
        if (found.isEmpty() || !found.get().first().equals(first)) {
            found = files.find(KIND, first).map(content -> {
                String head = new String(content, 0, HASH, StandardCharsets.US_ASCII);
                int end = HASH;
                while (content[end] != ' ') {
                    end++;
                }
                int entries = Integer.parseInt(new String(content, HASH, end - HASH, StandardCharsets.US_ASCII));
                return new Found(first, new Mark(entries, head), content, end + 1);
            });
        }
        return found.map(Found::mark);
    }

    /** Where folding goes on from; the beginning, if nothing is kept that fits. */
    Fold from(Journal journal, Engine engine) {
        return upTo(journal.firstHash())
                .filter(mark -> mark.entries() <= journal.lines().size()
                        && journal.lines().get(mark.entries() - 1).hash().equals(mark.head()))
                .map(mark -> FoldSnapshot.read(
                        found.orElseThrow().fold(),
                        engine,
                        Trail.<Logged>onDemand(
                                mark.entries(),
                                i -> OpenedJob.logged(
                                        i + 1, journal.lines().get(i).entry()))))
                .orElseGet(() -> Fold.start(engine));
    }

    /** Keeps a fold if it went on far enough from where one is kept. */
    void keep(String first, String head, Fold fold) {
        int entries = fold.entries().size();
        if (entries - upTo(first).map(Mark::entries).orElse(0) < LEAST) {
            return;
        }
        try {
            ByteArrayOutputStream content = new ByteArrayOutputStream();
            content.writeBytes((head + entries + " ").getBytes(StandardCharsets.US_ASCII));
            // It is looked at as a whole whenever it is used, so a sixth of the bytes saves more than deflating takes.
            try (OutputStream out = new DeflaterOutputStream(content, new Deflater(Deflater.BEST_SPEED))) {
                out.write(FoldSnapshot.write(fold));
            }
            files.keep(KIND, first, content.toByteArray());
            found = Optional.empty();
        } catch (IOException | IllegalArgumentException | OutOfMemoryError notKept) {
            // It is folded again next time; nothing that was said may hang on it.
        }
    }
}
