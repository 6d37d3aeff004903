package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a ring shades, against each triangle of each of its airfoils. */
class RingShadeTest {

    private static final int LINES = 40;

    private final SplittableRandom random = new SplittableRandom(31);
    private final RayBundle fan = new RayBundle();
    private final RayBundle turned = new RayBundle();
    private final IntervalSet open = new IntervalSet();
    private final IntervalSet plain = new IntervalSet();
    private double apex;
    private double start;
    private double end;

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void aim(double widest) {
        apex = between(-7, 7);
        start = between(-7, 7);
        end = start + (random.nextBoolean() ? 1 : -1) * between(0.01, widest);
        double r = between(0, 30);
        fan.aim(between(-15, 15), r * Math.sin(apex), r * Math.cos(apex), between(-15, 15), between(0, 30), start, end);
    }

    private static double[] corners(Mesh mesh, int triangle) {
        int[] points = mesh.triangles();
        double[] corners = new double[9];
        for (int k = 0; k < 3; k++) {
            corners[3 * k] = mesh.x(points[3 * triangle + k]);
            corners[3 * k + 1] = mesh.y(points[3 * triangle + k]);
            corners[3 * k + 2] = mesh.z(points[3 * triangle + k]);
        }
        return corners;
    }

    private void shadePlainly(Ring ring, int spared) {
        plain.set(0, 1);
        for (int i = 0; i < ring.count(); i++) {
            double at = Math.toRadians(
                    ring.offset().plus(Turn.ofFraction(i, ring.count())).degrees());
            turned.turnedFrom(fan, Math.cos(at), Math.sin(at));
            int[] faces = ring.airfoil().triangleFaces();
            for (int triangle = 0; triangle < faces.length; triangle++) {
                if (i > 0 || faces[triangle] != spared) {
                    turned.shade(corners(ring.airfoil(), triangle), 0, plain);
                }
            }
        }
    }

    private static boolean holds(IntervalSet open, double s) {
        for (int i = 0; i < open.count(); i++) {
            if (open.from(i) <= s && s <= open.to(i)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNearAnEnd(IntervalSet open, double s) {
        for (int i = 0; i < open.count(); i++) {
            if (Math.abs(open.from(i) - s) < 1e-6 || Math.abs(open.to(i) - s) < 1e-6) {
                return true;
            }
        }
        return false;
    }

    private int compared(Ring ring, RingShade shade, int spared) {
        open.set(0, 1);
        shade.shade(fan, turned, apex, start, end, open, spared);
        shadePlainly(ring, spared);
        int shaded = 0;
        for (int line = 0; line <= LINES; line++) {
            double s = (double) line / LINES;
            if (!isNearAnEnd(open, s) && !isNearAnEnd(plain, s)) {
                assertThat(holds(open, s))
                        .as("%d airfoils, apex at %s, from %s to %s, line %s", ring.count(), apex, start, end, s)
                        .isEqualTo(holds(plain, s));
                shaded += holds(plain, s) ? 0 : 1;
            }
        }
        return shaded;
    }

    /** Wherever the airfoil itself stands, also where clock angles begin anew. */
    private Ring ring(SmallRings rings) {
        Mesh airfoil = SightSymmetryTest.moved(rings.airfoil(), random.nextBoolean() ? 180 : between(-180, 180), false);
        return new Ring(airfoil, rings.count(), rings.clock());
    }

    @Test
    void itShadesWhatEachOfItsAirfoilsShades() {
        int shaded = 0;
        for (int seed = 0; seed < 800; seed++) {
            SmallRings rings = new SmallRings(seed);
            Ring ring = ring(rings);
            aim(seed % 2 == 0 ? 0.35 : 3);
            int spared = random.nextInt(-1, ring.airfoil().faceCount());
            shaded += compared(ring, new RingShade(ring), spared);
        }
        assertThat(shaded).isBetween(2_000, 25_000);
    }

    /** Some lines pass the axis on the one side, some on the other. */
    @Test
    void alsoFromOneSideOfTheAxisToTheOther() {
        int shaded = 0;
        for (int seed = 0; seed < 300; seed++) {
            SmallRings rings = new SmallRings(seed);
            Ring ring = ring(rings);
            apex = between(-7, 7);
            start = apex + Math.PI + between(-0.4, 0.1);
            end = start + 0.35;
            fan.aim(
                    between(-4, 4),
                    25 * Math.sin(apex),
                    25 * Math.cos(apex),
                    between(-4, 4),
                    between(15, 30),
                    start,
                    end);
            shaded += compared(ring, new RingShade(ring), -1);
        }
        assertThat(shaded).isGreaterThan(1_000);
    }

    @Test
    void alsoToAnArcAcrossClock0() {
        int shaded = 0;
        for (int seed = 0; seed < 300; seed++) {
            SmallRings rings = new SmallRings(seed);
            Ring ring = ring(rings);
            apex = between(-1, 1);
            start = -0.17;
            end = 0.17;
            fan.aim(
                    between(-9, 9),
                    30 * Math.sin(apex),
                    30 * Math.cos(apex),
                    between(-9, 9),
                    between(3, 15),
                    start,
                    end);
            shaded += compared(ring, new RingShade(ring), -1);
        }
        assertThat(shaded).isGreaterThan(500);
    }

    @Test
    void movedItShadesAsOneThatStandsThere() {
        int shaded = 0;
        for (int seed = 0; seed < 200; seed++) {
            SmallRings rings = new SmallRings(seed);
            Ring ring = ring(rings);
            aim(0.35);
            double clock = between(-10, 10);
            Ring there = new Ring(ring.airfoil(), ring.count(), Span.turn(clock));
            shaded += compared(there, new RingShade(ring).at(clock), -1);
        }
        assertThat(shaded).isGreaterThan(500);
    }

    /** Its clock angles say nothing of where it is. */
    @Test
    void alsoIfItsAirfoilLiesRoundTheAxis() {
        int shaded = 0;
        for (int seed = 0; seed < 300; seed++) {
            double[] points = new double[9];
            for (int i = 0; i < 9; i++) {
                points[i] = between(-12, 12);
            }
            Mesh airfoil = new Mesh(points, new int[] {0, 1, 2}, new int[] {0, 3}, new int[] {0});
            Ring ring = new Ring(airfoil, 1 + random.nextInt(4), Turn.ofDegrees(between(0, 360)));
            aim(0.35);
            shaded += compared(ring, new RingShade(ring), -1);
        }
        assertThat(shaded).isGreaterThan(500);
    }

    @Test
    void anAngleIsWrappedToTheNearestHalfTurn() {
        for (int turns = -3; turns <= 3; turns++) {
            assertThat(RingShade.wrapped(1 + turns * 2 * Math.PI)).isCloseTo(1, within(1e-12));
        }
        assertThat(RingShade.wrapped(4)).isCloseTo(4 - 2 * Math.PI, within(1e-12));
    }
}
