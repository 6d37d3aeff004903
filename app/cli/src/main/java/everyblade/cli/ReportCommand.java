package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.picture.report.Exhibits;
import everyblade.picture.report.LastRecord;
import everyblade.picture.report.ReportFacts;
import everyblade.picture.report.ReportPdf;
import everyblade.picture.report.SignedAccount;
import everyblade.record.Beginning;
import everyblade.record.RecordKind;
import everyblade.record.Review;
import everyblade.record.signing.CheckedSignature;
import everyblade.record.signing.SignatureFile;
import everyblade.record.signing.SignedAs;
import everyblade.record.signing.Statement;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the report of a job. */
@Command(name = "report", description = "${bundle:help.report}")
final class ReportCommand implements Callable<Integer> {

    private final Surroundings around;
    private final RecordKind kind;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "F.pdf",
            completionCandidates = OutputFormat.Printed.class,
            description = "${bundle:help.out}: ${COMPLETION-CANDIDATES} ${bundle:help.report.oneFile}")
    private Path out;

    /** @param kind of record that it is of */
    ReportCommand(Surroundings around, RecordKind kind) {
        this.around = around;
        this.kind = kind;
    }

    @Override
    public Integer call() {
        OutputFormat format = OutputFormat.ofPages("--out", out);
        NewFile file = NewFile.at(around, "--out", out);
        OpenedJob opened = OpenedJob.read(around, job, kind);
        ReportFacts facts = facts(opened, around.words());
        facts.doubts().forEach(around.err()::println);
        Coverage coverage = opened.coverage();
        Exhibits exhibits = exhibits(opened, around.words());
        file.write(Waiting.during(
                around,
                "wait.report",
                () -> format.print(ReportPdf.pages(opened.fold(), coverage, facts, exhibits, around.words()))));
        return Commands.FINE;
    }

    /** What is shown beside the entries. */
    static Exhibits exhibits(OpenedJob job, Words words) {
        Optional<LastRecord> last = job.previous()
                .map(then -> new LastRecord(
                        then.fold(),
                        then.coverage(),
                        then.beginning().at(),
                        then.journal().head()));
        return new Exhibits(job.limits(), JobPhotos.of(job, words), last);
    }

    private static String named(OpenedJob then, Words words) {
        return words.say(
                "report.first.previousRecord",
                then.beginning().serial(),
                then.beginning().at().toString().split("T")[0],
                then.beginning().by(),
                then.journal().head().substring(0, 12));
    }

    static ReportFacts facts(OpenedJob job, Words words) {
        Beginning beginning = job.beginning();
        return new ReportFacts(
                beginning.serial(),
                beginning.task(),
                beginning.by(),
                beginning.at(),
                beginning.settings(),
                job.previous().map(then -> named(then, words)),
                job.journal().modelHash(),
                job.journal().head(),
                job.doubts(words),
                job.reviewed().map(Review::remarks).orElse(List.of()),
                job.folder().signatures().of(job.journal()).stream()
                        .map(checked -> signed(checked, words))
                        .toList());
    }

    private static SignedAccount signed(CheckedSignature checked, Words words) {
        Optional<Statement> says = checked.file().map(SignatureFile::statement);
        return new SignedAccount(
                checked.number(),
                says.map(statement -> statement.as().role() == SignedAs.Role.INSPECTOR)
                        .orElse(false),
                says.map(statement -> words.say(statement.as())).orElse(""),
                says.map(statement -> statement.signer().name()).orElse(""),
                says.flatMap(statement -> statement.signer().licenceAndNumber()),
                says.map(Statement::at),
                says.flatMap(Statement::because),
                says.map(Statement::entries).orElse(0),
                checked.after(),
                checked.file().map(SignatureFile::fingerprint).orElse(""),
                words.say(checked.wrong()));
    }
}
