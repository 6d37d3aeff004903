package everyblade.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts problems of one file into the order in which people read them, and ends the list where it would get long. */
public final class ProblemList {

    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::severity)
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column);

    private ProblemList() {}

    /**
     * Errors before warnings, each in order of place; after {@value Problem#MOST} one that counts the rest, at the place
     * of the last one listed.
     */
    public static List<Problem> of(List<Problem> problems) {
        return of(problems, 0);
    }

    /** @param unlisted how many more there were */
    static List<Problem> of(List<Problem> problems, long unlisted) {
        List<Problem> sorted = problems.stream().sorted(ORDER).toList();
        long more = unlisted + Math.max(0, sorted.size() - Problem.MOST);
        if (more == 0) {
            return sorted;
        }
        List<Problem> first = new ArrayList<>(sorted.subList(0, Problem.MOST));
        Problem last = first.get(Problem.MOST - 1);
        first.add(new Problem(
                "more-problems",
                last.severity(),
                last.file(),
                last.line(),
                last.column(),
                "",
                more + " more problems are not listed",
                "the list ends at " + Problem.MOST,
                "mend these first and check again"));
        return first;
    }
}
