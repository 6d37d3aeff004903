package everyblade.record;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A journal whose every line is the one that was written, in its place; made only by {@link #read}.
 *
 * @param beginning what is fixed for the job
 * @param modelHash SHA-256 of the frozen engine model, 64 hexadecimal digits
 * @param meshHashes SHA-256 of each frozen file of a shape, by its name
 * @param limitsHash SHA-256 of the frozen limits, if there are any
 * @param previousHead hash of the last line of the record that this one is compared with
 * @param drillHash SHA-256 of what a drill is; empty for a job
 * @param firstHash hash of the first line
 * @param lines the entries, in the order in which they were kept
 * @param length of the lines, newlines included; bytes
 * @param torn a last line that has no newline, which was never acknowledged and does not count
 * @param newerVersion the version, if it is newer than this program but can be read
 */
public record Journal(
        Beginning beginning,
        String modelHash,
        SortedMap<String, String> meshHashes,
        Optional<String> limitsHash,
        Optional<String> previousHead,
        Optional<String> drillHash,
        String firstHash,
        List<JournalLine> lines,
        long length,
        Optional<TornTail> torn,
        Optional<String> newerVersion) {

    static final String FILE = "journal.jsonl";

    /** Largest file, bytes; a shift's is a thousandth of it. */
    static final long LARGEST = 512L << 20;

    public Journal {
        lines = lines instanceof KeptLines ? lines : List.copyOf(lines);
    }

    /** The journal as it was after so many entries; how long it was in bytes is not told. */
    Journal upTo(int entries) {
        return new Journal(
                beginning,
                modelHash,
                meshHashes,
                limitsHash,
                previousHead,
                drillHash,
                firstHash,
                lines.subList(0, entries),
                0,
                Optional.empty(),
                newerVersion);
    }

    /** Whether a line has this hash, the first one included. */
    public boolean has(String hash) {
        return firstHash.equals(hash)
                || lines.stream().anyMatch(line -> line.hash().equals(hash));
    }

    /** Hash of the last line. */
    public String head() {
        return lines.isEmpty() ? firstHash : lines.get(lines.size() - 1).hash();
    }

    /**
     * A last line without newline: what a cut in power or a full disk leaves of a line on its way.
     *
     * @param line number of the line in the file, from 1
     * @param bytes how many there are
     */
    public record TornTail(int line, long bytes) {}

    /** What came of reading. */
    sealed interface Reading {}

    /** All lines are sound. */
    record Sound(Journal journal) implements Reading {}

    /** The first thing that is wrong. */
    record Unsound(RecordProblem problem) implements Reading {}

    /** Reads a journal from its file. */
    static Reading read(InputStream in) throws IOException {
        return read(in, Understood.NOTHING);
    }

    /** The same; lines that are understood are read when somebody asks for them. */
    static Reading read(InputStream in, Understood understood) throws IOException {
        return read(in, understood, RecordKind.JOB);
    }

    /** The same, of this kind; the other one is refused. */
    static Reading read(InputStream in, Understood understood, RecordKind kind) throws IOException {
        try {
            JournalStream stream = new JournalStream(in, kind);
            Optional<Understood.Mark> mark = understood.upTo(stream.head());
            KeptLines lines = new KeptLines(stream);
            int marked = mark.map(Understood.Mark::entries).orElse(0);
            int read = 0;
            for (Optional<byte[]> next = stream.next(); next.isPresent(); next = stream.next()) {
                lines.add(next.get(), stream.head());
                if (stream.entries() == marked && mark.get().head().equals(stream.head())) {
                    read = marked;
                } else if (stream.entries() >= marked) {
                    lines.understand(read);
                    read = stream.entries();
                }
            }
            lines.understand(read);
            return new Sound(stream.journal(lines));
        } catch (UnsoundJournal unsound) {
            return new Unsound(unsound.problem());
        }
    }
}
