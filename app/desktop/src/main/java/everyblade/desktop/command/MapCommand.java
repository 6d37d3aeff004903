package everyblade.desktop.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the map of a job. */
@Command(name = "map", description = "Draws the map of what was seen.")
final class MapCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "a job folder")
    private Path job;

    @Option(names = "--out", required = true, paramLabel = "F", description = "the file to write, .svg")
    private Path out;

    @Option(names = "--row", paramLabel = "ID", description = "this row only")
    private String row;

    MapCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob.read(around, job);
        throw new Failure("everyblade: map is not in this version");
    }
}
