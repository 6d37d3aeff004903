package everyblade.cli;

import everyblade.core.surface.PlyText;
import everyblade.core.surface.UnusableShape;
import everyblade.core.surface.Walls;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Wall;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the surface of one airfoil. */
@Command(name = "mesh", description = "${bundle:help.mesh}")
final class MeshCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "M", description = "${bundle:help.model}")
    private String model;

    @Option(names = "--row", required = true, paramLabel = "ID", description = "${bundle:help.mesh.row}")
    private String row;

    @Option(names = "--out", required = true, paramLabel = "F.ply", description = "${bundle:help.out}")
    private Path out;

    @Option(names = "--walls", description = "${bundle:help.mesh.walls}")
    private boolean walls;

    MeshCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        Shelf.Chosen shelved = everyblade.shelf().choose(model);
        EngineModel engine = shelved.model();
        Map<Path, String> files = new LinkedHashMap<>();
        try {
            Row chosen = row(engine, row);
            files.put(out, PlyText.write(shelved.scene().airfoil(chosen).orElseThrow(() -> noShape(chosen))));
            for (Wall wall : walls ? engine.walls() : java.util.List.<Wall>of()) {
                files.put(beside(wall), PlyText.write(Walls.of(wall)));
            }
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.noSurface", model, unusable.told());
        }
        files.forEach((file, text) -> NewFile.at(around, "--out", file).write(text.getBytes(StandardCharsets.UTF_8)));
        return Commands.FINE;
    }

    private Path beside(Wall wall) {
        String name = out.getFileName().toString();
        String stem = name.endsWith(".ply") ? name.substring(0, name.length() - ".ply".length()) : name;
        return out.resolveSibling(stem + "-" + wall.id() + ".ply");
    }

    /** The row of this id. */
    static Row row(EngineModel engine, String id) {
        return engine.row(id)
                .orElseThrow(() -> Failure.of(
                        "stopped.mesh.engineHasNoSuchRow",
                        id,
                        engine.rows().stream().map(Row::id).collect(Collectors.joining(", "))));
    }

    static Failure noShape(Row row) {
        return Failure.of("stopped.mesh.rowHasNoShapeIn", row.id());
    }
}
