package everyblade.desktop.command;

import everyblade.json.EngineJsonReader;
import everyblade.json.Found;
import everyblade.json.ModelShelf;
import everyblade.json.Problem;
import everyblade.json.Severity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Says what is wrong with an engine model, where, and how to mend it. */
@Command(
        name = "check",
        description = "Checks an engine model, or a folder of them; exit status 1 if one is refused. Errors go to"
                + " standard output, warnings to standard error.")
final class CheckCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "PATH", description = "an engine.json, the folder that holds it, or a jar")
    private Path named;

    CheckCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
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

    private void tell(List<Problem> problems) {
        for (Problem problem : problems) {
            (problem.severity() == Severity.ERROR ? around.out() : around.err())
                    .println(OneLine.of(problem.toString()));
        }
    }
}
