package everyblade.cli;

import everyblade.record.JobFolder;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Packs a job into one file. */
@Command(name = "pack", description = "${bundle:help.pack}")
final class PackCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--out", required = true, paramLabel = "F.zip", description = "${bundle:help.pack.out}")
    private Path out;

    PackCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OutputFormat.ZIP.require("--out", out);
        NewFile file = NewFile.at(around, "--out", out);
        OpenedJob opened = OpenedJob.readWithDoubts(around, job);
        AtomicReference<JobFolder.Packed> packed = new AtomicReference<>();
        file.write(stream -> {
            JobFolder.Packing packing = opened.folder().pack(stream);
            if (packing instanceof JobFolder.Refused refused) {
                throw new Failure(refused.problem());
            }
            packed.set((JobFolder.Packed) packing);
        });
        packed.get()
                .left()
                .forEach(name -> around.err().println(OneLine.of(around.words().say("pack.leftOut", name))));
        around.out()
                .println(around.words()
                        .say(
                                "pack.packed",
                                out,
                                packed.get().files(),
                                opened.journal().lines().size(),
                                opened.journal().head()));
        return Commands.FINE;
    }
}
