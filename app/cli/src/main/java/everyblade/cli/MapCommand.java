package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.picture.MapFacts;
import everyblade.picture.MapScene;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.record.RecordKind;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.spi.EngineModel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the map of a job. */
@Command(name = "map", description = "${bundle:help.map}")
final class MapCommand implements Callable<Integer> {

    private final Surroundings around;
    private final RecordKind kind;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "F",
            completionCandidates = OutputFormat.Drawings.class,
            description = "${bundle:help.out}: ${COMPLETION-CANDIDATES}")
    private Path out;

    @Option(names = "--row", paramLabel = "ID", description = "${bundle:help.map.row}")
    private String row;

    /** @param kind of record that it draws */
    MapCommand(Surroundings around, RecordKind kind) {
        this.around = around;
        this.kind = kind;
    }

    @Override
    public Integer call() {
        OutputFormat format = OutputFormat.ofDrawing("--out", out);
        NewFile file = NewFile.at(around, "--out", out);
        OpenedJob opened = OpenedJob.read(around, job, kind);
        Coverage coverage = opened.coverage();
        Optional<String> wanted = Optional.ofNullable(row);
        CoverageCommand.rows(opened, coverage, wanted);
        file.write(format.draw(MapScene.of(coverage, facts(opened), wanted, MapStyle.PLAIN), MapStyle.PLAIN.theme()));
        return Commands.FINE;
    }

    private MapFacts facts(OpenedJob job) {
        EngineModel model = job.engine().model();
        return new MapFacts(
                model.name(),
                model.notice(),
                job.beginning().serial(),
                job.beginning().task(),
                job.journal().head(),
                MapWords.of(around.words()));
    }
}
