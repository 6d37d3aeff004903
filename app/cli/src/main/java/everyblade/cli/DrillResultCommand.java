package everyblade.cli;

import everyblade.core.sight.Progress;
import everyblade.practice.drill.Truth;
import everyblade.session.around.Patience;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.drill.DrillText;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what came of a drill that has ended. */
@Command(name = "result", description = "${bundle:help.drillResult}")
final class DrillResultCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "DRILL", description = "${bundle:help.drillFolder}")
    private Path path;

    @Option(names = "--json", description = "${bundle:help.oneJson}")
    private boolean json;

    DrillResultCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        DrillRecord drill = DrillRecord.read(around, path);
        drill.requireEnded();
        Truth truth = drill.truth(Optional.empty());
        if (json) {
            around.out().println(DrillJson.result(drill, told(around, drill, truth)));
        } else {
            tell(around, drill, truth);
        }
        return Commands.FINE;
    }

    static void tell(Surroundings around, DrillRecord drill, Truth truth) {
        new DrillText(around.words()).result(drill, told(around, drill, truth)).forEach(around.out()::println);
    }

    static DrillRecord.Told told(Surroundings around, DrillRecord drill, Truth truth) {
        Progress patience = new Patience(around, "wait.replay");
        return drill.told(truth, drill.job().fold(), drill.job().coverage(), patience);
    }
}
