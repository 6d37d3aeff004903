package everyblade.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts problems of one file into the order in which people read them, and ends the list where it would get long. */
public final class ProblemList {

    private static final String MORE = "more-problems";

    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::severity)
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column);

    private ProblemList() {}

    /**
     * Errors before warnings, each in order of place; after {@value Problem#MOST} one that counts the rest, at the place
     * of the last one listed. What such ones among the problems count already is added up.
     */
    public static List<Problem> of(List<Problem> problems) {
        List<Problem> told = problems.stream()
                .filter(problem -> !problem.code().equals(MORE))
                .toList();
        long counted = problems.stream()
                .filter(problem -> problem.code().equals(MORE))
                .mapToLong(more ->
                        Long.parseLong(more.what().substring(0, more.what().indexOf(' '))))
                .sum();
        return of(told, counted);
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
                MORE,
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
