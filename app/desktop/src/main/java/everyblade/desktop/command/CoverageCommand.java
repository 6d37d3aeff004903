package everyblade.desktop.command;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how much of every row was seen. */
@Command(name = "coverage", description = "How much was seen, by row, span, side, edge and airfoil.")
final class CoverageCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "a job folder")
    private Path job;

    @Option(names = "--json", description = "prints JSON")
    private boolean json;

    @Option(names = "--row", paramLabel = "ID", description = "this row only; totals stay those of all rows")
    private String row;

    CoverageCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.read(around, job);
        Coverage coverage = opened.coverage();
        List<RowCoverage> rows = rows(opened, coverage, Optional.ofNullable(row));
        if (json) {
            around.out().println(JsonText.of(CoverageJson.of(opened, coverage, rows)));
        } else {
            CoverageText.of(opened, coverage, rows).forEach(around.out()::println);
        }
        return Commands.FINE;
    }

    /** All rows, or the one of this id. */
    static List<RowCoverage> rows(OpenedJob job, Coverage coverage, Optional<String> id) {
        if (id.isEmpty()) {
            return coverage.rows();
        }
        if (!job.engine().rows().containsKey(id.get())) {
            throw new Failure("--row " + id.get() + ": this engine has no such row; it has "
                    + String.join(", ", job.engine().rows().keySet()));
        }
        return List.of(coverage.row(id.get()));
    }
}
