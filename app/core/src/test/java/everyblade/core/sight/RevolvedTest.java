package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import everyblade.core.surface.Mesh;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What surfaces of revolution hide, against each line of sight by itself: whether its squared radius, of degree two in the
 * share of its way, meets that of an edge that sweeps.
 */
class RevolvedTest {

    private static final double TURN = 2 * Math.PI;

    private final SplittableRandom random = new SplittableRandom(21);
    private final List<double[][]> edges = new ArrayList<>();
    private final List<Wall> walls = new ArrayList<>();
    private final List<Mesh> swept = new ArrayList<>();

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Cones, cylinders and steps square to the axis. */
    private void wall(double radius) {
        List<MeridionalPoint> curve = new ArrayList<>();
        double x = between(-25, -15);
        double r = radius;
        for (int i = 0; i < 4; i++) {
            curve.add(new MeridionalPoint(x, r));
            if (i > 0) {
                MeridionalPoint last = curve.get(i - 1);
                edges.add(new double[][] {{last.x(), last.r(), 0}, {x, r, 0}});
            }
            int kind = random.nextInt(3);
            x += kind == 0 ? 0 : between(3, 20);
            r = Math.max(0, kind == 1 ? r : r + between(-5, 5));
        }
        walls.add(new Wall("wall" + walls.size(), Optional.empty(), curve));
    }

    /** A triangle, an edge of which may stand square to the axis or lie along it. */
    private void triangle() {
        double[] points = new double[9];
        for (int i = 0; i < 3; i++) {
            points[3 * i] = between(-20, 20);
            points[3 * i + 1] = between(-15, 15);
            points[3 * i + 2] = between(-15, 15);
        }
        if (random.nextBoolean()) {
            points[3] = points[0];
        }
        swept.add(new Mesh(points, new int[] {0, 1, 2}, new int[] {0, 3}, new int[] {0}));
        for (int i = 0; i < 3; i++) {
            int a = 3 * i;
            int b = 3 * ((i + 1) % 3);
            edges.add(new double[][] {
                {points[a], points[a + 1], points[a + 2]}, {points[b], points[b + 1], points[b + 2]}
            });
        }
    }

    private static boolean hides(double[] a, double[] b, double x0, double r0, double x1, double r1, double apart) {
        double both = r0 * r1 * Math.cos(apart);
        double c = r0 * r0;
        double l = 2 * both - 2 * r0 * r0;
        double q = r0 * r0 + r1 * r1 - 2 * both;
        if (a[0] == b[0]) {
            double t = (a[0] - x0) / (x1 - x0);
            double at = c + t * (l + t * q);
            return x0 != x1 && t > 0 && t < 1 && at >= leastSquare(a, b) && at <= mostSquare(a, b);
        }
        double u0 = (x0 - a[0]) / (b[0] - a[0]);
        double u1 = (x1 - x0) / (b[0] - a[0]);
        for (int i = 1; i < 3; i++) {
            double at = a[i] + u0 * (b[i] - a[i]);
            double by = u1 * (b[i] - a[i]);
            c -= at * at;
            l -= 2 * at * by;
            q -= by * by;
        }
        double root = Math.sqrt(l * l - 4 * q * c);
        return meets((-l - root) / (2 * q), u0, u1) || meets((-l + root) / (2 * q), u0, u1);
    }

    private static boolean meets(double t, double u0, double u1) {
        return t > 0 && t < 1 && u0 + t * u1 >= 0 && u0 + t * u1 <= 1;
    }

    private static double mostSquare(double[] a, double[] b) {
        return Math.max(a[1] * a[1] + a[2] * a[2], b[1] * b[1] + b[2] * b[2]);
    }

    private static double leastSquare(double[] a, double[] b) {
        double[] origin = {a[0], 0, 0};
        return Math.pow(Ray.distance(a, b, origin), 2);
    }

    private static boolean holds(IntervalSet open, double clock) {
        return IntStream.range(0, open.count()).anyMatch(i -> open.from(i) <= clock && clock <= open.to(i));
    }

    private static boolean isNearAnEnd(IntervalSet open, double clock) {
        return IntStream.range(0, open.count())
                .anyMatch(i -> Math.abs(open.from(i) - clock) < 1e-4 || Math.abs(open.to(i) - clock) < 1e-4);
    }

    /** Some clock angles that are asked for, in one to three parts. */
    private IntervalSet asked() {
        IntervalSet open = new IntervalSet();
        open.set(0, TURN);
        if (random.nextInt(3) > 0) {
            open.subtract(0, between(0, 3));
            open.subtract(between(3, 6), TURN);
        }
        if (random.nextBoolean()) {
            double cut = between(1, 5);
            open.subtract(cut, cut + 0.5);
        }
        return open;
    }

