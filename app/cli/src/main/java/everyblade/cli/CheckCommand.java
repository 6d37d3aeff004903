package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Engine;
import everyblade.fact.Keyed;
import everyblade.json.EngineJsonReader;
import everyblade.json.Found;
import everyblade.json.ModelShelf;
import everyblade.json.ProblemCode;
import everyblade.json.jar.CodeDoor;
import everyblade.json.jar.CodeJar;
import everyblade.session.around.Failure;
import everyblade.session.around.Patience;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is wrong with an engine model or a file of limits, where, and how to mend it. */
@Command(name = "check", description = "${bundle:help.check}")
final class CheckCommand implements Callable<Integer> {

    private static final Keyed WHAT = new Keyed("stopped.check.what", List.of(EngineJsonReader.FILE));

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", arity = "0..1", paramLabel = "PATH", description = "${bundle:help.check.path}")
    private Path named;

    @Option(names = "--model", paramLabel = "M", description = "${bundle:help.check.model}")
    private String model;

    @Option(names = "--json", description = "${bundle:help.check.json}")
    private boolean json;

    @Option(names = "--no-sight", description = "${bundle:help.check.noSight}")
    private boolean noSight;

    @Option(names = "--all-rules", description = "${bundle:help.check.allRules}")
    private boolean allRules;

    @Option(names = "--explain", paramLabel = "CODE", description = "${bundle:help.check.explain}")
    private String explain;

    private final List<CodeJar> notRun = new ArrayList<>();

    CheckCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        if (explain != null) {
            around.out().print(explained());
            return Commands.FINE;
        }
        List<Checked> checked = checked();
        if (checked.isEmpty()) {
            throw Consent.refusal(notRun.get(0));
        }
        if (json) {
            ObjectNode told = JsonText.object();
            ArrayNode list = told.putArray("checked");
            checked.forEach(one -> list.add(one.json()));
            around.out().println(JsonText.of(told));
        } else {
            checked.forEach(one -> one.tell(around));
        }
        notRun.stream().findFirst().ifPresent(jar -> {
            throw Consent.refusal(jar);
        });
        return checked.stream().anyMatch(Checked::refused) ? Commands.NOT_COMPLETE : Commands.FINE;
    }

    private List<Checked> checked() {
        if (named == null) {
            throw Failure.of("stopped.check.checkNotSaidWhatTo", WHAT);
        }
        Path path = around.path(named);
        if (!Files.exists(path)) {
            throw Failure.of("stopped.check.checkNotThere", named, WHAT);
        }
        if (LimitsFile.isMeant(path)) {
            if (allRules) {
                throw Failure.of("stopped.check.checkForEngineModelsAnd", named);
            }
            Optional<Engine> engine = Optional.ofNullable(model)
                    .map(name ->
                            Engine.of(everyblade.shelf().chooseByOption(name).model()));
            return List.of(Checked.limits(
                    LimitsFile.read(around, "everyblade check: ", named, engine), engine, around.words()));
        }
        if (model != null) {
            throw Failure.of("stopped.check.checkForFileLimitsAnd", named);
        }
        List<Found> models = models(path);
        notRun.addAll(new ModelShelf(models).notRun());
        Optional<Rules> rules = allRules ? Optional.of(rules(path)) : Optional.empty();
        return models.stream()
                .filter(found -> !(found instanceof Found.Code))
                .map(found -> Checked.model(found, !noSight, rules, around.words()))
                .toList();
    }

    private Rules rules(Path path) {
        Progress patience = new Patience(around, "wait.sight");
        return new Rules(around.clock().instant(), models(path), !noSight, json ? Progress.NONE : patience);
    }

    private List<Found> models(Path path) {
        boolean isOfModels = Files.isDirectory(path) && !Files.exists(path.resolve(EngineJsonReader.FILE));
        CodeDoor door = everyblade.consent().anew();
        List<Found> found = (isOfModels ? ModelShelf.of(List.of(path), door) : ModelShelf.open(path, door)).found();
        if (found.isEmpty()) {
            throw Failure.of("stopped.check.checkHoldsNoEngineModel", named, EngineJsonReader.FILE);
        }
        return found;
    }

    private String explained() {
        if (explain.equals("all")) {
            return ProblemCode.table();
        }
        return ProblemCode.of(explain)
                .map(code -> code.code() + " (" + code.severity() + "): " + code.meaning() + " " + code.mend() + "\n")
                .orElseThrow(() -> Failure.of("stopped.check.thereNoSuchCodeSee", explain));
    }
}
