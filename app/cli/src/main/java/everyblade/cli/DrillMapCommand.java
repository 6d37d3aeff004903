package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the map of a drill: of what its entries claim, or once it has ended of the truth. */
@Command(
        name = "map",
        description =
                "Draws the map of a drill: a ring for each row, a cell for each part; what the entries claim, or after"
                        + " the end what was truly in the picture.")
final class DrillMapCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "DRILL", description = "the folder of a drill")
    private Path path;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "F",
            completionCandidates = OutputFormat.Drawings.class,
            description = "the file to write: ${COMPLETION-CANDIDATES}")
    private Path out;

    @Option(names = "--row", paramLabel = "ID", description = "this row only, large")
    private String row;

    @Option(
            names = "--truth",
            description = "what was truly in the picture, with the damage; only of a drill that has ended")
    private boolean truth;

    DrillMapCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        MapCommand.Sheet sheet = MapCommand.Sheet.at(around, out, Optional.ofNullable(row));
        DrillRecord drill = DrillRecord.read(around, path);
        if (truth) {
            drill.requireEnded();
            Coverage truly = DrillResultCommand.told(around, drill, drill.truth(Optional.empty()))
                    .truly();
            sheet.draw(drill.job(), truly, around.words().say("drill.map.truly"));
        } else {
            sheet.draw(
                    drill.job(), drill.job().coverage(), drill.job().beginning().task());
        }
        return Commands.FINE;
    }
}
