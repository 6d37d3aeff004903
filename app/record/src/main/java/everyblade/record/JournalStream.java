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
        byte[] line = bytes(1).orElseThrow(() -> damaged(1, JournalFlaw.Whole.NO_FIRST_LINE));
        version = LineFormat.version(line).orElse(new Version(kind, 1, 0));
        if (version.kind() != kind) {
            throw new UnsoundJournal(version.kind().refused());
        }
        if (version.isForeign()) {
            throw new UnsoundJournal(new RecordProblem(
                    RecordProblem.What.FOREIGN_JOURNAL,
                    Journal.FILE,
                    1,
                    new JournalFlaw.ForeignVersion(version.toString()),
                    Remedy.USE_PROGRAM_OF_THAT_VERSION));
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
                        RecordProblem.What.TOO_MANY_LINES,
                        Journal.FILE,
                        entries + 2,
                        new JournalFlaw.TooManyEntries(MOST_ENTRIES),
                        Remedy.ASK_FOR_SOUND_COPY));
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
        String hash = Chain.check(before, line).orElseThrow(() -> damaged(number, JournalFlaw.Whole.OTHER_HASH));
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

    private static UnsoundJournal damaged(int line, JournalFlaw why) {
        return new UnsoundJournal(new RecordProblem(
                RecordProblem.What.DAMAGED_LINE, Journal.FILE, line, why, Remedy.GO_ON_WITH_SOUND_COPY));
    }

    private static UnsoundJournal notUnderstood(int line, Unreadable why) {
        return new UnsoundJournal(new RecordProblem(
                RecordProblem.What.LINE_NOT_UNDERSTOOD,
                Journal.FILE,
                line,
                why.flaw(),
                Remedy.USE_PROGRAM_THAT_WROTE_IT));
    }
}
