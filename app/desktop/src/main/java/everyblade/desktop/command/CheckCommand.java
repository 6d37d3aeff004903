package everyblade.desktop.command;

import everyblade.core.turning.Engine;
import everyblade.json.EngineJsonReader;
import everyblade.json.Found;
import everyblade.json.ModelShelf;
import everyblade.json.Problem;
import everyblade.json.Severity;
import everyblade.record.limits.LimitsReading;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is wrong with an engine model or a file of limits, where, and how to mend it. */
@Command(
        name = "check",
        description =
                "Checks an engine model, a folder of them, or a file of limits; exit status 1 if one is refused. Errors go to"
                        + " standard output, warnings to standard error.")
final class CheckCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(
            index = "0",
            paramLabel = "PATH",
            description = "an engine.json, the folder that holds it, a jar, or a file of limits")
    private Path named;

    @Option(names = "--model", paramLabel = "M", description = "of limits: the engine model that they are for")
    private String model;

    CheckCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        Path path = around.path(named);
        if (!Files.exists(path)) {
            throw new Failure("everyblade check: " + named + " is not there; name an " + EngineJsonReader.FILE
                    + ", the folder that holds it, or a jar");
        }
        if (LimitsFile.isMeant(path)) {
            return limits();
        }
        if (model != null) {
            throw new Failure(
                    "everyblade check: --model is for a file of limits, and " + named + " is none; leave it out");
        }
        boolean isOfModels = Files.isDirectory(path) && !Files.exists(path.resolve(EngineJsonReader.FILE));
        List<Found> found = (isOfModels ? ModelShelf.of(List.of(path)) : ModelShelf.open(path)).found();
        if (found.isEmpty()) {
            throw new Failure("everyblade check: " + named + " holds no engine model, neither an "
                    + EngineJsonReader.FILE + " nor folders or jars with one; name the folder of a model");
        }
        boolean refused = false;
        for (Found one : found) {
            if (one instanceof Found.Loaded loaded) {
                tell(loaded.warnings());
                around.out()
                        .println(OneLine.of("fine: " + loaded.origin() + ": "
                                + loaded.model().name() + " (" + loaded.model().id() + ")"));
            } else {
                tell(((Found.Refused) one).problems());
                refused = true;
            }
        }
        return refused ? Commands.NOT_COMPLETE : Commands.FINE;
    }

    private int limits() {
        Optional<Engine> engine = Optional.ofNullable(model)
                .map(name -> Engine.of(everyblade.shelf().choose(name).model()));
        LimitsReading reading =
                LimitsFile.read(around, "everyblade check: ", named, engine).reading();
        if (reading instanceof LimitsReading.Unreadable unreadable) {
            tell(unreadable.problems());
            return Commands.NOT_COMPLETE;
        }
        LimitsReading.Read read = (LimitsReading.Read) reading;
        tell(read.warnings());
        int rules = read.limits().rules().size();
        around.out()
                .println(OneLine.of("fine: " + named + ": " + read.limits().name() + ", " + rules
                        + (rules == 1 ? " rule" : " rules")
                        + (engine.isEmpty() ? "; name --model M to have rows and zones checked" : "")));
        read.limits().notice().map(OneLine::of).ifPresent(around.out()::println);
        return Commands.FINE;
    }

    private void tell(List<Problem> problems) {
        for (Problem problem : problems) {
            (problem.severity() == Severity.ERROR ? around.out() : around.err())
                    .println(OneLine.of(problem.toString()));
        }
    }
}
