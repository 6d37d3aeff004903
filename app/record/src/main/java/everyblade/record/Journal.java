package everyblade.record;

import everyblade.record.LineFormat.FirstLine;
import everyblade.record.LineFormat.Version;
import java.util.ArrayList;
import java.util.Arrays;
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
        String firstHash,
        List<Line> lines,
        long length,
        Optional<TornTail> torn,
        Optional<String> newerVersion) {

    static final String FILE = "journal.jsonl";

    private static final String RESTORE = "compare it with a copy of the job, and go on with the copy if that is sound";

    public Journal {
        lines = List.copyOf(lines);
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
    record Unsound(Problem problem) implements Reading {}

    /** Reads a journal from all bytes of its file. */
    static Reading read(byte[] bytes) {
        List<byte[]> lines = lines(bytes);
        if (lines.isEmpty()) {
            return damaged(1, "it has no newline, so the journal has no first line");
        }
        Version version = LineFormat.version(lines.get(0)).orElse(new Version(1, 0));
        if (version.isForeign()) {
            return new Unsound(new Problem(
                    "Journal of another version",
                    FILE,
                    1,
                    "it is of version " + version + ", this program reads version 1",
                    "open the job with a program of that version"));
        }
        return read(lines, version, bytes.length);
    }

    private static Reading read(List<byte[]> lines, Version version, long fileLength) {
        FirstLine first = null;
        String firstHash = Chain.START;
        List<Line> entries = new ArrayList<>();
        String head = Chain.START;
        long length = 0;
        for (int i = 0; i < lines.size(); i++) {
            byte[] line = lines.get(i);
            Optional<String> hash = Chain.check(head, line);
            if (hash.isEmpty()) {
                return damaged(
                        i + 1, "its hash does not fit it and the lines before, so it was changed, lost or moved");
            }
            head = hash.get();
            length += line.length + 1;
            try {
                if (i == 0) {
                    firstHash = head;
                    first = LineFormat.readFirst(line, version.isNewer());
                } else {
                    entries.add(new Line(i, LineFormat.readEntry(line, i, version.isNewer()), head));
                }
            } catch (Unreadable unreadable) {
                return new Unsound(new Problem(
                        "Line not understood",
                        FILE,
                        i + 1,
                        unreadable.getMessage(),
                        "open the job with the program that wrote it"));
            }
        }
        return new Sound(new Journal(
                first.beginning(),
                first.modelHash(),
                first.meshHashes(),
                first.limitsHash(),
                first.previousHead(),
                firstHash,
                entries,
                length,
                length < fileLength
                        ? Optional.of(new TornTail(lines.size() + 1, fileLength - length))
                        : Optional.empty(),
                version.isNewer() ? Optional.of(version.toString()) : Optional.empty()));
    }

    private static List<byte[]> lines(byte[] bytes) {
        List<byte[]> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                lines.add(Arrays.copyOfRange(bytes, start, i));
                start = i + 1;
            }
        }
        return lines;
    }

    private static Unsound damaged(int line, String why) {
        return new Unsound(new Problem("Damaged line", FILE, line, why, RESTORE));
    }
}
