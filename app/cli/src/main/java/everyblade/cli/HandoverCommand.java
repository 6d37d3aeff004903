package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.picture.report.Exhibits;
import everyblade.picture.report.HandoverPdf;
import everyblade.picture.report.ReportFacts;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.job.OpenedJob;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the page for the next shift. */
@Command(name = "handover", description = "${bundle:help.handover}")
final class HandoverCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--out", required = true, paramLabel = "F.pdf", description = "${bundle:help.out}")
    private Path out;

    HandoverCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        NewFile file = NewFile.pdf(around, "--out", out);
        OpenedJob opened = OpenedJob.read(around, job);
        Coverage coverage = opened.coverage();
        ReportFacts facts = ReportCommand.facts(opened, around.words());
        Exhibits exhibits = ReportCommand.exhibits(opened, around.words());
        file.write(Waiting.during(
                around,
                "wait.handover",
                () -> HandoverPdf.write(opened.fold(), coverage, facts, exhibits, around.words())));
        return Commands.FINE;
    }
}
