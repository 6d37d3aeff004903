package everyblade.core.finding.closing;

import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import java.util.List;

/**
 * Entries by their numbers.
 *
 * @param numbers of the first of them
 * @param more how many there are besides
 */
record EntryNumbers(List<Integer> numbers, int more) implements Fact {

    private static final int MOST_NAMED = 3;

    EntryNumbers {
        numbers = List.copyOf(numbers);
    }

    /** All if there are few, else those that come first. */
    static EntryNumbers of(List<Logged> entries) {
        int named = Math.min(entries.size(), MOST_NAMED);
        return new EntryNumbers(
                entries.stream().limit(named).map(Logged::number).toList(), entries.size() - named);
    }
}
