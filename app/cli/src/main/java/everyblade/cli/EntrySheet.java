package everyblade.cli;

import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryKind.Usage;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.TurnEntry;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * Every entry on one sheet, as {@code everyblade log --help} shows it. How an entry is typed says its kind, since it is the
 * same in every language; what it means is named there, and said by the bundles.
 */
final class EntrySheet {

    /** Where meanings begin, and where lines end, characters. */
    private static final int COLUMN = 34;

    private static final int WIDTH = 120;

    private final Words words;
    private final List<String> lines = new ArrayList<>();

    private EntrySheet(Words words) {
        this.words = words;
    }

    static String[] lines(Words words) {
        EntrySheet sheet = new EntrySheet(words);
        sheet.paragraph("each");
        sheet.paragraph("amount", "on", "decimal", "zone");
        sheet.lines.add("");
        sheet.group("looking", LookEntry.KINDS);
        sheet.group("turning", TurnEntry.KINDS);
        sheet.group("found", FindingEntry.KINDS);
        sheet.group("things", RecordEntry.KINDS);
        return sheet.lines.toArray(String[]::new);
    }

    private void paragraph(String... meanings) {
        lines.add("");
        for (String meaning : meanings) {
            tell("", meaning);
        }
    }

    private void group(String heading, List<EntryKind> kinds) {
        tell("", heading);
        for (EntryKind kind : kinds) {
            for (Usage usage : kind.usages()) {
                String typed = "  " + usage.typed();
                int gap = typed.length() < COLUMN ? COLUMN - typed.length() : 3;
                tell(typed + " ".repeat(gap), usage.meaning());
            }
        }
    }

    private void tell(String typed, String meaning) {
        boolean first = true;
        for (String part : words.say("sheet." + meaning).split("\n")) {
            wrap(first ? typed : " ".repeat(COLUMN), part, typed.isEmpty() ? 0 : COLUMN);
            first = false;
        }
    }

    /**
     * Adds a text in lines that are not too long.
     *
     * @param before it on its first line
     * @param indent of the lines after the first
     */
    private void wrap(String before, String text, int indent) {
        StringBuilder line = new StringBuilder(before);
        boolean first = true;
        for (String word : text.split(" ")) {
            if (!first && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent));
                first = true;
            }
            line.append(first ? "" : " ").append(word);
            first = false;
        }
        lines.add(line.toString());
    }
}
