package everyblade.desktop.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.json.Found;
import everyblade.json.Problem;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the engine models found, and those refused, with why. */
@Command(name = "models", description = "The engine models found, and those refused, with why.")
final class ModelsCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Option(names = "--json", description = "prints JSON")
    private boolean json;

    ModelsCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        Shelf shelf = everyblade.shelf();
        List<Found> found = shelf.models().found();
        if (json) {
            around.out().println(JsonText.of(json(found)));
        } else {
            text(shelf, found);
        }
        return Commands.FINE;
    }

    private void text(Shelf shelf, List<Found> found) {
        if (found.isEmpty()) {
            around.out()
                    .println("no engine model found"
                            + (shelf.folders().isEmpty() ? "" : " in " + shelf.folders())
                            + "; name a folder of models by --models DIR");
        }
        for (Found one : found) {
            if (one instanceof Found.Loaded loaded) {
                EngineModel model = loaded.model();
                String size = model.rows().size() + " rows, "
                        + model.rows().stream().mapToInt(Row::count).sum() + " airfoils, "
                        + model.views().size() + " views";
                around.out().println(OneLine.of(model.id() + ": " + model.name() + ", " + size + ", " + one.origin()));
                model.notice().ifPresent(notice -> around.out().println(OneLine.of("  " + notice)));
            } else {
                List<Problem> problems = ((Found.Refused) one).problems();
                around.out().println(OneLine.of("refused: " + one.origin() + ", " + problems.size() + " problems"));
                problems.forEach(problem -> around.out().println(OneLine.of("  " + problem)));
            }
        }
    }

    private static ObjectNode json(List<Found> found) {
        ObjectNode json = JsonText.object();
        ArrayNode models = json.putArray("models");
        ArrayNode refused = json.putArray("refused");
        for (Found one : found) {
            if (one instanceof Found.Loaded loaded) {
                ObjectNode model = models.addObject();
                model.put("id", loaded.model().id());
                model.put("name", loaded.model().name());
                model.put("notice", loaded.model().notice().orElse(null));
                model.put("origin", loaded.origin().toString());
                model.put("rows", loaded.model().rows().size());
                model.put("views", loaded.model().views().size());
                problems(model.putArray("warnings"), loaded.warnings());
            } else {
                ObjectNode none = refused.addObject();
                none.put("origin", one.origin().toString());
                problems(none.putArray("problems"), ((Found.Refused) one).problems());
            }
        }
        return json;
    }

    private static void problems(ArrayNode list, List<Problem> problems) {
        for (Problem problem : problems) {
            list.addObject()
                    .put("code", problem.code())
                    .put("file", problem.file())
                    .put("line", problem.line())
                    .put("column", problem.column())
                    .put("pointer", problem.pointer())
                    .put("what", problem.what())
                    .put("why", problem.why())
                    .put("mend", problem.mend());
        }
    }
}
