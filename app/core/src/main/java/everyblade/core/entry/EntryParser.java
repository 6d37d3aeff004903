package everyblade.core.entry;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads one typed line into an {@link Entry}, or refuses it with the column and what was expected; no other exception
 * leaves it, whatever the line.
 *
 * <p>Pure syntax: whether a row, view or zone of that name exists is judged later. Verbs and words are read in upper or
 * lower case, ids, names and texts keep theirs. Numbers are read with a decimal point or comma, and {@code ±} may be
 * typed {@code +-}. Cost: linear in the length of the line, of which at most 2,000 characters are read.
 */
public final class EntryParser {

    private EntryParser() {}

    /**
     * The entry that a line says.
     *
     * @param line as typed; white space around it does not matter but counts in columns
     * @throws Refusal if the line is not an entry; its column lies between 1 and one past the line's last code point
     */
    public static Entry parse(String line) throws Refusal {
        Line rest = Line.of(line);
        Entry entry = entry(rest);
        rest.end();
        return entry;
    }

    private static Entry entry(Line line) throws Refusal {
        String verb = line.peek();
        if (line.atEnd()) {
            throw line.expected(Expected.ENTRY);
        }
        Optional<EntryKind> kind = EntryKinds.of(verb);
        if (kind.isPresent()) {
            line.take(verb);
            return kind.get().form().rule().read(Optional.empty(), line);
        }
        if (Kind.named(verb).isPresent()) {
            return FindingRules.finding(Optional.empty(), line);
        }
        String second = line.peek(1);
        if (Kind.named(second).isPresent()) {
            return FindingRules.finding(Optional.of(line.name(Expected.ROW)), line);
        }
        Optional<EntryForm<?>> ofRow =
                EntryKinds.of(second).<EntryForm<?>>map(EntryKind::form).filter(EntryForm::rowMayLead);
        if (ofRow.isPresent()) {
            Optional<Said<String>> row = Optional.of(line.name(Expected.ROW));
            line.take(second);
            return ofRow.get().rule().read(row, line);
        }
        throw new Refusal(line.column(), new SyntaxProblem.NoEntry(line.found(), NearestWord.to(verb, verbs())));
    }

    private static Set<String> verbs() {
        Set<String> verbs = new TreeSet<>(EntryKinds.verbs());
        verbs.addAll(Kind.words());
        return verbs;
    }
}
