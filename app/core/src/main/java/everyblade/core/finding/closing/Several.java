package everyblade.core.finding.closing;

import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Logged;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Entries with the same fault, told as one thing by the first of them, so that a habit does not fill a page. An answer
 * covers those before it; what comes after it is a thing by itself.
 *
 * @param answered what was answered for
 */
record Several(Answered answered) {

    private static final int MOST_NAMED = 3;

    /**
     * One thing for each run of these entries that a single answer covers.
     *
     * @param faulty in their order
     * @param what tells of the first of a run and of how many there are
     */
    List<OpenItem> items(Kind kind, List<Logged> faulty, String toDo, BiFunction<Logged, List<Logged>, String> what) {
        List<OpenItem> items = new ArrayList<>();
        List<Logged> left = faulty;
        while (!left.isEmpty()) {
            Logged first = left.get(0);
            Optional<Logged> answer = answered.answer(first.number());
            List<Logged> run = left.stream()
                    .filter(one ->
                            answer.isEmpty() || one.number() < answer.get().number())
                    .toList();
            items.add(answered.item(kind, first, what.apply(first, run), "", toDo));
            left = left.subList(run.size(), left.size());
        }
        return items;
    }

    /** Such as {@code entry 3}, {@code entries 3, 4 and 7} or {@code entries 3, 4, 7 and 9 more}. */
    static String named(List<Logged> entries) {
        if (entries.size() == 1) {
            return "entry " + entries.get(0).number();
        }
        List<String> numbers = entries.stream()
                .limit(entries.size() > MOST_NAMED ? MOST_NAMED : entries.size() - 1L)
                .map(entry -> Integer.toString(entry.number()))
                .toList();
        String last = entries.size() > MOST_NAMED
                ? (entries.size() - MOST_NAMED) + " more"
                : Integer.toString(entries.get(entries.size() - 1).number());
        return "entries " + String.join(", ", numbers) + " and " + last;
    }
}
