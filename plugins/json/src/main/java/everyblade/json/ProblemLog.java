package everyblade.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
        error(code, place, what, why, () -> mend);
    }

    /** @param mend asked for only if the problem is listed, since finding the nearest word takes time */
    public void error(String code, Place place, String what, String why, Supplier<String> mend) {
        errorCount++;
        add(errors, Severity.ERROR, code, place, what, why, mend);
    }

    public void warning(String code, Place place, String what, String why, String mend) {
        add(warnings, Severity.WARNING, code, place, what, why, () -> mend);
    }

    /** How many errors there are so far, those not listed included. */
    public long errorCount() {
        return errorCount;
    }

    /** Errors before warnings, each in order of place, capped. */
    public List<Problem> problems() {
        Comparator<Problem> byPlace = Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column);
        List<Problem> all = new ArrayList<>(errors.stream().sorted(byPlace).toList());
        all.addAll(warnings.stream().sorted(byPlace).toList());
        long more = unlisted + Math.max(0, all.size() - Problem.MOST);
        if (more == 0) {
            return all;
        }
        List<Problem> first = new ArrayList<>(all.subList(0, Problem.MOST));
        Problem last = first.get(Problem.MOST - 1);
        first.add(new Problem(
                "more-problems",
                last.severity(),
                file,
                last.line(),
                last.column(),
                "",
                more + " more problems are not listed",
                "the list ends at " + Problem.MOST,
                "mend these first and check again"));
        return first;
    }

    private void add(
            List<Problem> list,
            Severity severity,
            String code,
            Place place,
            String what,
            String why,
            Supplier<String> mend) {
        if (list.size() == Problem.MOST) {
            unlisted++;
        } else {
            list.add(new Problem(
                    code, severity, file, place.line(), place.column(), place.pointer(), what, why, mend.get()));
        }
    }
}
