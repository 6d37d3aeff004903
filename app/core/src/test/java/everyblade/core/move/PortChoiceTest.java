package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.move.CoverSearch.RowPlan;
import everyblade.core.move.RotationProblem.Course;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The ports that cost least, against trying every choice of a way for every row. */
class PortChoiceTest {

    private static final List<String> ORDER = List.of("p1", "p2", "p3", "p4");
    private static final Map<String, Double> OPENING = Map.of("p1", 5.0, "p2", 7.5, "p3", 2.25, "p4", 11.0);

    private static RowPlan plan(double minutes, double bound, String... ports) {
        return new RowPlan(Set.of(ports), new Course(List.of(), minutes), bound);
    }

    private static PortChoice choice(List<List<RowPlan>> rows) {
        return PortChoice.of(ORDER, rows, OPENING::get);
    }

    private static double opening(Set<String> ports) {
        return ports.stream().mapToDouble(OPENING::get).sum();
    }

    /** The least of all, by what the ways take or by what they take at least. */
    private static double tried(List<List<RowPlan>> rows, int row, Set<String> ports, boolean bounds) {
        if (row == rows.size()) {
            return opening(ports);
        }
        double least = Double.POSITIVE_INFINITY;
        for (RowPlan plan : rows.get(row)) {
            Set<String> more = new HashSet<>(ports);
            more.addAll(plan.ports());
            least = Math.min(least, (bounds ? plan.bound() : plan.minutes()) + tried(rows, row + 1, more, bounds));
        }
        return least;
    }

    @Test
    void aPortThatServesTwoRowsIsOpenedForBoth() {
        PortChoice choice = choice(List.of(
                List.of(plan(10, 9, "p1"), plan(12, 11, "p2")), List.of(plan(10, 9, "p3"), plan(11, 10, "p2"))));
        assertThat(choice.ports()).containsExactly("p1", "p3");
        assertThat(choice.bound()).isEqualTo(9 + 5 + 9 + 2.25);
        assertThat(choice(List.of(List.of(plan(10, 9, "p1"), plan(12, 11, "p4")), List.of(plan(10, 9, "p4"))))
                        .ports())
                .containsExactly("p4");
    }

    @Test
    void portsComeInTheirOrderAndARowThatNothingFinishesCostsNone() {
        PortChoice choice = choice(
                List.of(List.of(plan(3, 3, "p4")), List.of(), List.of(plan(4, 4, "p2")), List.of(plan(1, 1, "p1"))));
        assertThat(choice.ports()).containsExactly("p1", "p2", "p4");
        assertThat(choice.bound()).isEqualTo(8 + 5 + 7.5 + 11);
        assertThat(choice(List.of()).ports()).isEmpty();
        assertThat(choice(List.of()).bound()).isZero();
    }

    @Test
    void noChoiceOfWaysIsCheaper() {
        SplittableRandom random = new SplittableRandom(16);
        for (int round = 0; round < 300; round++) {
            List<List<RowPlan>> rows = new ArrayList<>();
            int count = random.nextInt(1, 5);
            for (int row = 0; row < count; row++) {
                List<RowPlan> plans = new ArrayList<>();
                int ways = random.nextInt(1, 4);
                for (int way = 0; way < ways; way++) {
                    double minutes = random.nextInt(1, 30);
                    Set<String> ports =
                            new HashSet<>(List.of(ORDER.get(random.nextInt(4)), ORDER.get(random.nextInt(4))));
                    plans.add(new RowPlan(ports, new Course(List.of(), minutes), minutes - random.nextDouble()));
                }
                rows.add(plans);
            }
            PortChoice choice = choice(rows);
            assertThat(choice.bound()).isEqualTo(tried(rows, 0, Set.of(), true), within(1e-9));
            Set<String> entered = Set.copyOf(choice.ports());
            double with = opening(entered);
            for (List<RowPlan> plans : rows) {
                with += plans.stream()
                        .filter(plan -> entered.containsAll(plan.ports()))
                        .mapToDouble(RowPlan::minutes)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
            }
            assertThat(with).isEqualTo(tried(rows, 0, Set.of(), false), within(1e-9));
        }
    }
}
