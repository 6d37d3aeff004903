package everyblade.core.finding;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How rules hang on rows: what is allowed here only while the limits of another row are kept. */
public final class RuleDependencies {

    private RuleDependencies() {}

    /**
     * The id of a rule that in the end hangs on a row that it is on itself; empty if there is none. Rows that hang on
     * nothing are taken away until none is left, or only those that hang on a circle. Cost: linear in the rules.
     */
    public static Optional<String> circle(List<Rule> rules) {
        Map<String, Set<String>> hangsOn = new HashMap<>();
        Map<String, Set<String>> carries = new HashMap<>();
        for (Rule rule : rules) {
            for (String row : rule.rows()) {
                for (String other : rule.onlyWhile()) {
                    hangsOn.computeIfAbsent(row, key -> new HashSet<>()).add(other);
                    carries.computeIfAbsent(other, key -> new HashSet<>()).add(row);
                }
            }
        }
        Deque<String> free = new ArrayDeque<>(carries.keySet());
        free.removeIf(hangsOn::containsKey);
        while (!free.isEmpty()) {
            String kept = free.remove();
            for (String row : carries.getOrDefault(kept, Set.of())) {
                Set<String> left = hangsOn.get(row);
                left.remove(kept);
                if (left.isEmpty()) {
                    hangsOn.remove(row);
                    free.add(row);
                }
            }
        }
        return rules.stream()
                .filter(rule -> !rule.onlyWhile().isEmpty())
                .filter(rule -> rule.rows().isEmpty()
                        || rule.rows().stream()
                                .anyMatch(row -> hangsOn.getOrDefault(row, Set.of()).stream()
                                        .anyMatch(rule.onlyWhile()::contains)))
                .map(Rule::id)
                .findFirst();
    }
}
