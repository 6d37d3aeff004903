package everyblade.cli;

import everyblade.session.Opening;
import everyblade.session.around.Surroundings;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Loads everything that a window needs; its classes can then be kept for quicker starts. */
@Command(name = "rehearse", hidden = true, description = "${bundle:help.rehearse}")
final class RehearseCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Opening window;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.rehearse.job}")
    private Path job;

    RehearseCommand(Surroundings around, Opening window) {
        this.around = around;
        this.window = window;
    }

    @Override
    public Integer call() {
        return window.rehearse(around, around.path(job));
    }
}
