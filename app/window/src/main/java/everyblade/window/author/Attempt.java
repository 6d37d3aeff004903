package everyblade.window.author;

import everyblade.core.check.Flaw;
import everyblade.core.check.ModelCheck;
import everyblade.core.check.SightCheck;
import everyblade.core.sight.Progress;
import everyblade.json.Problem;
import everyblade.json.ProblemList;
import everyblade.json.Severity;
import everyblade.session.model.ModelFiles;
import everyblade.session.model.SurfaceProblems;
import everyblade.words.Words;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a model's folder once: the text as it stood, what is wrong with it, and the model if there is one.
 *
 * @param at when it was read
 * @param stamp how the files that were read looked just before
 * @param files the {@code engine.json} of that moment
 * @param problems errors before warnings, each in order of place
 * @param model what can be drawn; empty if the text cannot be read as a model
 */
public record Attempt(Instant at, Stamp stamp, ModelFiles files, List<Problem> problems, Optional<ReadModel> model) {

    /** As much of a text as a person will look through; a longer one would make the window slow. */
    private static final int SHOWN = 4_000_000;

    public Attempt {
        problems = List.copyOf(problems);
    }

    /** The text of {@code engine.json}, its lines ended by a line feed alone; of a very long one only the beginning. */
    public String text() {
        byte[] bytes = files.text();
        String text = new String(bytes, 0, Math.min(bytes.length, SHOWN), StandardCharsets.UTF_8);
        return text.replace("\r\n", "\n");
    }

    /** Whether there was such a folder. */
    public boolean there() {
        return stamp.there();
    }

    /** How many errors there are. */
    public long errors() {
        return count(Severity.ERROR);
    }

    /** How many warnings there are. */
    public long warnings() {
        return count(Severity.WARNING);
    }

    private long count(Severity severity) {
        return problems.stream()
                .filter(problem -> problem.severity() == severity)
                .count();
    }

    /** With what only the surfaces show to be wrong. Takes up to a second. */
    public Attempt checked(Words words) {
        return model.map(read -> with(ModelCheck.of(read.model(), read.meshes()), words))
                .orElse(this);
    }

    /**
     * With the views that see nothing.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says so
     */
    public Attempt checkedViews(Progress progress, Words words) {
        return model.map(read -> with(SightCheck.of(read.model(), read.meshes(), progress), words))
                .orElse(this);
    }

    private Attempt with(List<Flaw> flaws, Words words) {
        List<Problem> all = new ArrayList<>(problems);
        all.addAll(SurfaceProblems.of(flaws, files, words));
        List<Problem> sorted = ProblemList.of(all);
        boolean sound = !Problem.anyError(sorted);
        return new Attempt(
                at,
                stamp,
                files,
                sorted,
                model.map(read -> new ReadModel(read.model(), read.meshes(), read.at(), sound)));
    }
}
