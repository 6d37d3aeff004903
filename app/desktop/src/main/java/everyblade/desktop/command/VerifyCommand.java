package everyblade.desktop.command;

import everyblade.record.JobFolder;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks that a job's record is the one that was written. */
@Command(
        name = "verify",
        description = "Checks that every line of a job's journal is the one that was written; exit status 1 and the"
                + " first bad line if not.")
final class VerifyCommand implements Callable<Integer> {

    private static final String JOURNAL = "journal.jsonl";

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "a job folder")
    private Path job;

    @Option(
            names = "--head",
            paramLabel = "HASH",
            description = "hash of a line that was noted elsewhere, which shows whether lines are missing at the end")
    private String head;

    VerifyCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Path path = around.path(job);
        JobFolder folder = new JobFolder(around.disk(), path);
        if (!around.disk().exists(path.resolve(JOURNAL)) && folder.read() instanceof JobFolder.Refused refused) {
            throw new Failure(refused.problem().message());
        }
        JobFolder.Verification found = folder.verify(Optional.ofNullable(head).map(VerifyCommand::hash));
        if (found instanceof JobFolder.Sound sound) {
            around.out().println("sound: " + sound.entries() + " entries, head " + sound.head());
            return Commands.FINE;
        }
        around.out()
                .println(OneLine.of(
                        found instanceof JobFolder.Torn torn
                                ? torn.problem().message()
                                : ((JobFolder.Broken) found).problem().message()));
        return Commands.NOT_COMPLETE;
    }

    private static String hash(String text) {
        if (!text.matches("[0-9a-fA-F]{64}")) {
            throw new Failure("--head " + text + ": this is no hash; write the 64 digits as they were noted");
        }
        return text.toLowerCase(Locale.ROOT);
    }
}
