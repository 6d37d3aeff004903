package everyblade.cli;

import everyblade.core.entry.Settings;
import everyblade.core.move.Task;
import everyblade.picture.report.PlanPdf;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.around.UserFolders;
import everyblade.session.job.JobList;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.Prepared;
import everyblade.session.model.Shelf;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a job before it is begun; of one that is, tells its list. */
@Command(name = "plan", description = "${bundle:help.plan}")
final class PlanCommand implements Callable<Integer> {

    private final Surroundings around;
    private final Everyblade everyblade;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "MODEL|JOB", description = "${bundle:help.plan.model}")
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
        Optional<Path> job = UserFolders.path(model).filter(around::isJob);
        if (job.isPresent()) {
            return list(job.get());
        }
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

    /** What is kept of an answer hangs on the record alone; the card says what must not stay unsaid beside it, and when it was. */
    private int list(Path job) {
        requireNoTask();
        if (out == null) {
            return OpenedJob.answer(around, job, Optional.empty(), Commands.question(spec), (opened, to) -> {
                tell(JobList.of(around, opened), to);
                return Commands.FINE;
            });
        }
        NewFile file = NewFile.pdf(around, "--out", out);
        OpenedJob opened = OpenedJob.readWithDoubts(around, job);
        JobList list = JobList.of(around, opened);
        if (json) {
            tell(list, around.out());
        }
        file.write(PlanPdf.write(
                list.begun().model(),
                list.begun().plan(),
                list.begun().outOfReach(),
                new PlanPdf.Standing(
                        opened.beginning().serial(),
                        opened.fold().entries().size(),
                        opened.doubts(around.words()),
                        list.ticked()),
                around.clock().instant(),
                around.words()));
        return Commands.FINE;
    }

    private void tell(JobList list, PrintStream to) {
        if (json) {
            to.println(JsonText.of(OutlineJson.of(list, around.words())));
        } else {
            OutlineText.of(list, around.words()).forEach(to::println);
        }
    }

    /** A job says itself what is asked for, and how finely. */
    private void requireNoTask() {
        List<String> given = new ArrayList<>(asked.given());
        if (!ports.isEmpty()) {
            given.add("--from");
        }
        if (detail != null) {
            given.add("--detail");
        }
        if (!given.isEmpty()) {
            throw Failure.of("stopped.plan.jobSaysItself", given, model);
        }
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
