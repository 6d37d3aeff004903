package everyblade.record;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.RandomAccess;

/** Lines of a journal, of which those that were understood before are read when somebody asks for them. */
final class KeptLines extends AbstractList<JournalLine> implements RandomAccess {

    private final JournalStream stream;
    private final List<String> hashes = new ArrayList<>();
    /** Each a line as it was read, or its bytes. */
    private final List<Object> lines = new ArrayList<>();

    KeptLines(JournalStream stream) {
        this.stream = stream;
    }

    /** Adds a line of which the bytes are enough for now. */
    void add(byte[] line, String hash) {
        lines.add(line);
        hashes.add(hash);
    }

    /** Reads those after so many that were not read yet. */
    void understand(int first) throws UnsoundJournal {
        for (int i = first; i < lines.size(); i++) {
            if (lines.get(i) instanceof byte[] line) {
                lines.set(i, stream.understood(line, i + 1, hashes.get(i)));
            }
        }
    }

    @Override
    public synchronized JournalLine get(int index) {
        if (lines.get(index) instanceof JournalLine line) {
            return line;
        }
        try {
            JournalLine line = stream.understood((byte[]) lines.get(index), index + 1, hashes.get(index));
            lines.set(index, line);
            return line;
        } catch (UnsoundJournal impossible) {
            throw new IllegalStateException("this line was understood before", impossible);
        }
    }

    @Override
    public int size() {
        return lines.size();
    }
}
