package everyblade.core.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Triangles and their tree, held against slow ways to say the same. */
class TrianglesTest {

    private final SplittableRandom random = new SplittableRandom(20_261);

    private static Triangles one(double... corners) {
        return new Triangles(corners);
    }

    private Triangles scattered(int count, double size, boolean flat) {
        double[] corners = new double[9 * count];
        for (int i = 0; i < count; i++) {
            double[] place = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
            for (int k = 0; k < 9; k++) {
                corners[9 * i + k] = flat && k % 3 == 2 ? 0 : place[k % 3] + size * (random.nextDouble() - 0.5);
            }
        }
        return new Triangles(corners);
    }

    @Test
    void cut_each_other_if_an_edge_of_one_goes_through_the_other() {
        Triangles floor = one(0, 0, 0, 4, 0, 0, 0, 4, 0);

        assertThat(floor.cut(0, one(1, 1, -1, 1, 1, 1, 9, 9, 1), 0)).isTrue();
        assertThat(floor.cut(0, one(3, 3, -1, 3, 3, 1, 9, 9, 1), 0)).isFalse();
        assertThat(floor.cut(0, one(1, 1, 0.1, 1, 1, 1, 9, 9, 1), 0)).isFalse();
        assertThat(floor.cut(0, one(1, 1, 0, 2, 1, 0, 1, 2, 0), 0)).isFalse();
    }

    @Test
    void cut_each_other_just_where_their_shares_of_the_common_line_overlap() {
        Triangles some = scattered(300, 1, false);
        int cutting = 0;
        for (int i = 0; i < some.count(); i++) {
            for (int j = 0; j < i; j++) {
                boolean cut = some.cut(i, some, j);
                assertThat(cut).as("%d and %d", i, j).isEqualTo(overlapOnLine(some, i, j));
                cutting += cut ? 1 : 0;
            }
        }
        assertThat(cutting).isBetween(1_000, 40_000);
    }

    /**
     * Where the planes of two triangles meet is a line, of which each covers a stretch.
     *
     * @see <a href="https://doi.org/10.1080/10867651.1997.10487472">Möller: A Fast Triangle-Triangle Intersection Test, 1997</a>
     */
    private static boolean overlapOnLine(Triangles all, int i, int j) {
        double[] n = normal(all, i);
        double[] m = normal(all, j);
        double[] line = {n[1] * m[2] - n[2] * m[1], n[2] * m[0] - n[0] * m[2], n[0] * m[1] - n[1] * m[0]};
        double[] one = stretch(all, i, m, j, line);
        double[] other = stretch(all, j, n, i, line);
        return one != null && other != null && one[0] < other[1] && other[0] < one[1];
    }

    private static double[] normal(Triangles all, int i) {
        double[] u = new double[3];
        double[] v = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            u[axis] = all.at(i, 1, axis) - all.at(i, 0, axis);
            v[axis] = all.at(i, 2, axis) - all.at(i, 0, axis);
        }
        return new double[] {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    }

    private static double[] stretch(Triangles all, int i, double[] normal, int plane, double[] line) {
        double[] off = new double[3];
        double[] along = new double[3];
        for (int k = 0; k < 3; k++) {
            for (int axis = 0; axis < 3; axis++) {
                off[k] += normal[axis] * (all.at(i, k, axis) - all.at(plane, 0, axis));
                along[k] += line[axis] * all.at(i, k, axis);
            }
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            if (off[k] * off[next] < 0) {
                double at = along[k] + (along[next] - along[k]) * off[k] / (off[k] - off[next]);
                least = Math.min(least, at);
                most = Math.max(most, at);
            }
        }
        return least < most ? new double[] {least, most} : null;
    }

    @Test
    void lie_as_far_from_a_point_as_the_nearest_of_many_points_of_theirs() {
        Triangles some = scattered(200, 2, false);
        int steps = 120;
        for (int i = 0; i < some.count(); i++) {
            double[] point = {random.nextDouble(-1, 2), random.nextDouble(-1, 2), random.nextDouble(-1, 2)};
            double least = Double.POSITIVE_INFINITY;
            for (int a = 0; a <= steps; a++) {
                for (int b = 0; a + b <= steps; b++) {
                    double squared = 0;
                    for (int axis = 0; axis < 3; axis++) {
                        double at = (some.at(i, 0, axis) * (steps - a - b)
                                        + some.at(i, 1, axis) * a
                                        + some.at(i, 2, axis) * b)
                                / steps;
                        squared += (at - point[axis]) * (at - point[axis]);
                    }
                    least = Math.min(least, Math.sqrt(squared));
                }
            }
            assertThat(some.distance(i, point))
                    .isLessThanOrEqualTo(least + 1e-12)
                    .isCloseTo(least, within(0.02));
        }
    }

    @Test
    void overlap_in_the_plane_if_a_fine_grid_has_a_point_in_both() {
        Triangles some = scattered(60, 1.2, true);
        int overlapping = 0;
        int steps = 150;
        for (int i = 0; i < some.count(); i++) {
            for (int j = 0; j < i; j++) {
                boolean common = false;
                for (int a = 1; a < steps && !common; a++) {
                    for (int b = 1; a + b < steps && !common; b++) {
                        double x = mixed(some, i, a, b, steps, 0);
                        double r = mixed(some, i, a, b, steps, 1);
                        common = holds(some, j, x, r);
                    }
                }
                // A sliver of overlap can slip through the grid; what the grid finds must be there.
                if (common) {
                    overlapping++;
                    assertThat(some.overlap(i, some, j)).isTrue();
                } else if (some.overlap(i, some, j)) {
                    overlapping--;
                }
            }
        }
        assertThat(overlapping).isGreaterThan(400);
    }

    private static double mixed(Triangles all, int i, int a, int b, int steps, int axis) {
        return (all.at(i, 0, axis) * (steps - a - b) + all.at(i, 1, axis) * a + all.at(i, 2, axis) * b) / steps;
    }

    private static boolean holds(Triangles all, int j, double x, double r) {
        int positive = 0;
        int negative = 0;
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            double side = (all.at(j, next, 0) - all.at(j, k, 0)) * (r - all.at(j, k, 1))
                    - (all.at(j, next, 1) - all.at(j, k, 1)) * (x - all.at(j, k, 0));
            positive += side > 0 ? 1 : 0;
            negative += side < 0 ? 1 : 0;
        }
        return positive == 3 || negative == 3;
    }

    @Test
    void are_found_by_their_tree_just_as_by_trying_every_pair() {
        for (int round = 0; round < 40; round++) {
            Triangles some = scattered(1 + random.nextInt(80), 0.3, false);
            Triangles others = scattered(1 + random.nextInt(80), 0.3, false);
            boolean any = false;
            for (int i = 0; i < some.count(); i++) {
                for (int j = 0; j < others.count(); j++) {
                    any |= some.cut(i, others, j);
                }
            }
            int[] tried = {0};
            boolean found = new TriangleTree(some).anyPair(new TriangleTree(others), (i, j) -> {
                tried[0]++;
                return some.cut(i, others, j);
            });
            assertThat(found).isEqualTo(any);
            assertThat(tried[0]).isLessThanOrEqualTo(some.count() * others.count());
        }
    }
}
