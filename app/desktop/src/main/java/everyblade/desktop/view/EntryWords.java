package everyblade.desktop.view;

/** Words as they stand in an entry. */
final class EntryWords {

    private EntryWords() {}

    /** A name, in double quotes if it would not be read as one word. */
    static String quoted(String name) {
        return name.matches("[^\\s\",]+") ? name : '"' + name.replace("\"", "\"\"") + '"';
    }
}
