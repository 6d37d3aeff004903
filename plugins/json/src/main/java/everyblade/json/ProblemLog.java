package everyblade.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects the problems of one file while it is read; keeps the first of each severity and counts the rest. */
public final class ProblemLog {

    private final String file;
    private final List<Problem> errors = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();
    private long unlisted;
    private long errorCount;

    public ProblemLog(String file) {
        this.file = file;
    }

    public void error(String code, Place place, String what, String why, String mend) {
        errorCount++;
        add(errors, () -> problem(code, Severity.ERROR, place, what, why, mend, Optional.empty()));
    }

    /**
     * An error of a word that is none of those known; the nearest of them is looked for only if the problem is listed,
     * since that takes time.
     *
     * @param otherwise what to do if none is known
     */
    public void unknown(
            String code,
            Place place,
            String what,
            String why,
            String word,
            Collection<String> known,
            String otherwise) {
        errorCount++;
        add(errors, () -> {
            Optional<String> nearest = Wording.nearest(word, known);
            String mend = nearest.map(near -> "did you mean " + Wording.quoted(near) + "?")
                    .orElse(otherwise);
            return problem(code, Severity.ERROR, place, what, why, mend, nearest);
        });
    }

    public void warning(String code, Place place, String what, String why, String mend) {
        add(warnings, () -> problem(code, Severity.WARNING, place, what, why, mend, Optional.empty()));
    }

    /** How many errors there are so far, those not listed included. */
    public long errorCount() {
        return errorCount;
    }

    /** Errors before warnings, each in order of place, capped. */
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>(errors);
        all.addAll(warnings);
        return ProblemList.of(all, unlisted);
    }

    private Problem problem(
            String code,
            Severity severity,
            Place place,
            String what,
            String why,
            String mend,
            Optional<String> nearest) {
        return new Problem(
                code, severity, file, place.line(), place.column(), place.pointer(), what, why, mend, nearest);
    }

    private void add(List<Problem> list, Supplier<Problem> problem) {
        if (list.size() == Problem.MOST) {
            unlisted++;
        } else {
            list.add(problem.get());
        }
    }
}
