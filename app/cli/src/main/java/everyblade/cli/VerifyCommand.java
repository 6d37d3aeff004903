package everyblade.cli;

import everyblade.record.JobFolder;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.job.OpenedJob;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks that a job's record is the one that was written. */
@Command(name = "verify", description = "${bundle:help.verify}")
final class VerifyCommand implements Callable<Integer> {

    private static final String JOURNAL = "journal.jsonl";
    private static final Pattern HEAD = Pattern.compile("(?:([0-9]{1,7}):)?([0-9a-fA-F]{64})");

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--head", paramLabel = "HASH", description = "${bundle:help.verify.head}")
    private String head;

    VerifyCommand(Surroundings around) {
        this.around = around;
    }

    /** Asked no more than this. */
    VerifyCommand(Surroundings around, ShortLine asked) {
        this.around = around;
        this.job = asked.job();
    }

    @Override
    public Integer call() {
        Path path = around.job(job);
        JobFolder folder = new JobFolder(around.disk(), path);
        if (!around.disk().exists(path.resolve(JOURNAL)) && folder.read() instanceof JobFolder.Refused refused) {
            throw new Failure(refused.problem());
        }
        Optional<JobFolder.NotedHead> elsewhere = Optional.ofNullable(head).map(VerifyCommand::noted);
        JobFolder.Verification found =
                Waiting.during(around, "wait.verify", () -> folder.verify(elsewhere, around.seenHeads()));
        if (found instanceof JobFolder.Sound sound) {
            around.out().println(around.words().say("verify.sound", sound.entries(), sound.head()));
            sound.noted().ifPresent(noted -> around.out().println(after(noted, sound.entries())));
            return signatures(folder);
        }
        around.out()
                .println(OneLine.of(around.words()
                        .say(
                                found instanceof JobFolder.Torn torn
                                        ? torn.problem()
                                        : ((JobFolder.Broken) found).problem())));
        return Commands.NOT_COMPLETE;
    }

    /** Tells the signatures, if there are any. */
    private int signatures(JobFolder folder) {
        if (!folder.signatures().hasAny()) {
            return Commands.FINE;
        }
        List<SignatureText.Told> told =
                new SignatureText(OpenedJob.read(around, job), new TrustedKeys(around), around.words()).all();
        told.forEach(one -> around.out().println(one.line()));
        return told.stream().allMatch(SignatureText.Told::sound) ? Commands.FINE : Commands.NOT_COMPLETE;
    }

    private String after(int noted, int entries) {
        int count = entries - noted;
        return count == 0
                ? around.words().say("verify.nothingAfter")
                : around.words().say("verify.after", count, noted + 1, entries);
    }

    /** A hash, with or without the number of its entry before it. */
    private static JobFolder.NotedHead noted(String text) {
        Matcher matcher = HEAD.matcher(text);
        if (!matcher.matches()) {
            throw Failure.of("stopped.verify.noHashWriteDigitsAs", text);
        }
        return new JobFolder.NotedHead(
                matcher.group(2).toLowerCase(Locale.ROOT),
                matcher.group(1) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(matcher.group(1))));
    }
}
