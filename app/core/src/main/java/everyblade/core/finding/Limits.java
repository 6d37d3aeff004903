package everyblade.core.finding;

import everyblade.core.entry.Entry.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * Limits as their user entered them from the manual in force; no rule hangs on itself.
 *
 * @param name for people
 * @param notice shown wherever a limit is, such as that these are invented
 * @param manual from which they were taken
 * @param revision of that manual
 * @param model id of the engine model that they are for; empty for any
 * @param unit in which they were written and are shown
 * @param guard how near a size may come to a limit
 * @param plusMinus expanded uncertainty of sizes that were entered without one; without it those are not judged
 * @param facts names of the facts that the record must have
 * @param rules in the order of the file
 */
public record Limits(
        String name,
        Optional<String> notice,
        Optional<String> manual,
        Optional<String> revision,
        Optional<String> model,
        LengthUnit unit,
        Guard guard,
        Optional<Length> plusMinus,
        List<String> facts,
        List<Rule> rules) {

    public Limits {
        facts = List.copyOf(facts);
        rules = List.copyOf(rules);
        RuleDependencies.circle(rules).ifPresent(id -> {
            throw new IllegalArgumentException("the rule " + id + " hangs on itself");
        });
    }
}
