package everyblade.record.limits;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Guard;
import everyblade.core.finding.Length;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Rule;
import everyblade.core.finding.RuleDependencies;
import everyblade.core.turning.Engine;
import everyblade.json.Fields;
import everyblade.json.Json;
import everyblade.json.JsonTree;
import everyblade.json.ProblemLog;
import everyblade.json.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads limits from a file: whatever the bytes are, the answer is a {@link LimitsReading}, never an exception. What is
 * written as a number is taken as it is written, without rounding.
 */
public final class LimitsReader {

    /** What {@code schema} says in a file of this version. */
    public static final String SCHEMA = "everyblade/limits/1";

    /** How every version of such a file begins its {@code schema}. */
    public static final String FAMILY = "everyblade/limits/";

    private static final Pattern VERSION = Pattern.compile(Pattern.quote(FAMILY) + "([0-9]{1,6})(\\.[0-9]{1,6})?");
    private static final String WHAT = "a file of limits";
    private static final List<String> KEYS = List.of(
            "schema", "name", "notice", "manual", "revision", "model", "unit", "guard", "plusMinus", "facts", "rules");

    private LimitsReader() {}

    /**
     * Reads a file that is held as bytes.
     *
     * @param file its name, for messages
     * @param engine that the limits are to be used on; without one, rows and zones are taken as they are written
     */
    public static LimitsReading read(String file, byte[] bytes, Optional<Engine> engine) {
        ProblemLog log = new ProblemLog(file);
        Optional<Limits> limits = JsonTree.parse(bytes, WHAT, log).flatMap(json -> limits(json, engine, log));
        return limits.isEmpty() || log.errorCount() > 0
                ? new LimitsReading.Unreadable(log.problems())
                : new LimitsReading.Read(limits.get(), log.problems());
    }

    /** Whether bytes say of themselves that they hold limits, of whatever version and however damaged the rest is. */
    public static boolean isMeant(byte[] bytes) {
        ProblemLog unheard = new ProblemLog("");
        return JsonTree.parse(bytes, WHAT, unheard)
                .filter(json -> json instanceof Json.Obj object
                        && object.textOf("schema").startsWith(FAMILY))
                .isPresent();
    }

    private static Optional<Limits> limits(Json json, Optional<Engine> engine, ProblemLog log) {
        if (!(json instanceof Json.Obj object)) {
            log.error("wrong-type", json.place(), "the file is " + json.type(), "it must be an object", "begin with {");
            return Optional.empty();
        }
        if (!versionIsOurs(object, log)) {
            return Optional.empty();
        }
        Fields fields = new Fields(object, "file", KEYS, log);
        fields.requiredText("schema");
        LengthUnit unit = fields.word("unit", LengthUnit.MM, LengthUnit.values(), LengthUnit::word);
        Lengths lengths = new Lengths(unit);
        Optional<String> model = fields.textIfStated("model");
        engine.ifPresent(known -> checkModel(fields, model, known.model().id()));
        String name = fields.requiredText("name");
        Optional<String> notice = fields.textIfStated("notice");
        Optional<String> manual = fields.textIfStated("manual");
        Optional<String> revision = fields.textIfStated("revision");
        Guard guard = fields.word("guard", Guard.CONFORMANCE, Guard.values(), Guard::word);
        Optional<Length> plusMinus = lengths.ifStated(fields, "plusMinus");
        List<String> facts = texts(fields, "facts");
        List<Rule> rules = new RuleReader(lengths, engine).rules(fields);
        if (log.errorCount() > 0) {
            return Optional.empty();
        }
        Optional<String> circle = RuleDependencies.circle(rules);
        if (circle.isPresent()) {
            log.error(
                    "circle",
                    fields.place("rules"),
                    "the rule " + Wording.plain(circle.get()) + " hangs on itself",
                    "by \"onlyWhile\" it asks whether rows are kept that it is on, directly or through other rules",
                    "take one of these rows out");
            return Optional.empty();
        }
        return Optional.of(new Limits(name, notice, manual, revision, model, unit, guard, plusMinus, facts, rules));
    }

    private static boolean versionIsOurs(Json.Obj object, ProblemLog log) {
        Json.Member schema = object.members().get("schema");
        if (schema == null || object.textOf("schema").equals(SCHEMA)) {
            return true;
        }
        String stated = object.textOf("schema");
        Matcher version = VERSION.matcher(stated);
        boolean newer = version.matches() && Integer.parseInt(version.group(1)) > 1;
        log.error(
                newer ? "newer-version" : "unknown-version",
                schema.value().place(),
                "\"schema\" is " + (stated.isEmpty() ? schema.value().type() : Wording.quoted(stated)),
                newer ? "this Everyblade reads version 1" : "this is no file of limits that Everyblade knows",
                newer ? "use a newer Everyblade" : "write \"" + SCHEMA + "\"");
        return false;
    }

    private static void checkModel(Fields fields, Optional<String> model, String id) {
        if (model.isPresent() && !model.get().equals(id)) {
            fields.log()
                    .error(
                            "other-model",
                            fields.place("model"),
                            "the limits are for the engine model " + Wording.quoted(model.get()),
                            "they are to be used on " + id,
                            "name the limits of that engine");
        }
    }

    /** A list of texts; empty if the key is not there. */
    static List<String> texts(Fields fields, String key) {
        List<String> texts = new ArrayList<>();
        for (Json element : fields.elements(key).orElse(List.of())) {
            texts.add(fields.text(key, element));
        }
        return texts;
    }
}
