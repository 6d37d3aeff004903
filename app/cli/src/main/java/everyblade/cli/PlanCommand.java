package everyblade.cli;

import everyblade.core.entry.Settings;
import everyblade.core.move.Task;
import everyblade.picture.report.PlanPdf;
import everyblade.session.around.Surroundings;
import everyblade.session.job.Prepared;
import everyblade.session.model.Shelf;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a job before it is begun. */
@Command(name = "plan", description = "${bundle:help.plan}")
final class PlanCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "MODEL", description = "${bundle:help.plan.model}")
    private String model;

    @Mixin
    private TaskOptions asked = new TaskOptions();

    @Option(names = "--from", arity = "1..*", paramLabel = "PORT", description = "${bundle:help.plan.from}")
    private List<String> ports = List.of();

    @Option(names = "--detail", paramLabel = "MM", description = "${bundle:help.detailUnlessGiven}")
    private String detail;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    @Option(names = "--out", paramLabel = "F.pdf", description = "${bundle:help.plan.out}")
    private Path out;

    PlanCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        Shelf.Chosen chosen = everyblade.shelf().choose(model);
        Task task = asked.task(chosen.model(), ports);
        Settings settings = Settings.of(detail());
        NewFile file = out == null ? null : NewFile.pdf(around, "--out", out);
        Prepared prepared = Prepared.of(around, chosen, task, settings);
        if (json) {
            around.out().println(JsonText.of(OutlineJson.of(prepared, around.words())));
        } else if (file == null) {
            OutlineText.of(prepared, around.words()).forEach(around.out()::println);
        }
        if (file != null) {
            file.write(PlanPdf.write(
                    prepared.model(),
                    prepared.plan(),
                    prepared.outOfReach(),
                    around.clock().instant(),
                    around.words()));
        }
        return Commands.FINE;
    }

    private Map<String, BigDecimal> detail() {
        if (detail == null) {
            return Map.of("detail", Settings.DETAIL);
        }
        return detail.equals(StartCommand.NO_DETAIL)
                ? Map.of()
                : Map.of("detail", Given.number("--detail", detail, "mm"));
    }
}
