package everyblade.cli;

import everyblade.session.Opening;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Opens a drill in the window, or what came of one that has ended. */
@Command(name = "run", description = "${bundle:help.drillRun}")
final class DrillRunCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;
    private final Opening window;

    @Parameters(index = "0", paramLabel = "DRILL", description = "${bundle:help.drillFolder}")
    private Path path;

    @Mixin
    private ExaminerKey key;

    DrillRunCommand(Surroundings around, Everyblade everyblade, Opening window) {
        this.around = around;
        this.everyblade = everyblade;
        this.window = window;
    }

    @Override
    public Integer call() {
        DrillRecord drill = DrillRecord.read(around, path);
        return window.drill(around, everyblade.shelf(), drill, drill.truth(key.words(around)));
    }
}
