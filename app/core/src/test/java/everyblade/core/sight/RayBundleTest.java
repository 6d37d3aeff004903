package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** One triangle or box against the lines to an arc, which are drawn one by one beside it. */
class RayBundleTest {

    private static final int LINES = 60;

    private final SplittableRandom random = new SplittableRandom(11);
    private final RayBundle aimed = new RayBundle();
    private final RayBundle fan = new RayBundle();
    private final IntervalSet open = new IntervalSet();
    private double[] apex = new double[3];
    private double arcX;
    private double arcR;
    private double start;
    private double end;

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void aim() {
        apex = new double[] {between(-20, 20), between(-10, 10), between(-10, 10)};
        arcX = between(-20, 20);
        arcR = between(5, 20);
        start = between(-7, 7);
        end = start + (random.nextBoolean() ? 1 : -1) * between(0.05, 3);
        aimed.aim(apex[0], apex[1], apex[2], arcX, arcR, start, end);
        fan.turnedFrom(aimed, 1, 0);
    }

    /** The place on the arc at a parameter, as the curve defines it: rational, of its ends and the meeting of the tangents. */
    private double[] onArc(double s) {
        double w = Math.cos((end - start) / 2);
        double middle = (start + end) / 2;
        double a = (1 - s) * (1 - s);
        double b = 2 * s * (1 - s);
        double c = s * s;
        double below = a + b * w + c;
        return new double[] {
            arcX,
            arcR * (a * Math.sin(start) + b * Math.sin(middle) + c * Math.sin(end)) / below,
            arcR * (a * Math.cos(start) + b * Math.cos(middle) + c * Math.cos(end)) / below
        };
    }

    private double[] near(double t, double s, double spread) {
        double[] far = onArc(s);
        double[] point = new double[3];
        for (int i = 0; i < 3; i++) {
            point[i] = apex[i] + t * (far[i] - apex[i]) + between(-spread, spread);
        }
        return point;
    }

    private boolean lit(double s) {
        for (int i = 0; i < open.count(); i++) {
            if (open.from(i) <= s && s <= open.to(i)) {
                return true;
            }
        }
        return false;
    }

    private boolean isAtAnEnd(double s) {
        for (int i = 0; i < open.count(); i++) {
            if (Math.abs(open.from(i) - s) < 1e-7 || Math.abs(open.to(i) - s) < 1e-7) {
                return true;
            }
        }
        return false;
    }

    @Test
    void aTriangleShadesExactlyTheLinesThatPassThroughIt() {
        int shaded = 0;
        int parted = 0;
        for (int i = 0; i < 8_000; i++) {
            aim();
            double spread = between(0.2, 20);
            double t = between(0.05, 1.1);
            double[] corners = new double[9];
            for (int k = 0; k < 3; k++) {
                System.arraycopy(near(t, random.nextDouble(), spread), 0, corners, 3 * k, 3);
            }
            double[] a = {corners[0], corners[1], corners[2]};
            double[] b = {corners[3], corners[4], corners[5]};
            double[] c = {corners[6], corners[7], corners[8]};
            open.set(0, 1);
            fan.shade(corners, 0, open);
            parted += open.count() > 2 ? 1 : 0;
            for (int line = 0; line <= LINES; line++) {
                double s = (double) line / LINES;
                boolean crossed = !Double.isNaN(Ray.meets(apex, onArc(s), a, b, c));
                shaded += crossed ? 1 : 0;
                if (!isAtAnEnd(s)) {
                    assertThat(lit(s)).as("triangle %s at %s", i, s).isEqualTo(!crossed);
                }
            }
        }
        assertThat(shaded).isGreaterThan(20_000);
        assertThat(parted).as("shades in two parts").isGreaterThan(50);
    }

    @Test
    void noBoxIsLeftOutThatALineComesInto() {
        int missed = 0;
        int met = 0;
        for (int i = 0; i < 20_000; i++) {
            aim();
            double[] middle = near(between(0, 1), random.nextDouble(), 6);
            double[] half = {between(0, 3), between(0, 3), between(0, 3)};
            boolean misses = fan.misses(middle[0], middle[1], middle[2], half[0], half[1], half[2]);
            boolean meets = false;
            for (int k = 0; k < 400 && !meets; k++) {
                double[] point = near((k % 20 + 1) / 20.0, k / 20 / 19.0, 0);
                meets = Math.abs(point[0] - middle[0]) <= half[0]
                        && Math.abs(point[1] - middle[1]) <= half[1]
                        && Math.abs(point[2] - middle[2]) <= half[2];
            }
            assertThat(misses && meets).as("box %s", i).isFalse();
            missed += misses ? 1 : 0;
            met += meets ? 1 : 0;
        }
        assertThat(missed).isGreaterThan(3_000);
        assertThat(met).isGreaterThan(3_000);
    }

