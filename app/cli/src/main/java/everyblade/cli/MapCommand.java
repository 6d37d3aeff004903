package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.picture.MapFacts;
import everyblade.picture.MapScene;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.record.RecordKind;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
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

    MapCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Sheet sheet = Sheet.at(around, out, Optional.ofNullable(row));
        OpenedJob opened = OpenedJob.read(around, job, RecordKind.JOB);
        sheet.draw(opened, opened.coverage(), opened.beginning().task());
        return Commands.FINE;
    }

    /**
     * A map and where it goes.
     *
     * @param row that is drawn alone; empty for all of them
     */
    record Sheet(Surroundings around, OutputFormat format, NewFile file, Optional<String> row) {

        /** Refuses a file of another kind, or one that is there. */
        static Sheet at(Surroundings around, Path out, Optional<String> row) {
            return new Sheet(around, OutputFormat.ofDrawing("--out", out), NewFile.at(around, "--out", out), row);
        }

        void draw(OpenedJob job, Coverage coverage, String task) {
            CoverageCommand.rows(job, coverage, row);
            EngineModel model = job.engine().model();
            MapFacts facts = new MapFacts(
                    model.name(),
                    model.notice(),
                    job.beginning().serial(),
                    task,
                    job.journal().head(),
                    MapWords.of(around.words()));
            file.write(Waiting.during(
                    around,
                    "wait.map",
                    () -> format.draw(MapScene.of(coverage, facts, row, MapStyle.PLAIN), MapStyle.PLAIN.theme())));
        }
    }
}
