package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.turning.Engine;
import everyblade.json.Found;
import everyblade.json.Problem;
import everyblade.json.ProblemList;
import everyblade.json.Severity;
import everyblade.record.limits.LimitsReading;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.model.SurfaceProblems;
import everyblade.testkit.JudgedRule;
import everyblade.testkit.RulesReport;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What came of one file, folder or jar that was checked; it is refused if there is an error.
 *
 * @param kind {@code model} or {@code limits}
 * @param origin what was checked, as people know it
 * @param id of the engine model, if it was read
 * @param name of what was read
 * @param problems errors before warnings
 * @param more lines to tell if it is fine, the first one goes on after the name
 * @param rules what became of every rule, if that was asked
 */
record Checked(
        String kind,
        String origin,
        Optional<String> id,
        Optional<String> name,
        List<Problem> problems,
        List<String> more,
        Optional<RulesReport> rules) {

    /**
     * @param sight whether to compute what views see, too
     * @param rules to judge by as well
     */
    static Checked model(Found found, boolean sight, Optional<Rules> rules, Words words) {
        String origin = found.origin().toString();
        if (found instanceof Found.Loaded loaded) {
            List<Problem> problems = new ArrayList<>(loaded.warnings());
            problems.addAll(SurfaceProblems.of(loaded, sight, words));
            return new Checked(
                    "model",
                    origin,
                    Optional.of(loaded.model().id()),
                    Optional.of(loaded.model().name()),
                    ProblemList.of(problems),
                    List.of(" (" + loaded.model().id() + ")"),
                    rules.map(book -> book.judge(found, problems)));
        }
        List<Problem> problems = ((Found.Refused) found).problems();
        return new Checked(
                "model",
                origin,
                Optional.empty(),
                Optional.empty(),
                problems,
                List.of(),
                rules.map(book -> book.judge(found, problems)));
    }

    /** @param engine that the limits are for, if it is known */
    static Checked limits(LimitsFile file, Optional<Engine> engine, Words words) {
        String origin = file.named().toString();
        if (file.reading() instanceof LimitsReading.Unreadable unreadable) {
            return new Checked(
                    "limits",
                    origin,
                    Optional.empty(),
                    Optional.empty(),
                    unreadable.problems(),
                    List.of(),
                    Optional.empty());
        }
        LimitsReading.Read read = (LimitsReading.Read) file.reading();
        int rules = read.limits().rules().size();
        List<String> more = new ArrayList<>();
        more.add(", " + words.say("check.rules", rules, engine.isPresent()));
        read.limits().notice().ifPresent(more::add);
        return new Checked(
                "limits",
                origin,
                Optional.empty(),
                Optional.of(read.limits().name()),
                read.warnings(),
                more,
                Optional.empty());
    }

    boolean refused() {
        return Problem.anyError(problems) || rules.map(RulesReport::refuses).orElse(false);
    }

    /** Errors and what is fine on standard output, warnings on standard error; or what became of every rule. */
    void tell(Surroundings around) {
        if (rules.isPresent()) {
            rules.get().lines().forEach(around.out()::println);
            return;
        }
        for (Problem problem : problems) {
            (problem.severity() == Severity.ERROR ? around.out() : around.err())
                    .println(OneLine.of(problem.toString()));
        }
        if (!refused()) {
            around.out().println(OneLine.of(around.words().say("check.fine", origin, name.orElse("") + more.get(0))));
            more.stream().skip(1).map(OneLine::of).forEach(around.out()::println);
        }
    }

    ObjectNode json() {
        ObjectNode json = JsonText.object();
        json.put("kind", kind);
        json.put("origin", origin);
        json.put("id", id.orElse(null));
        json.put("name", name.orElse(null));
        json.put("refused", refused());
        ArrayNode list = json.putArray("problems");
        for (Problem problem : problems) {
            list.addObject()
                    .put("code", problem.code())
                    .put("severity", problem.severity().name().toLowerCase(Locale.ROOT))
                    .put("file", problem.file())
                    .put("line", problem.line())
                    .put("column", problem.column())
                    .put("pointer", problem.pointer())
                    .put("what", problem.what())
                    .put("why", problem.why())
                    .put("mend", problem.mend())
                    .put("nearest", problem.nearest().orElse(null));
        }
        rules.ifPresent(report -> json.set("rules", json(report)));
        return json;
    }

    private static ObjectNode json(RulesReport report) {
        ObjectNode json = JsonText.object();
        json.put("at", report.at().toString());
        json.put("sha256", report.hash().orElse(null));
        ArrayNode list = json.putArray("judged");
        for (JudgedRule judged : report.judged()) {
            ObjectNode one = list.addObject();
            one.put("number", judged.rule().number());
            one.put("force", judged.rule().force().word());
            one.put("sentence", judged.rule().sentence());
            one.put("verdict", judged.verdict().word());
            ArrayNode lines = one.putArray("lines");
            judged.verdict().lines().forEach(lines::add);
        }
        return json;
    }
}
