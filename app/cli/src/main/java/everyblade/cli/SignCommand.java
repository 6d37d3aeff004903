package everyblade.cli;

import everyblade.record.JobFolder;
import everyblade.record.RecordProblem;
import everyblade.record.signing.CheckedSignature;
import everyblade.record.signing.SignatureFile;
import everyblade.record.signing.SignedAs;
import everyblade.record.signing.SigningKey;
import everyblade.record.signing.Statement;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.ProgramMark;
import everyblade.session.around.ProgramVersion;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Signs a record as it stands. */
@Command(name = "sign", description = "${bundle:help.sign}")
final class SignCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--as", required = true, paramLabel = "MEANING", description = "${bundle:help.sign.as}")
    private String as;

    @Option(names = "--key", required = true, paramLabel = "F.p12", description = "${bundle:help.sign.key}")
    private Path key;

    @Option(names = "--because", paramLabel = "TEXT", description = "${bundle:help.sign.because}")
    private String because;

    @Mixin
    private Passphrase passphrase = new Passphrase();

    SignCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        SignedAs meaning = SignedAs.of(as)
                .orElseThrow(() -> Failure.of("stopped.sign.nothingThatCanBeSigned", OneLine.quoted(OneLine.of(as))));
        OpenedJob.requireFolder(around, job);
        OpenedJob opened = OpenedJob.read(around, job);
        requireSound(opened.folder());
        List<CheckedSignature> before = opened.folder().signatures().of(opened.journal());
        SigningKey signing = KeyCommand.open(around, key, passphrase);
        requireOneRole(before, signing, meaning);
        int number = before.isEmpty() ? 1 : before.get(before.size() - 1).number() + 1;
        Statement statement = statement(opened, meaning, signing, before);
        Optional<RecordProblem> unkept =
                opened.folder().signatures().keep(number, SignatureFile.write(statement, signing));
        if (unkept.isPresent()) {
            throw new Failure(unkept.get());
        }
        around.out()
                .println(OneLine.of(around.words()
                        .say(
                                "signature.line",
                                number,
                                meaning,
                                signing.signer().name(),
                                statement.entries(),
                                statement.head())));
        around.out()
                .println(OneLine.of(around.words().say("signature.figures", SignedFigures.line(statement.figures()))));
        return Commands.FINE;
    }

    /** This program: its version, and what tells its builds apart. */
    static String program() {
        return ProgramVersion.number() + " " + ProgramMark.of();
    }

    private void requireSound(JobFolder folder) {
        JobFolder.Verification found = folder.verify(Optional.empty());
        if (found instanceof JobFolder.Torn torn) {
            throw new Failure(torn.problem());
        }
        if (found instanceof JobFolder.Broken broken) {
            throw new Failure(broken.problem());
        }
    }

    private void requireOneRole(List<CheckedSignature> before, SigningKey signing, SignedAs meaning) {
        before.stream()
                .filter(other ->
                        other.isSound() && CheckedSignature.holdsOtherRole(other, signing.fingerprint(), meaning))
                .findFirst()
                .ifPresent(other -> {
                    throw Failure.of(
                            "stopped.sign.madeSignatureAsAndNobody",
                            key,
                            other.number(),
                            other.file().orElseThrow().statement().as().word());
                });
    }

    private Statement statement(OpenedJob opened, SignedAs meaning, SigningKey signing, List<CheckedSignature> before) {
        return new Statement(
                meaning,
                signing.signer(),
                around.clock().instant().truncatedTo(ChronoUnit.SECONDS),
                opened.journal().firstHash(),
                opened.journal().lines().size(),
                opened.journal().head(),
                program(),
                SignedFigures.of(opened, opened.coverage()),
                Optional.ofNullable(because).map(why -> Given.words("--because", why)),
                before.isEmpty()
                        ? Optional.empty()
                        : before.get(before.size() - 1).file().map(SignatureFile::sha256));
    }
}
