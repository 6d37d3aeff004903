package everyblade.cli;

import everyblade.json.Found;
import everyblade.json.ModelShelf;
import everyblade.json.jar.CodeJar;
import everyblade.json.jar.Handed;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Used by the build: lets a jar of code that comes with the program tell its models, so that it need not run again. */
@Command(name = "ship", hidden = true, description = "${bundle:help.ship}")
final class ShipCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "JAR", description = "${bundle:help.ship.jar}")
    private Path jar;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "${bundle:help.ship.folder}")
    private Path folder;

    ShipCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        ModelShelf shelf = ModelShelf.open(around.path(jar), this::shipped);
        if (!shelf.notRun().isEmpty()) {
            throw Consent.refusal(shelf.notRun().get(0));
        }
        for (Found found : shelf.found()) {
            if (found instanceof Found.Refused refused) {
                throw new Failure(refused.problems().get(0).toString());
            }
        }
        return Commands.FINE;
    }

    private List<Handed> shipped(CodeJar code) {
        try {
            return everyblade.consent().ship(code, around.path(folder));
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
    }
}
