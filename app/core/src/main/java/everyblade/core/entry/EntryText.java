package everyblade.core.entry;

/**
 * Writes an entry as the one line that says it: {@link EntryParser} reads that line back into an equal entry but for
 * the columns.
 *
 * <p>Verbs and words are in lower case, numbers have a decimal point, units that go without saying are left out, and
 * names are in double quotes only where they must be. Every entry that was read has such a line; texts that no line
 * can hold, such as empty ones or ones of several lines, never were.
 */
public final class EntryText {

    private EntryText() {}

    /** The line that says this entry. */
    public static String of(Entry entry) {
        return EntryKind.of(entry).form().line(entry);
    }

    /** A name as it stands in an entry: in double quotes where it would not be read as one word. */
    public static String name(String name) {
        return Written.name(name);
    }

    /** The name of a tool as it ends an entry: bare wherever it can be. */
    public static String nameToEnd(String name) {
        return Written.nameToEnd(name);
    }
}
