package everyblade.record;

import everyblade.record.LineFormat.FirstLine;
import everyblade.record.LineFormat.Version;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** A journal read line by line, each of which must be the one that was written after the one before. */
final class JournalStream {

    /** More entries than any job has; whoever made such a journal wants to exhaust whoever reads it. */
    static final int MOST_ENTRIES = 1_000_000;

    private static final String RESTORE = "compare it with a copy of the job, and go on with the copy if that is sound";

    private final LineSource source;
    private final Version version;
    private final FirstLine first;
    private final String firstHash;
    private String head;
    private int entries;
    private long length;

    /** Reads the first line of a job's journal. */
    JournalStream(InputStream in) throws IOException, UnsoundJournal {
        this(in, RecordKind.JOB);
    }

    /** Reads the first line; a journal of the other kind is refused. */
    JournalStream(InputStream in, RecordKind kind) throws IOException, UnsoundJournal {
        this.source = new LineSource(in);
        byte[] line = bytes(1).orElseThrow(() -> damaged(1, "it has no newline, so the journal has no first line"));
        version = LineFormat.version(line).orElse(new Version(kind, 1, 0));
        if (version.kind() != kind) {
            throw new UnsoundJournal(version.kind().refused());
        }
        if (version.isForeign()) {
            throw new UnsoundJournal(new RecordProblem(
                    "Journal of another version",
                    Journal.FILE,
                    1,
                    "it is of version " + version + ", this program reads version 1",
                    "open the job with a program of that version"));
        }
        firstHash = checked(Chain.START, line, 1);
        head = firstHash;
        try {
            first = LineFormat.readFirst(line, version.isNewer());
        } catch (Unreadable unreadable) {
            throw notUnderstood(1, unreadable);
        }
    }

    /** The next entry as its line reads; empty after the last. Its hash is then the head. */
    Optional<byte[]> next() throws IOException, UnsoundJournal {
        Optional<byte[]> line = bytes(entries + 2);
        if (line.isPresent()) {
            if (entries == MOST_ENTRIES) {
                throw new UnsoundJournal(new RecordProblem(
                        "Too many lines",
                        Journal.FILE,
                        entries + 2,
                        "no job has more than " + MOST_ENTRIES + " entries",
                        "ask whoever gave you the job for a sound copy"));
            }
            head = checked(head, line.get(), entries + 2);
            entries++;
        }
        return line;
    }

    /** What the line of the last entry says. */
    JournalLine understood(byte[] line) throws UnsoundJournal {
        return understood(line, entries, head);
    }

    /** What the line of an entry says. */
    JournalLine understood(byte[] line, int k, String hash) throws UnsoundJournal {
        try {
            return new JournalLine(k, LineFormat.readEntry(line, k, version.isNewer()), hash);
        } catch (Unreadable unreadable) {
            throw notUnderstood(k + 1, unreadable);
        }
    }

    private Optional<byte[]> bytes(int number) throws IOException, UnsoundJournal {
        try {
            return source.next();
        } catch (Unreadable tooLong) {
            throw notUnderstood(number, tooLong);
        }
    }

    private String checked(String before, byte[] line, int number) throws UnsoundJournal {
        String hash = Chain.check(before, line)
                .orElseThrow(() -> damaged(
                        number, "its hash does not fit it and the lines before, so it was changed, lost or moved"));
        length += line.length + 1;
        return hash;
    }

    /** How many entries were read. */
    int entries() {
        return entries;
    }

    /** Hash of the last line that was read. */
    String head() {
        return head;
    }

    /** The journal of which these lines were read, once there are no more. */
    Journal journal(java.util.List<JournalLine> lines) {
        return new Journal(
                first.beginning(),
                first.modelHash(),
                first.meshHashes(),
                first.limitsHash(),
                first.previousHead(),
                first.drillHash(),
                firstHash,
                lines,
                length,
                source.rest() > 0 ? Optional.of(new Journal.TornTail(entries + 2, source.rest())) : Optional.empty(),
                version.isNewer() ? Optional.of(version.toString()) : Optional.empty());
    }

    private static UnsoundJournal damaged(int line, String why) {
        return new UnsoundJournal(new RecordProblem("Damaged line", Journal.FILE, line, why, RESTORE));
    }

    private static UnsoundJournal notUnderstood(int line, Unreadable why) {
        return new UnsoundJournal(new RecordProblem(
                "Line not understood",
                Journal.FILE,
                line,
                why.getMessage(),
                "open the job with the program that wrote it"));
    }
}
