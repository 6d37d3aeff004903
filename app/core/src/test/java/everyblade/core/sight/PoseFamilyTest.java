package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Displaced;
import everyblade.core.angle.Turn;
import everyblade.core.sight.ToleranceCost.Way;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The poses that stand for a tolerance, against a scope tip moved and tilted in space. */
class PoseFamilyTest {

    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final Tolerance WITHIN = new Tolerance(2, 10);
    /** Which side of the picture each pose after the nominal one is tilted to in turn, degrees from its top. */
    private static final double[] TILTED = {0, 90, 180, 270};

    static Stream<Pose> poses() {
        return Stream.of(
                pose(30, 350, new Heading(1, 0, 0), new Heading(0, 0, 1)),
                pose(30, 20, new Heading(0.5, -0.7, 0.3), new Heading(0.2, 0.4, 1)),
                pose(1, 80, new Heading(0, 0.3, -1), new Heading(1, 0.1, 0)),
                pose(0, 10, new Heading(-1, 1, 1), new Heading(0, 1, 0)),
                pose(30, 0, new Heading(1, 0, 0), new Heading(1, 0, 0)),
                pose(30, 0, new Heading(0, 0, 1), new Heading(0, 0, 1)));
    }

    private static Pose pose(double r, double clock, Heading forward, Heading up) {
        return new Pose(12, r, Turn.ofDegrees(clock), forward, up, Turn.ofDegrees(60), 4, 60, 640);
    }

    /** In the frame of the engine: where it stands, where it looks and where its picture's top points. */
    private static double[] inSpace(Pose pose, boolean top) {
        Lens lens = new Lens(pose, 2);
        double[] at = new double[9];
        double clock = Math.toRadians(pose.clock().degrees());
        at[0] = pose.x();
        at[1] = pose.r() * Math.sin(clock);
        at[2] = pose.r() * Math.cos(clock);
        for (int axis = 0; axis < 3; axis++) {
            double[] seen =
                    lens.seen(at[0] + (axis == 0 ? 1 : 0), at[1] + (axis == 1 ? 1 : 0), at[2] + (axis == 2 ? 1 : 0));
            at[3 + axis] = seen[2];
            at[6 + axis] = top ? seen[1] : 0;
        }
        return at;
    }

    @ParameterizedTest
    @MethodSource("poses")
    void eachIsMovedAndTiltedStraightInSpace(Pose nominal) {
        List<Pose> family = PoseFamily.of(nominal, WITHIN);
        List<double[]> expected = new ArrayList<>();
        for (int axial : new int[] {0, 2, -2}) {
            for (int tangential : new int[] {0, 2, -2}) {
                for (int radial : new int[] {0, 2, -2}) {
                    double tilt = expected.isEmpty() ? 0 : 10;
                    double towards = expected.isEmpty() ? 0 : TILTED[(expected.size() - 1) % 4];
                    expected.add(inSpace(
                            Displaced.of(nominal, new double[] {axial, tangential, radial}, tilt, towards), false));
                }
            }
        }

        assertThat(family).hasSize(27);
        boolean anyTop = Math.abs(nominal.up().axial() * nominal.forward().axial()
                        + nominal.up().tangential() * nominal.forward().tangential()
                        + nominal.up().radial() * nominal.forward().radial())
                > 0.999;
        for (int i = 0; i < 27 && !anyTop; i++) {
            assertThat(inSpace(family.get(i), false)).as("pose %d", i).containsExactly(expected.get(i), ROUNDING);
        }
        assertThat(family).allSatisfy(pose -> {
            assertThat(pose.far()).isEqualTo(60);
            assertThat(pose.pixels()).isEqualTo(640);
        });
    }

    @ParameterizedTest
    @MethodSource("poses")
    void eachTiltIsSquareToThoseBesideItAndKeepsTheTopOfThePicture(Pose nominal) {
        List<Pose> tilted = PoseFamily.of(nominal, new Tolerance(0, 10)).subList(1, 5);
        double[] axis = inSpace(nominal, false);
        for (int i = 0; i < 4; i++) {
            double[] one = inSpace(tilted.get(i), false);
            double[] next = inSpace(tilted.get((i + 1) % 4), false);
            double[] opposite = inSpace(tilted.get((i + 2) % 4), false);
            double cosine = Math.cos(Math.toRadians(10));
            assertThat(dot(one, axis)).isCloseTo(cosine, ROUNDING);
            assertThat(dot(one, next)).isCloseTo(cosine * cosine, ROUNDING);
            assertThat(dot(one, opposite)).isCloseTo(2 * cosine * cosine - 1, ROUNDING);
        }
    }

    private static double dot(double[] a, double[] b) {
        return a[3] * b[3] + a[4] * b[4] + a[5] * b[5];
    }

    /** Tilted upward the top leans back by as much; tilted aside it stays. */
    @Test
    void theTopOfThePictureLeansWithIt() {
        Pose nominal = pose(30, 0, new Heading(1, 0, 0), new Heading(0, 0, 1));
        List<Pose> family = PoseFamily.of(nominal, new Tolerance(0, 10));
        double sine = Math.sin(Math.toRadians(10));

        assertThat(family.get(1).up().axial()).isCloseTo(-sine, ROUNDING);
        assertThat(family.get(2).up().axial()).isCloseTo(0, ROUNDING);
        assertThat(family.get(3).up().axial()).isCloseTo(sine, ROUNDING);
        assertThat(family.get(4).up().radial()).isCloseTo(1, ROUNDING);
    }

    @Test
    void anExactPoseStandsForItself() {
        Pose nominal = pose(30, 0, new Heading(1, 0, 0), new Heading(0, 0, 1));

        assertThat(PoseFamily.of(nominal, new Tolerance(0, 0))).containsExactly(nominal);
        assertThat(PoseFamily.of(nominal, new Tolerance(0, 1))).hasSize(PoseFamily.SIZE);
        assertThat(PoseFamily.of(nominal, new Tolerance(1, 0))).hasSize(PoseFamily.SIZE);
    }

    @Test
    void oneWayIsOffToBothSidesOrToAllFour() {
        Pose nominal = pose(30, 20, new Heading(0.5, -0.7, 0.3), new Heading(0.2, 0.4, 1));
        Map<Way, List<Pose>> ways = PoseFamily.oneWay(nominal, WITHIN);

        assertOff(ways.get(Way.AXIALLY), nominal, 0);
        assertOff(ways.get(Way.ROUND), nominal, 1);
        assertOff(ways.get(Way.OUTWARD), nominal, 2);
        assertThat(ways.get(Way.TILTED)).hasSize(4);
        for (int i = 0; i < 4; i++) {
            Pose tilted = Displaced.of(nominal, new double[3], 10, TILTED[i]);
            assertThat(inSpace(ways.get(Way.TILTED).get(i), false)).containsExactly(inSpace(tilted, false), ROUNDING);
        }
        assertThat(PoseFamily.oneWay(nominal, new Tolerance(0, 10))).containsOnlyKeys(Way.TILTED);
        assertThat(PoseFamily.oneWay(nominal, new Tolerance(2, 0)))
                .containsOnlyKeys(Way.AXIALLY, Way.ROUND, Way.OUTWARD);
    }

    private static void assertOff(List<Pose> poses, Pose nominal, int axis) {
        assertThat(poses).hasSize(2);
        for (int i = 0; i < 2; i++) {
            double[] by = new double[3];
            by[axis] = i == 0 ? 2 : -2;
            assertThat(inSpace(poses.get(i), true))
                    .containsExactly(inSpace(Displaced.of(nominal, by, 0, 0), true), ROUNDING);
        }
    }
}
