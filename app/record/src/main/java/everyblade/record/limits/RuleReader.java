package everyblade.record.limits;

import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Rule;
import everyblade.core.finding.Step;
import everyblade.core.turning.Engine;
import everyblade.json.Fields;
import everyblade.json.Json;
import everyblade.json.Wording;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the rules of a file of limits.
 *
 * @param lengths of the file
 * @param engine whose rows and zones they must name, if it is known
 */
record RuleReader(Lengths lengths, Optional<Engine> engine) {

    List<Rule> rules(Fields file) {
        file.required("rules");
        file.refuseEmpty("rules", "limits without a rule say nothing", "write one");
        List<Rule> rules = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Fields fields : file.objects(
                "rules", "rule", "id", "rows", "kinds", "zones", "bothFaces", "onlyWhile", "steps", "beyond")) {
            Rule rule = rule(fields);
            if (!ids.add(rule.id())) {
                fields.log()
                        .error(
                                "duplicate-id",
                                fields.place("id"),
                                "a second rule has the id " + Wording.quoted(rule.id()),
                                "a judgement could not name the one that it is by",
                                "give one of them another id");
            }
            rules.add(rule);
        }
        return rules;
    }

    private Rule rule(Fields fields) {
        for (String list : List.of("rows", "kinds", "zones", "onlyWhile")) {
            fields.refuseEmpty(list, "a rule on nothing judges nothing", "name something, or delete the key for all");
        }
        List<String> rows = rows(fields, "rows");
        return new Rule(
                fields.requiredText("id"),
                rows,
                Set.copyOf(fields.words("kinds", List.of(Kind.values()), Kind::word)
                        .orElse(List.of())),
                zones(fields, rows),
                fields.flag("bothFaces", true),
                rows(fields, "onlyWhile"),
                steps(fields),
                fields.requiredText("beyond"));
    }

    private List<Step> steps(Fields rule) {
        rule.required("steps");
        return rule
                .objects(
                        "steps",
                        "step of " + rule.subject(),
                        "length",
                        "depth",
                        "width",
                        "perAirfoil",
                        "perRow",
                        "airfoils",
                        "neighbours",
                        "apart",
                        "noLimit",
                        "outcome",
                        "again")
                .stream()
                .map(fields -> new StepReader(fields, lengths).step())
                .toList();
    }

    private List<String> rows(Fields fields, String key) {
        List<String> rows = new ArrayList<>();
        for (Json element : fields.elements(key).orElse(List.of())) {
            String row = fields.text(key, element);
            engine.filter(known -> !known.rows().containsKey(row))
                    .ifPresent(known -> fields.log()
                            .unknown(
                                    "unknown-row",
                                    element.place(),
                                    Wording.quoted(key) + " of " + fields.subject() + " names " + Wording.quoted(row),
                                    "the engine model " + known.model().id() + " has no such row",
                                    row,
                                    known.rows().keySet(),
                                    "name one of its rows"));
            rows.add(row);
        }
        return rows;
    }

    private List<String> zones(Fields fields, List<String> rows) {
        List<String> zones = new ArrayList<>();
        for (Json element : fields.elements("zones").orElse(List.of())) {
            String zone = fields.text("zones", element);
            engine.ifPresent(known -> checkZone(fields, element, zone, rows, known));
            zones.add(zone);
        }
        return zones;
    }

    /** A zone that none of the rule's rows has is a mistake; one that some of them lack may be meant. */
    private static void checkZone(Fields fields, Json element, String zone, List<String> rows, Engine engine) {
        List<String> named = rows.isEmpty() ? List.copyOf(engine.rows().keySet()) : rows;
        List<String> without = named.stream()
                .filter(row -> engine.zonings().containsKey(row)
                        && !has(engine.zonings().get(row), zone))
                .toList();
        String what = "\"zones\" of " + fields.subject() + " names " + Wording.quoted(zone);
        if (!without.isEmpty() && without.size() == named.size()) {
            fields.log()
                    .error(
                            "unknown-zone",
                            element.place(),
                            what,
                            "no row that the rule is on has such a zone",
                            "write a zone as in entries, such as tip/pressure");
        } else if (!without.isEmpty() && !rows.isEmpty()) {
            fields.log()
                    .warning(
                            "zone-not-everywhere",
                            element.place(),
                            what,
                            "the rows " + String.join(", ", without) + " have no such zone",
                            "see whether the rule is meant for them");
        }
    }

    private static boolean has(Zoning zoning, String zone) {
        try {
            return !ZoneWords.zone(zoning, new Said<>(zone, 1)).isEmpty();
        } catch (Refusal unknown) {
            return false;
        }
    }
}
