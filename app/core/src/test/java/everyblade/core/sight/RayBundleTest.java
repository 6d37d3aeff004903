package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Ray;
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
}
