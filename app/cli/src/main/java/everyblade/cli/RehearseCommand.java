package everyblade.cli;

import everyblade.session.Opening;
import everyblade.session.around.Surroundings;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Loads everything that a window and the commands of every day need; its classes can then be kept for quicker starts. */
@Command(name = "rehearse", hidden = true, description = "${bundle:help.rehearse}")
final class RehearseCommand implements Callable<Integer> {

    /** What a person asks again and again; the second time of what the first one kept. */
    private static final List<String> EVERY_DAY =
            List.of("verify", "coverage", "gaps", "next", "findings", "coverage", "gaps", "next");

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
        Surroundings unheard = around.unheard();
        Commands.run(unheard, "--version");
        EVERY_DAY.forEach(name -> Commands.run(unheard, name, job.toString()));
        return window.rehearse(around, around.path(job));
    }
}
