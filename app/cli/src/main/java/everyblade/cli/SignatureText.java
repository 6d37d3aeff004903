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
            checked.stamp().ifPresent(stamp -> notes.add("was there at " + stamp.at() + ", says " + stamp.authority()));
            statement.because().ifPresent(why -> notes.add("because " + why));
        });
        String begins = "signature " + checked.number() + ": ";
        String says = checked.file()
                .map(file -> says(file.statement(), checked.after()))
                .orElse("");
        return new Told(
                OneLine.of(
                        wrong.isEmpty()
                                ? begins + says + "; " + String.join("; ", notes)
                                : begins + "COUNTS FOR NOTHING: " + String.join("; ", wrong)
                                        + (says.isEmpty() ? "" : "; it says: " + says)),
                wrong.isEmpty());
    }

    private String says(Statement statement, int after) {
        return words.say(statement.as()) + " " + statement.signer().name()
                + statement
                        .signer()
                        .licenceAndNumber()
                        .map(licence -> ", " + licence)
                        .orElse(", no licence stated")
                + ", at " + statement.at() + ", entries 1…" + statement.entries() + "; " + after(after) + "; "
                + SignedFigures.line(statement.figures());
    }

    /** How much came after something, such as {@code 3 entries after it}. */
    static String after(int entries) {
        return entries == 0 ? "nothing after it" : entries + (entries == 1 ? " ENTRY AFTER IT" : " ENTRIES AFTER IT");
    }

    private String whose(SignatureFile file) {
        String name = file.statement().signer().name();
        String known = trusted.get(file.fingerprint());
        if (known == null) {
            return "its key " + file.fingerprint() + " is not on your list, so it may be anybody's; if you know from "
                    + name + " that it is theirs, everyblade key trust puts it there";
        }
        return known.equals(name)
                ? "its key is on your list"
                : "its key is on your list as that of " + known + ", who signs here as " + name;
    }

    /** The figures of another build may be others; those of this one may not. */
    private void figures(Statement statement, List<String> wrong, List<String> notes) {
        Optional<Map<String, String>> figures = computed.computeIfAbsent(statement.entries(), this::computed);
        if (figures.isEmpty()) {
            notes.add("its figures cannot be computed by this program");
        } else if (!figures.get().equals(statement.figures())) {
            boolean same = statement.program().equals(SignCommand.program());
            (same ? wrong : notes)
                    .add("its figures are not what this program computes ("
                            + SignedFigures.line(figures.get()) + ")"
                            + (same
                                    ? ""
                                    : ", but it was signed with another, "
                                            + statement.program().split(" ")[0]));
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