    /** All lines from the origin to an arc at x = 8 that begins at clock 0 have an x from 0 to 8, and no y or z below 0. */
    @Test
    void aBoxThatOnlyTouchesTheLinesIsNotLeftOut() {
        aimed.aim(0, 0, 0, 8, 10, 0, 1);
        fan.turnedFrom(aimed, 1, 0);

        for (double beyond : new double[] {0, 1e-9}) {
            assertThat(List.of(
                            fan.misses(-1 - beyond, 0, 0, 1, 100, 100),
                            fan.misses(9 + beyond, 0, 0, 1, 100, 100),
                            fan.misses(0, -1 - beyond, 0, 100, 1, 100),
                            fan.misses(0, 0, -1 - beyond, 100, 100, 1)))
                    .containsOnly(beyond > 0);
        }
    }

    /** The four corners of the tetrahedron that holds all lines: the apex, both ends and where the tangents there meet. */
    private double[][] tetrahedron() {
        double w = Math.cos((end - start) / 2);
        double middle = (start + end) / 2;
        return new double[][] {
            apex,
            {arcX, arcR * Math.sin(start), arcR * Math.cos(start)},
            {arcX, arcR * Math.sin(middle) / w, arcR * Math.cos(middle) / w},
            {arcX, arcR * Math.sin(end), arcR * Math.cos(end)}
        };
    }

    /** By how much a plane square to a direction parts a box from the tetrahedron, for a direction of length 1; negative if it does not. */
    private static double parts(double[] direction, double[][] corners, double[] middle, double[] half) {
        double length = Math.sqrt(Ray.dot(direction, direction));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] corner : corners) {
            low = Math.min(low, Ray.dot(direction, corner) / length);
            high = Math.max(high, Ray.dot(direction, corner) / length);
        }
        double at = Ray.dot(direction, middle) / length;
        double reach = 0;
        for (int i = 0; i < 3; i++) {
            reach += Math.abs(direction[i]) * half[i] / length;
        }
        return Math.max(low - at - reach, at - reach - high);
    }

    /**
     * Along the axes, square to the plane of the apex and both ends and within it to the outermost lines, and square to the
     * planes of these and the tangents' meeting.
     */
    @Test
    void aBoxIsLeftOutExactlyIfAPlaneSquareToOneOfEightDirectionsPartsItFromAllLines() {
        int[] deciding = new int[8];
        for (int i = 0; i < 6_000; i++) {
            aim();
            double[][] corners = tetrahedron();
            double[] u = Ray.minus(corners[1], apex);
            double[] t = Ray.minus(corners[2], apex);
            double[] v = Ray.minus(corners[3], apex);
            double[] across = Ray.cross(u, v);
            double[][] directions = {
                {1, 0, 0},
                {0, 1, 0},
                {0, 0, 1},
                across,
                Ray.cross(u, across),
                Ray.cross(v, across),
                Ray.cross(u, t),
                Ray.cross(t, v)
            };
            double[] middle = near(between(-0.1, 1.1), random.nextDouble(), 5);
            double[] half = {between(0, 2), between(0, 2), between(0, 2)};
            double most = Double.NEGATIVE_INFINITY;
            int parting = 0;
            int last = 0;
            for (int k = 0; k < directions.length; k++) {
                double by = parts(directions[k], corners, middle, half);
                most = Math.max(most, by);
                parting += by > 1e-9 ? 1 : 0;
                last = by > 1e-9 ? k : last;
            }
            if (Math.abs(most) > 1e-9) {
                assertThat(fan.misses(middle[0], middle[1], middle[2], half[0], half[1], half[2]))
                        .as("box %d", i)
                        .isEqualTo(most > 0);
            }
            deciding[last] += parting == 1 ? 1 : 0;
        }
        assertThat(deciding).as("boxes that one direction alone leaves out").doesNotContain(0);
    }

    /** As a box without thickness round a triangle that a line meets at its edge. */
    @Test
    void noPlaceOnTheOutermostLinesIsLeftOut() {
        for (int i = 0; i < 6_000; i++) {
            aim();
            double angle = between(-4, 4);
            fan.turnedFrom(aimed, Math.cos(angle), Math.sin(angle));
            double[] place = Ray.turned(near(random.nextDouble(), i % 2, 0), -angle);

            assertThat(fan.misses(place[0], place[1], place[2], 1e-14, 1e-14, 1e-14))
                    .as("place %d", i)
                    .isFalse();
        }
    }

    /** A fan turned back by an angle shades of a triangle turned back by as much what it shaded before. */
    @Test
    void turnedWithTheTriangleItShadesTheSame() {
        for (int i = 0; i < 500; i++) {
            aim();
            double[] corners = new double[9];
            double t = between(0.3, 1);
            for (int k = 0; k < 3; k++) {
                System.arraycopy(near(t, random.nextDouble(), 4), 0, corners, 3 * k, 3);
            }
            open.set(0, 1);
            fan.shade(corners, 0, open);
            double before = open.length();
            double angle = between(-4, 4);
            double[] turned = new double[9];
            for (int k = 0; k < 3; k++) {
                double[] corner = {corners[3 * k], corners[3 * k + 1], corners[3 * k + 2]};
                System.arraycopy(Ray.turned(corner, -angle), 0, turned, 3 * k, 3);
            }
            RayBundle back = new RayBundle();
            back.turnedFrom(aimed, Math.cos(angle), Math.sin(angle));
            open.set(0, 1);
            back.shade(turned, 0, open);

            assertThat(open.length()).as("triangle %d", i).isCloseTo(before, within(1e-6));
        }
    }
}