    private int compared(double x0, double r0, double x1, double r1) {
        double clock = between(-4, 10);
        IntervalSet asked = asked();
        IntervalSet open = new IntervalSet();
        open.set(asked);
        Revolved.of(walls, swept).shade(x0, r0, clock, x1, r1, new IntervalSet(), open);
        int hidden = 0;
        for (int i = 0; i < 120; i++) {
            double at = (i + 0.5) * TURN / 120;
            boolean hides = edges.stream().anyMatch(edge -> hides(edge[0], edge[1], x0, r0, x1, r1, at - clock));
            if (!isNearAnEnd(asked, at) && !isNearAnEnd(open, at)) {
                assertThat(holds(open, at))
                        .as("from (%s, %s) to (%s, %s), %s of %s", x0, r0, x1, r1, at, clock)
                        .isEqualTo(holds(asked, at) && !hides);
            }
            hidden += hides && holds(asked, at) ? 1 : 0;
        }
        return hidden;
    }

    private void scene(int seed) {
        walls.clear();
        swept.clear();
        edges.clear();
        if (seed % 3 != 0) {
            wall(between(2, 12));
        }
        if (seed % 3 != 1) {
            triangle();
        }
    }

    @Test
    void aLineIsHiddenExactlyIfItMeetsWhatAnEdgeSweeps() {
        int hidden = 0;
        for (int seed = 0; seed < 1_500; seed++) {
            scene(seed);
            hidden += compared(between(-22, 22), between(1, 25), between(-22, 22), between(1, 25));
        }
        assertThat(hidden).isBetween(20_000, 120_000);
    }

    @Test
    void alsoIfBothStandAtTheSamePlaceAlongTheAxis() {
        int hidden = 0;
        for (int seed = 0; seed < 600; seed++) {
            scene(seed);
            double x = between(-18, 18);
            hidden += compared(x, between(1, 25), x, between(1, 25));
        }
        assertThat(hidden).isGreaterThan(3_000);
    }

    @Test
    void alsoIfOneOfThemStandsOnTheAxis() {
        int hidden = 0;
        for (int seed = 0; seed < 600; seed++) {
            scene(seed);
            boolean first = random.nextBoolean();
            double r = between(1, 25);
            hidden += compared(between(-22, 22), first ? 0 : r, between(-22, 22), first ? r : 0);
        }
        assertThat(hidden).isGreaterThan(3_000);
    }

    /** A place on a wall looks along it and away from it, and a scope tip may stand in one. */
    @Test
    void aWallDoesNotHideWhatLiesOnIt() {
        walls.add(
                new Wall("hub", Optional.empty(), List.of(new MeridionalPoint(-50, 10), new MeridionalPoint(50, 10))));
        for (double x1 : new double[] {0, 7}) {
            IntervalSet open = new IntervalSet();
            open.set(0, TURN);
            Revolved.of(walls, swept).shade(0, 10, 1, x1, 20, new IntervalSet(), open);

            // The horizon of a place on a cylinder: the plane that touches it there is at 10 = 20 cos δ.
            assertThat(open.from(0)).isCloseTo(0, within(1e-9));
            assertThat(open.to(0)).isCloseTo(1 + Math.PI / 3, within(1e-4));
            assertThat(open.from(1)).isCloseTo(1 - Math.PI / 3 + TURN, within(1e-4));
            assertThat(open.count()).isEqualTo(2);
        }
    }

    private IntervalSet pastACylinder(double from, double to, double x0, double r0, double x1, double r1) {
        walls.clear();
        walls.add(new Wall(
                "liner", Optional.empty(), List.of(new MeridionalPoint(from, 15), new MeridionalPoint(to, 15))));
        IntervalSet open = new IntervalSet();
        open.set(0, TURN);
        Revolved.of(walls, swept).shade(x0, r0, 1, x1, r1, new IntervalSet(), open);
        return open;
    }

    /** Past a cylinder of radius 15 to its end at x = 50: square to the axis, and from the axis half-way to (80, 30). */
    @Test
    void aWallHidesUpToItsVeryEnd() {
        assertThat(pastACylinder(-50, 50, 50, 10, 50, 20).isEmpty()).isTrue();
        assertThat(pastACylinder(50, 150, 50, 10, 50, 20).isEmpty()).isTrue();
        assertThat(pastACylinder(51, 150, 50, 10, 50, 20).length()).isEqualTo(TURN);
        assertThat(pastACylinder(-50, 50, 20, 0, 80, 30).isEmpty()).isTrue();
        assertThat(pastACylinder(50, 150, 20, 0, 80, 30).isEmpty()).isTrue();
        assertThat(pastACylinder(51, 150, 20, 0, 80, 30).length()).isEqualTo(TURN);
    }

    @Test
    void whereThereIsNothingNothingIsHidden() {
        IntervalSet open = new IntervalSet();
        open.set(1, 2);
        Revolved.of(List.of(), List.of()).shade(0, 10, 1, 5, 20, new IntervalSet(), open);

        assertThat(open.from(0)).isEqualTo(1);
        assertThat(open.to(0)).isEqualTo(2);
    }

    @Test
    void anArcIsTakenAwayWhereverItsTurnsAreCountedFrom() {
        for (double turns : new double[] {-2, -1, 0, 1, 3}) {
            IntervalSet open = new IntervalSet();
            open.set(0, TURN);
            Revolved.subtractTurned(turns * TURN - 1, turns * TURN + 2, open);

            assertThat(open.count()).isEqualTo(1);
            assertThat(open.from(0)).isCloseTo(2, within(1e-9));
            assertThat(open.to(0)).isCloseTo(TURN - 1, within(1e-9));
        }
    }
}
