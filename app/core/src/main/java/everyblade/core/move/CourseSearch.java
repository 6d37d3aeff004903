package everyblade.core.move;

import everyblade.core.move.RotationProblem.Course;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Work;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The quickest order in which one work of each stay is done: dynamic programming over sets of stays, the last of them and where
 * it left the row, which leaves alone what cannot be quicker than what was found.
 */
final class CourseSearch {

    private static final double ROUNDING = 1e-7;
    private static final double PLACES = 1e6;

    private final RotationProblem problem;
    private final List<List<Work>> works;
    private final int all;
    private final int[] rank;
    /** Minutes to a stay from another one; from where the scope tip is first, in the last line. */
    private final double[][] seating;
    /** What a stay takes at least, wherever one comes from, by stays that are done. */
    private final double[] ahead;

    private final Map<Node, Course> known = new HashMap<>();

    /**
     * @param last stay that was done; the number of stays if none was
     * @param place of the row, in parts of a degree
     */
    private record Node(int done, int last, long place) {}

    /** @param works by stay, every sensible way of doing it */
    CourseSearch(RotationProblem problem, List<List<Work>> works) {
        this.problem = problem;
        this.works = works;
        int stays = works.size();
        this.all = (1 << stays) - 1;
        this.rank = IntStream.range(0, stays)
                .map(stay -> problem.rank().applyAsInt(option(stay)))
                .toArray();
        this.seating = new double[stays + 1][stays];
        double[] least = new double[stays];
        for (int to = 0; to < stays; to++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int from = 0; from <= stays; from++) {
                seating[from][to] = from < stays
                        ? option(to).awayFrom(Optional.of(option(from)), problem.prices())
                        : option(to).awayFrom(problem.seated(), problem.prices());
                nearest = from == to ? nearest : Math.min(nearest, seating[from][to]);
            }
            least[to] = nearest
                    + works.get(to).stream().mapToDouble(Work::minutes).min().orElseThrow();
        }
        this.ahead = new double[all + 1];
        for (int done = 0; done <= all; done++) {
            for (int stay = 0; stay < stays; stay++) {
                ahead[done] += (done >> stay & 1) == 0 ? least[stay] : 0;
            }
        }
    }

    private ViewOption option(int stay) {
        return works.get(stay).get(0).option();
    }

    Course quickest() {
        return best(0, works.size(), problem.place());
    }

    private Course best(int done, int last, OptionalDouble from) {
        if (done == all) {
            return new Course(List.of(), 0);
        }
        Node node = new Node(done, last, from.isPresent() ? Math.round(from.getAsDouble() * PLACES) : Long.MIN_VALUE);
        Course before = known.get(node);
        if (before == null) {
            before = looked(done, last, from);
            known.put(node, before);
        }
        return before;
    }

    private Course looked(int done, int last, OptionalDouble from) {
        int first = IntStream.range(0, works.size())
                .filter(stay -> (done >> stay & 1) == 0)
                .map(stay -> rank[stay])
                .min()
                .orElseThrow();
        Course best = null;
        for (int stay = 0; stay < works.size(); stay++) {
            if ((done >> stay & 1) == 0 && rank[stay] == first) {
                best = quicker(best, done, last, from, stay);
            }
        }
        return best;
    }

    private Course quicker(Course known, int done, int last, OptionalDouble from, int stay) {
        Course best = known;
        int then = done | 1 << stay;
        double seat = seating[last][stay];
        for (Work work : works(stay, from)) {
            double least = seat + work.minutes() + ahead[then];
            if (best != null && least >= best.minutes() - ROUNDING) {
                continue;
            }
            double leading = problem.leading(work, from, seat > 0);
            if (best == null || least + leading < best.minutes() - ROUNDING) {
                Course rest = best(then, stay, problem.after(work, from));
                double minutes = seat + leading + work.minutes() + rest.minutes();
                if (best == null || minutes < best.minutes() - ROUNDING) {
                    List<Work> course = new ArrayList<>(List.of(work));
                    course.addAll(rest.works());
                    best = new Course(course, minutes);
                }
            }
        }
        return best;
    }

    private List<Work> works(int stay, OptionalDouble from) {
        List<Work> anyhow = works.get(stay);
        if (!problem.slack().none() || from.isEmpty() || anyhow.get(0).how() != How.SWEEP) {
            return anyhow;
        }
        List<Work> all = new ArrayList<>(anyhow);
        all.addAll(problem.beginningHere(anyhow.get(0).stay(), from.getAsDouble()));
        return all;
    }
}
