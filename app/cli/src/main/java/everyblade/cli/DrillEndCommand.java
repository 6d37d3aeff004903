package everyblade.cli;

import everyblade.practice.drill.Truth;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Ends a drill and tells its truth. */
@Command(name = "end", description = "${bundle:help.drillEnd}")
final class DrillEndCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "DRILL", description = "${bundle:help.drillFolder}")
    private Path path;

    @Mixin
    private ExaminerKey key;

    DrillEndCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        DrillRecord drill = DrillRecord.read(around, path);
        drill.requireGoingOn();
        Truth truth = drill.truth(key.words(around));
        drill.end(truth);
        DrillResultCommand.tell(around, drill, truth);
        return Commands.FINE;
    }
}
