package everyblade.cli;

import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.drill.DrillText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how somebody does over several drills. */
@Command(name = "progress", description = "${bundle:help.drillProgress}")
final class DrillProgressCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0..*", arity = "1..*", paramLabel = "DRILL", description = "${bundle:help.drillFolders}")
    private List<Path> paths;

    @Option(names = "--json", description = "${bundle:help.oneJson}")
    private boolean json;

    DrillProgressCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        List<DrillRecord> drills =
                paths.stream().map(path -> DrillRecord.read(around, path)).toList();
        drills.forEach(DrillRecord::requireEnded);
        List<DrillRecord.Told> told = new ArrayList<>();
        for (DrillRecord drill : drills) {
            told.add(DrillResultCommand.told(around, drill, drill.truth(Optional.empty())));
        }
        if (json) {
            around.out().println(DrillJson.progress(told));
        } else {
            new DrillText(around.words()).progress(told).forEach(around.out()::println);
        }
        return Commands.FINE;
    }
}
