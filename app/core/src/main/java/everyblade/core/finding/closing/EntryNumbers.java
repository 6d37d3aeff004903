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

    /** All if there are few, else those that come first; at least two are left out, or none. */
    static EntryNumbers of(List<Logged> entries) {
        int named = entries.size() > MOST_NAMED ? MOST_NAMED : entries.size();
        return new EntryNumbers(
                entries.stream().limit(named).map(Logged::number).toList(), entries.size() - named);
    }
}
