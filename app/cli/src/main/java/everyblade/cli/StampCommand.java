package everyblade.cli;

import everyblade.fact.Keyed;
import everyblade.json.PlainFile;
import everyblade.record.RecordProblem;
import everyblade.record.signing.TimeStamp;
import everyblade.record.signing.Unsigned;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Puts a time stamp beside a signature. */
@Command(name = "stamp", description = "${bundle:help.stamp}")
final class StampCommand implements Callable<Integer> {

    private static final long LARGEST = 1 << 20;

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Parameters(index = "1", paramLabel = "N", description = "${bundle:help.stamp.n}")
    private int number;

    @Parameters(index = "2", paramLabel = "F.tsr", description = "${bundle:help.stamp.file}")
    private Path file;

    StampCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob.requireFolder(around, job);
        OpenedJob opened = OpenedJob.read(around, job);
        byte[] signature = opened.folder()
                .signatures()
                .bytes(number)
                .orElseThrow(() -> Failure.of("stopped.stamp.stampJobHasNoSuch", number));
        try {
            byte[] stamp = PlainFile.read(around.path(file), LARGEST);
            TimeStamp read = TimeStamp.read(stamp, signature);
            Optional<RecordProblem> unkept = opened.folder().signatures().keepStamp(number, stamp);
            if (unkept.isPresent()) {
                throw new Failure(unkept.get());
            }
            around.out()
                    .println(OneLine.of(around.words()
                            .say(
                                    "signature.stamp",
                                    number,
                                    new Keyed("signature.stamped", List.of(read.at(), read.authority())))));
            return Commands.FINE;
        } catch (Unsigned unfit) {
            throw Failure.of("stopped.stamp.askAuthorityForStampSignatures", file, unfit.why(), number);
        } catch (IOException failure) {
            throw Failure.of("stopped.stamp.cannotBeReadAsTime", file);
        }
    }
}
