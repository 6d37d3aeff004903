package everyblade.desktop.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.json.EngineJsonReader;
import everyblade.json.Found;
import everyblade.json.ModelShelf;
import everyblade.json.Problem;
import everyblade.json.ProblemCode;
import everyblade.json.ProblemList;
import everyblade.json.Severity;
import everyblade.spi.EngineModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is wrong with an engine model, where, and how to mend it. */
@Command(
        name = "check",
        description = "Checks an engine model, or a folder of them; exit status 1 if one is refused. Errors go to"
                + " standard output, warnings to standard error.")
final class CheckCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "PATH",
            description = "an engine.json, the folder that holds it, or a jar")
    private Path named;

    @Option(names = "--json", description = "prints JSON, warnings included")
    private boolean json;

    @Option(names = "--no-sight", description = "does not compute whether views see something of their rows")
    private boolean noSight;

    @Option(names = "--explain", paramLabel = "CODE", description = "says what a code means; all for the whole table")
    private String explain;

    /**
     * What came of one place that was looked at.
     *
     * @param problems errors before warnings; the model is refused if there is an error
     */
    private record Checked(Path origin, Optional<EngineModel> model, List<Problem> problems) {

        boolean refused() {
            return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
        }
    }

    CheckCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (explain != null) {
            around.out().print(explained());
            return Commands.FINE;
        }
        List<Checked> checked = found().stream().map(this::checked).toList();
        if (json) {
            around.out().println(JsonText.of(told(checked)));
        } else {
            checked.forEach(this::tell);
        }
        return checked.stream().anyMatch(Checked::refused) ? Commands.NOT_COMPLETE : Commands.FINE;
    }

    private List<Found> found() {
        if (named == null) {
            throw new Failure("everyblade check: it is not said what to check; name an " + EngineJsonReader.FILE
                    + ", the folder that holds it, or a jar");
        }
        Path path = around.path(named);
        if (!Files.exists(path)) {
            throw new Failure("everyblade check: " + named + " is not there; name an " + EngineJsonReader.FILE
                    + ", the folder that holds it, or a jar");
        }
        if (Files.isRegularFile(path) && Limits.is(path)) {
            throw new Failure(
                    "everyblade check: " + named + " is a file of limits, and checking limits is not in this version");
        }
        boolean isOfModels = Files.isDirectory(path) && !Files.exists(path.resolve(EngineJsonReader.FILE));
        List<Found> found = (isOfModels ? ModelShelf.of(List.of(path)) : ModelShelf.open(path)).found();
        if (found.isEmpty()) {
            throw new Failure("everyblade check: " + named + " holds no engine model, neither an "
                    + EngineJsonReader.FILE + " nor folders or jars with one; name the folder of a model");
        }
        return found;
    }

    private Checked checked(Found found) {
        if (found instanceof Found.Loaded loaded) {
            List<Problem> problems = new ArrayList<>(loaded.warnings());
            problems.addAll(SurfaceProblems.of(loaded, !noSight));
            return new Checked(loaded.origin(), Optional.of(loaded.model()), ProblemList.of(problems));
        }
        return new Checked(found.origin(), Optional.empty(), ((Found.Refused) found).problems());
    }

    private void tell(Checked checked) {
        for (Problem problem : checked.problems()) {
            (problem.severity() == Severity.ERROR ? around.out() : around.err())
                    .println(OneLine.of(problem.toString()));
        }
        if (!checked.refused()) {
            EngineModel model = checked.model().orElseThrow();
            around.out()
                    .println(OneLine.of("fine: " + checked.origin() + ": " + model.name() + " (" + model.id() + ")"));
        }
    }

    private static ObjectNode told(List<Checked> all) {
        ObjectNode json = JsonText.object();
        ArrayNode models = json.putArray("models");
        for (Checked checked : all) {
            ObjectNode one = models.addObject();
            one.put("origin", checked.origin().toString());
            one.put("id", checked.model().map(EngineModel::id).orElse(null));
            one.put("name", checked.model().map(EngineModel::name).orElse(null));
            one.put("refused", checked.refused());
            ArrayNode problems = one.putArray("problems");
            for (Problem problem : checked.problems()) {
                problems.addObject()
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
        }
        return json;
    }

    private String explained() {
        if (explain.equals("all")) {
            return ProblemCode.table();
        }
        return ProblemCode.of(explain)
                .map(code -> code.code() + " (" + code.severity() + "): " + code.meaning() + " " + code.mend() + "\n")
                .orElseThrow(() -> new Failure("--explain " + explain + ": there is no such code; see everyblade check"
                        + " --explain all for the table"));
    }
}
