package everyblade.desktop.command;

import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.FoldSnapshot;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Trail;
import everyblade.record.Journal;
import everyblade.record.Understood;
import everyblade.record.derived.DerivedFiles;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

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

    /** What is kept of the journal that begins with a line. */
    private record Found(String first, Mark mark, byte[] fold) {}

    KeptFolds(DerivedFiles files) {
        this.files = files;
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
                return new Found(first, new Mark(entries, head), Arrays.copyOfRange(content, end + 1, content.length));
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
        int least = Math.max(LEAST, entries / 25);
        if (entries < least || entries - upTo(first).map(Mark::entries).orElse(0) < least) {
            return;
        }
        try {
            byte[] begin = (head + entries + " ").getBytes(StandardCharsets.US_ASCII);
            byte[] packed = FoldSnapshot.write(fold);
            byte[] content = Arrays.copyOf(begin, begin.length + packed.length);
            System.arraycopy(packed, 0, content, begin.length, packed.length);
            files.keep(KIND, first, content);
        } catch (IllegalArgumentException | OutOfMemoryError notKept) {
            // It is folded again next time; nothing that was said may hang on it.
        }
    }
}
