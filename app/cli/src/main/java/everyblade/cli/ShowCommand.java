package everyblade.cli;

import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.section.ModelSheet;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws an engine model. */
@Command(name = "show", description = "${bundle:help.show}")
final class ShowCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "M", description = "${bundle:help.model}")
    private String model;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "F",
            completionCandidates = OutputFormat.Drawings.class,
            description = "${bundle:help.out}: ${COMPLETION-CANDIDATES}")
    private Path out;

    @Option(names = "--row", paramLabel = "ID", description = "${bundle:help.show.row}")
    private String row;

    ShowCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        OutputFormat format = OutputFormat.ofDrawing("--out", out);
        NewFile file = NewFile.at(around, "--out", out);
        Shelf.Chosen chosen = everyblade.shelf().choose(model);
        EngineModel engine = chosen.model();
        if (row != null) {
            MeshCommand.row(engine, row);
        }
        Scene scene = ModelSheet.of(engine, Optional.ofNullable(row), chosen.meshes(), around.words());
        file.write(format.draw(scene, Theme.LIGHT));
        return Commands.FINE;
    }
}
