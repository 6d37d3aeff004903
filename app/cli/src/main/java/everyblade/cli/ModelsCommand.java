package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.fact.Fact;
import everyblade.fact.Keyed;
import everyblade.json.Found;
import everyblade.json.Problem;
import everyblade.json.jar.CodeJar;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the engine models found, and those refused, with why. */
@Command(name = "models", description = "${bundle:help.models}")
final class ModelsCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Option(names = "--json", description = "${bundle:help.json}")
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
            around.out().println(JsonText.of(json(found, everyblade.consent())));
        } else {
            text(shelf, found, everyblade.consent());
        }
        return Commands.FINE;
    }

    private void text(Shelf shelf, List<Found> found, Consent consent) {
        if (found.isEmpty()) {
            around.out()
                    .println(around.words()
                            .say("models.none", shelf.folders().isEmpty() ? null : String.valueOf(shelf.folders())));
        }
        for (Found one : found) {
            if (one instanceof Found.Loaded loaded) {
                EngineModel model = loaded.model();
                say(
                        "models.model",
                        model.id(),
                        model.name(),
                        model.rows().size(),
                        model.rows().stream().mapToInt(Row::count).sum(),
                        model.views().size(),
                        one.origin());
                model.notice().ifPresent(notice -> around.out().println(OneLine.of("  " + notice)));
            } else if (one instanceof Found.Code code) {
                say("models.notRun", mend(code.jar(), consent));
            } else {
                List<Problem> problems = ((Found.Refused) one).problems();
                say("models.refused", one.origin(), problems.size());
                problems.forEach(problem -> around.out().println(OneLine.of("  " + problem)));
            }
        }
    }

    private void say(String key, Object... parts) {
        around.out().println(OneLine.of(around.words().say(key, parts)));
    }

    /** What a jar of code is, and how its models come to be known. */
    private static Fact mend(CodeJar jar, Consent consent) {
        return consent.covers(jar)
                ? new Keyed("models.agreed", List.of(jar.jar(), jar.plugin()))
                : new Keyed("models.asks", List.of(Consent.describe(jar), jar.jar(), jar.sha256()));
    }

    private ObjectNode json(List<Found> found, Consent consent) {
        ObjectNode json = JsonText.object();
        ArrayNode models = json.putArray("models");
        ArrayNode refused = json.putArray("refused");
        ArrayNode notRun = json.putArray("notRun");
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
            } else if (one instanceof Found.Code code) {
                notRun.addObject()
                        .put("origin", one.origin().toString())
                        .put("plugin", code.jar().plugin())
                        .put("sha256", code.jar().sha256())
                        .put("signer", code.jar().signer().orElse(null))
                        .put("agreed", consent.covers(code.jar()))
                        .put("mend", around.words().say(mend(code.jar(), consent)));
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
