package everyblade.core.move;

import everyblade.core.move.CoverSearch.RowPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Which ports are entered. Rows meet only in these: what a row takes depends on which ports it may use, and a port that is
 * opened for one row serves the others. Branch and bound over the ways of each row, exact.
 *
 * @param ports that are entered, in the order in which they are
 * @param bound minutes that every plan takes at least
 */
record PortChoice(List<String> ports, double bound) {

    /** Of views that go through no port. */
    static final String NO_PORT = "";

    static String portOf(ViewOption option) {
        return option.view().port().orElse(NO_PORT);
    }

    /**
     * The ports that cost least with what the rows then take.
     *
     * @param order of all ports
     * @param rows the quickest way of each through each set of ports that will do
     * @param opening minutes to open a port and shut it again
     */
    static PortChoice of(List<String> order, List<List<RowPlan>> rows, ToDoubleFunction<String> opening) {
        List<List<RowPlan>> fewestFirst = rows.stream()
                .filter(plans -> !plans.isEmpty())
                .sorted(Comparator.comparingInt(List::size))
                .toList();
        Search quickest = new Search(fewestFirst, opening, RowPlan::minutes);
        quickest.go(0, new HashSet<>(), 0);
        Search least = new Search(fewestFirst, opening, RowPlan::bound);
        least.go(0, new HashSet<>(), 0);
        return new PortChoice(order.stream().filter(quickest.best::contains).toList(), least.minutes);
    }

    private static final class Search {

        private final List<List<RowPlan>> rows;
        private final ToDoubleFunction<String> opening;
        private final ToDoubleFunction<RowPlan> price;
        /** Minutes that the rows from each one on take at least, ports not counted. */
        private final double[] ahead;

        private Set<String> best = Set.of();
        private double minutes = Double.POSITIVE_INFINITY;

        Search(List<List<RowPlan>> rows, ToDoubleFunction<String> opening, ToDoubleFunction<RowPlan> price) {
            this.rows = rows;
            this.opening = opening;
            this.price = price;
            this.ahead = new double[rows.size() + 1];
            for (int row = rows.size() - 1; row >= 0; row--) {
                ahead[row] = ahead[row + 1]
                        + rows.get(row).stream().mapToDouble(price).min().orElse(0);
            }
        }

        void go(int row, Set<String> entered, double soFar) {
            if (soFar + ahead[row] >= minutes) {
                return;
            }
            if (row == rows.size()) {
                minutes = soFar;
                best = Set.copyOf(entered);
                return;
            }
            record Branch(Set<String> entered, double minutes) {}
            List<Branch> branches = new ArrayList<>();
            for (RowPlan plan : rows.get(row)) {
                Set<String> more = new HashSet<>(plan.ports());
                more.removeAll(entered);
                double cost = price.applyAsDouble(plan)
                        + more.stream().mapToDouble(opening).sum();
                more.addAll(entered);
                branches.add(new Branch(more, soFar + cost));
            }
            branches.sort(Comparator.comparingDouble(Branch::minutes));
            branches.forEach(branch -> go(row + 1, branch.entered(), branch.minutes()));
        }
    }
}
