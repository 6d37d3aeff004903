package everyblade.cli;

import everyblade.record.signing.CheckedSignature;
import everyblade.record.signing.SignatureFile;
import everyblade.record.signing.Statement;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What there is to tell of a job's signatures, and whether all of them are as they should be. */
final class SignatureText {

    private final OpenedJob job;
    private final Words words;
    private final Map<String, String> trusted;
    private final Map<Integer, Optional<Map<String, String>>> computed = new HashMap<>();

    SignatureText(OpenedJob job, TrustedKeys trusted, Words words) {
        this.job = job;
        this.trusted = trusted.all();
        this.words = words;
    }

    /**
     * A signature as it is told.
     *
     * @param line for a person
     * @param sound whether it says what it says of this record
     */
    record Told(String line, boolean sound) {}

    /** All, in their order. */
    List<Told> all() {
        return job.folder().signatures().of(job.journal()).stream()
                .map(this::told)
                .toList();
    }

    private Told told(CheckedSignature checked) {
        List<String> wrong = new ArrayList<>(words.say(checked.wrong()));
        List<String> notes = new ArrayList<>();
        checked.file().ifPresent(file -> {
            Statement statement = file.statement();
            if (checked.isSound()) {
                figures(statement, wrong, notes);
            }
            notes.add(whose(file));
            checked.stamp()
                    .ifPresent(stamp -> notes.add(words.say("signature.stamped", stamp.at(), stamp.authority())));
            statement.because().ifPresent(why -> notes.add(words.say("signature.because", why)));
        });
        Optional<String> says = checked.file().map(file -> says(file.statement(), checked.after()));
        return new Told(
                OneLine.of(
                        wrong.isEmpty()
                                ? words.say("signature.sound", checked.number(), says, String.join("; ", notes))
                                : words.say("signature.unsound", checked.number(), String.join("; ", wrong), says)),
                wrong.isEmpty());
    }

    private String says(Statement statement, int after) {
        return words.say(
                "signature.says",
                statement.as(),
                statement.signer().name(),
                statement.signer().licenceAndNumber(),
                statement.at(),
                statement.entries(),
                after,
                SignedFigures.line(statement.figures()));
    }

    private String whose(SignatureFile file) {
        String name = file.statement().signer().name();
        String known = trusted.get(file.fingerprint());
        if (known == null) {
            return words.say("signature.notListed", file.fingerprint(), name);
        }
        return known.equals(name) ? words.say("signature.listed") : words.say("signature.otherName", known, name);
    }

    /** The figures of another build may be others; those of this one may not. */
    private void figures(Statement statement, List<String> wrong, List<String> notes) {
        Optional<Map<String, String>> figures = computed.computeIfAbsent(statement.entries(), this::computed);
        if (figures.isEmpty()) {
            notes.add(words.say("signature.noFigures"));
        } else if (!figures.get().equals(statement.figures())) {
            boolean same = statement.program().equals(SignCommand.program());
            (same ? wrong : notes)
                    .add(words.say(
                            "signature.otherFigures",
                            SignedFigures.line(figures.get()),
                            same ? null : statement.program().split(" ")[0]));
        }
    }

    private Optional<Map<String, String>> computed(int entries) {
        try {
            OpenedJob then = job.upTo(entries);
            return Optional.of(SignedFigures.of(then, then.coverage()));
        } catch (Failure otherVersion) {
            return Optional.empty();
        }
    }
}
