package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Explanation;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how much of every row was seen. */
@Command(name = "coverage", description = "${bundle:help.coverage}")
final class CoverageCommand implements Callable<Integer> {

    private final Surroundings around;
    /** All that was said. */
    private final Supplier<List<String>> question;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    @Option(names = "--csv", description = "${bundle:help.coverage.csv}")
    private boolean csv;

    @Option(names = "--row", paramLabel = "ID", description = "${bundle:help.coverage.row}")
    private String row;

    @Option(
            names = "--explain",
            arity = "2",
            paramLabel = "N ZONE",
            hideParamSyntax = true,
            description = "${bundle:help.coverage.explain}")
    private List<String> explained;

    CoverageCommand(Surroundings around) {
        this.around = around;
        this.question = () -> Commands.question(spec);
    }

    /** Asked no more than this. */
    CoverageCommand(Surroundings around, ShortLine asked) {
        this.around = around;
        this.job = asked.job();
        this.json = asked.json();
        this.question = asked::question;
    }

    @Override
    public Integer call() {
        Csv.requireOnly(json && csv);
        Optional<PrintStream> doubts =
                explained != null ? Optional.empty() : Optional.of(json || csv ? around.err() : around.out());
        return OpenedJob.answer(around, job, doubts, question.get(), this::tell);
    }

    private int tell(OpenedJob opened, PrintStream out) {
        Coverage coverage = opened.coverage();
        List<RowCoverage> rows = rows(opened, coverage, Optional.ofNullable(row));
        if (explained != null) {
            explain(coverage, rows).forEach(out::println);
        } else if (csv) {
            out.print(CellTables.cells(rows));
        } else if (json) {
            out.println(JsonText.of(CoverageJson.of(opened, coverage, rows, around.words())));
        } else {
            new CoverageText(around.words()).of(opened, coverage, rows).forEach(out::println);
        }
        return Commands.FINE;
    }

    /** Every zone of the airfoil that the words name, one explanation after the other. */
    private List<String> explain(Coverage coverage, List<RowCoverage> rows) {
        if (rows.size() != 1 || row == null || json || csv) {
            throw Failure.of("stopped.coverage.explainsOneAirfoilOneRow");
        }
        RowCoverage only = rows.get(0);
        int airfoil = airfoil(only);
        try {
            ZoneSet zones = ZoneWords.zone(only.zoning(), new Said<>(explained.get(1), 1));
            return IntStream.range(0, only.zoning().size())
                    .filter(zones::contains)
                    .mapToObj(zone -> Explanation.of(coverage, row, airfoil, zone))
                    .flatMap(List::stream)
                    .map(around.words()::say)
                    .toList();
        } catch (Refusal refusal) {
            throw Failure.of("stopped.coverage.line", airfoil, explained.get(1), refusal.why());
        }
    }

    private int airfoil(RowCoverage only) {
        int count = only.row().count();
        return Optional.of(explained.get(0))
                .filter(number -> number.matches("[0-9]{1,4}"))
                .map(Integer::valueOf)
                .filter(n -> n >= 1 && n <= count)
                .orElseThrow(() -> Failure.of(
                        "stopped.coverage.rowHasSToGive",
                        explained.get(0),
                        row,
                        around.words().airfoil(only.row()),
                        count));
    }

    /** All rows, or the one of this id. */
    static List<RowCoverage> rows(OpenedJob job, Coverage coverage, Optional<String> id) {
        if (id.isEmpty()) {
            return coverage.rows();
        }
        if (!job.engine().rows().containsKey(id.get())) {
            throw Failure.of(
                    "stopped.coverage.engineHasNoSuchRow",
                    id.get(),
                    String.join(", ", job.engine().rows().keySet()));
        }
        return List.of(coverage.row(id.get()));
    }
}
