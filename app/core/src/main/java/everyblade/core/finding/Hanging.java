package everyblade.core.finding;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How rules hang on rows: what is allowed here only while the limits of another row are kept. */
public final class Hanging {

    private Hanging() {}

    /**
     * The id of a rule that in the end hangs on a row that it is on itself; empty if there is none. Cost: the square of
     * the number of rules, times the rows they name.
     */
    public static Optional<String> circle(List<Rule> rules) {
        return rules.stream()
                .filter(rule -> reached(rules, rule).stream().anyMatch(row -> isOn(rule, row)))
                .map(Rule::id)
                .findFirst();
    }

    /** All rows on which a rule hangs, through other rules too. */
    private static Set<String> reached(List<Rule> rules, Rule from) {
        Set<String> reached = new HashSet<>(from.onlyWhile());
        Deque<String> left = new ArrayDeque<>(reached);
        while (!left.isEmpty()) {
            String row = left.remove();
            rules.stream()
                    .filter(rule -> isOn(rule, row))
                    .flatMap(rule -> rule.onlyWhile().stream())
                    .filter(reached::add)
                    .forEach(left::add);
        }
        return reached;
    }

    private static boolean isOn(Rule rule, String row) {
        return rule.rows().isEmpty() || rule.rows().contains(row);
    }
}
