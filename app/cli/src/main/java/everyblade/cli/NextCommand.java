package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.move.Plan;
import everyblade.core.move.PlanBuilder;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.job.OpenedJob;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what to do next: the moves that close all gaps. */
@Command(name = "next", description = "${bundle:help.next}")
final class NextCommand implements Callable<Integer> {

    private final Surroundings around;
    /** All that was said. */
    private final Supplier<List<String>> question;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    @Option(names = "--finding", paramLabel = "K", description = "${bundle:help.next.finding}")
    private Integer finding;

    NextCommand(Surroundings around) {
        this.around = around;
        this.question = () -> Commands.question(spec);
    }

    /** Asked no more than this. */
    NextCommand(Surroundings around, ShortLine asked) {
        this.around = around;
        this.job = asked.job();
        this.json = asked.json();
        this.question = asked::question;
    }

    @Override
    public Integer call() {
        return OpenedJob.answer(around, job, Optional.empty(), question.get(), this::tell);
    }

    private int tell(OpenedJob opened, PrintStream out) {
        Coverage coverage = opened.coverage();
        if (finding != null) {
            FindingLook look = FindingLook.of(opened, coverage, finding);
            if (json) {
                out.println(JsonText.of(look.json(around.words())));
            } else {
                look.text(around.words()).forEach(out::println);
            }
            return Commands.FINE;
        }
        Plan plan = Waiting.during(around, "wait.next", () -> PlanBuilder.of(opened.fold(), coverage, opened.prices()));
        if (json) {
            out.println(JsonText.of(PlanJson.of(plan, coverage.situation())));
        } else {
            PlanText.of(plan, opened.fold(), coverage, around.words()).forEach(out::println);
        }
        return Commands.FINE;
    }
}
