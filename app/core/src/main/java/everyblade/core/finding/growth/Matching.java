package everyblade.core.finding.growth;

import everyblade.core.finding.Dimension;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Findings of two records held against each other: every finding of either stands in exactly one of these lists.
 *
 * @param pairs the same finding then and now, in the order of those now
 * @param fresh found now, and not then
 * @param missing found then, and not entered now
 */
public record Matching(List<Pair> pairs, List<Finding> fresh, List<Finding> missing) {

    public Matching {
        pairs = List.copyOf(pairs);
        fresh = List.copyOf(fresh);
        missing = List.copyOf(missing);
    }

    /** The same finding in two records. */
    public record Pair(Finding then, Finding now) {}

    /**
     * Matches by row, airfoil, kind and zone; where several fit, those of most common zones first, then those of the
     * nearest sizes, then those that were entered first. Cost: the product of their numbers on one airfoil.
     */
    public static Matching of(List<Finding> then, List<Finding> now) {
        List<Pair> candidates = new ArrayList<>();
        for (Finding earlier : then) {
            for (Finding later : now) {
                if (mayBeTheSame(earlier, later)) {
                    candidates.add(new Pair(earlier, later));
                }
            }
        }
        candidates.sort(Comparator.comparingInt((Pair pair) -> -common(pair)).thenComparingDouble(Matching::apart));
        Set<Integer> takenThen = new HashSet<>();
        Set<Integer> takenNow = new HashSet<>();
        List<Pair> pairs = new ArrayList<>();
        for (Pair pair : candidates) {
            boolean free = !takenThen.contains(pair.then().entry())
                    && !takenNow.contains(pair.now().entry());
            if (free) {
                takenThen.add(pair.then().entry());
                takenNow.add(pair.now().entry());
                pairs.add(pair);
            }
        }
        pairs.sort(Comparator.comparingInt(pair -> pair.now().entry()));
        return new Matching(
                pairs,
                now.stream().filter(each -> !takenNow.contains(each.entry())).toList(),
                then.stream().filter(each -> !takenThen.contains(each.entry())).toList());
    }

    private static boolean mayBeTheSame(Finding then, Finding now) {
        return then.row().id().equals(now.row().id())
                && then.airfoil() == now.airfoil()
                && then.kind() == now.kind()
                && !then.zones().intersection(now.zones()).isEmpty();
    }

    private static int common(Pair pair) {
        return pair.then().zones().intersection(pair.now().zones()).size();
    }

    /** Sum of the differences of all sizes that both have, mm. */
    private static double apart(Pair pair) {
        double sum = 0;
        for (Dimension dimension : Dimension.values()) {
            Measured then = pair.then().sizes().get(dimension);
            Measured now = pair.now().sizes().get(dimension);
            if (then != null && now != null) {
                sum += Math.abs(now.value().minus(then.value()).millimetres());
            }
        }
        return sum;
    }
}
