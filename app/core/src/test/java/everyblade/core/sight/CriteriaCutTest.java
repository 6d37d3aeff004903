package everyblade.core.sight;

import static everyblade.core.sight.Plates.FACING;
import static everyblade.core.sight.Plates.UNDIVIDED;
import static everyblade.core.sight.Plates.cone;
import static everyblade.core.sight.Plates.facet;
import static everyblade.core.sight.Plates.only;
import static everyblade.core.sight.Plates.pose;
import static everyblade.core.sight.Plates.sight;
import static everyblade.core.sight.Plates.within;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.surface.Facets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where criteria alone allow a facet to be in sight, at their limits and where they allow it only for a moment. */
class CriteriaCutTest {

    /** A scope tip on the axis, 3 mm before a facet that faces it 4 mm from the axis: 5 mm away all the way round. */
    private final SightScene threeFourFive = SightScene.of(facet(0, 0, 4, -3, 0, -4), 1, UNDIVIDED);

    private final Pose five = pose(-3, 0, 0, 1, 0, 0);

    @Test
    void aDistanceExactlyAtALimitPasses() {
        assertThat(sight(threeFourFive, within(five, 5, 50), FACING).arcs(0).isFull())
                .isTrue();
        assertThat(sight(threeFourFive, within(five, 0, 5), FACING).arcs(0).isFull())
                .isTrue();
        assertThat(sight(threeFourFive, within(five, 5.00001, 50), FACING)
                        .arcs(0)
                        .isEmpty())
                .isTrue();
        assertThat(sight(threeFourFive, within(five, 0, 4.99999), FACING)
                        .arcs(0)
                        .isEmpty())
                .isTrue();
    }

    @Test
    void aLineExactlyAtTheEdgeOfTheConePasses() {
        SightScene scene = SightScene.of(facet(0, 0, 4, -1, 0, -1), 1, UNDIVIDED);

        assertThat(sight(scene, cone(pose(-4, 0, 0, 1, 0, 0), 90), FACING)
                        .arcs(0)
                        .isFull())
                .isTrue();
        assertThat(sight(scene, cone(pose(-4, 0, 0, 1, 0, 0), 89.9999), FACING)
                        .arcs(0)
                        .isEmpty())
                .isTrue();
    }

    @Test
    void aFootprintExactlyAsLargeAsTheDetailPasses() {
        double exact = 5 * Criteria.USUAL.finest(five);

        assertThat(sight(threeFourFive, five, Criteria.USUAL.withDetail(exact))
                        .arcs(0)
                        .isFull())
                .isTrue();
        assertThat(sight(threeFourFive, five, Criteria.USUAL.withDetail(0.999999 * exact))
                        .arcs(0)
                        .isEmpty())
                .isTrue();
    }

    /** A hub of 99.619 mm is seen from 100 mm as far as 5° to both sides, wherever that lies on the circle. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 4, 10, 15, 20, 27, 30, 195, 345})
    void aWindowOfAFewDegreesIsFoundWhereverItLies(double clock) {
        double hub = 100 * Math.cos(Math.toRadians(5));
        double y = Math.sin(Math.toRadians(clock));
        double z = Math.cos(Math.toRadians(clock));
        SightScene scene = SightScene.of(facet(0, hub * y, hub * z, 0, y, z), 1, UNDIVIDED);

        double[] arc = only(sight(scene, pose(0, 100, 0, 0, 0, -1), FACING).arcs(0));

        assertThat(Math.IEEEremainder(arc[0] + clock + 5, 360)).isCloseTo(0, within(1e-4));
        assertThat(arc[1] - arc[0]).isCloseTo(10, within(1e-4));
    }

    /** A cone of 4° from the axis, as wide as that on the circle. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 4, 10, 15, 20, 27, 30, 195, 345})
    void aNarrowConeIsFoundWhereverItLies(double clock) {
        double y = Math.sin(Math.toRadians(clock));
        double z = Math.cos(Math.toRadians(clock));
        SightScene scene = SightScene.of(facet(0, 10 * y, 10 * z, 0, -y, -z), 1, UNDIVIDED);

        double[] arc =
                only(sight(scene, cone(pose(0, 0, 0, 0, 0, 1), 4), FACING).arcs(0));

        assertThat(Math.IEEEremainder(arc[0] + clock + 2, 360)).isCloseTo(0, within(1e-4));
        assertThat(arc[1] - arc[0]).isCloseTo(4, within(1e-4));
    }

    /** All that lies near a short arc is found as on the whole circle. */
    @Test
    void nearAnArcItFindsWhatItFindsOnTheWholeCircle() {
        SplittableRandom random = new SplittableRandom(17);
        IntervalSet whole = new IntervalSet();
        IntervalSet near = new IntervalSet();
        double[] left = new double[Hindrance.values().length];
        int met = 0;
        for (int seed = 0; seed < 200; seed++) {
            SmallRings rings = new SmallRings(seed);
            Facets facets = Facets.of(rings.airfoil());
            Criteria criteria = rings.criteria();
            CriteriaCut cut = new CriteriaCut(rings.pose(), criteria);
            double grazing = CriteriaCut.share(criteria.grazing());
            for (int facet = 0; facet < facets.count(); facet++) {
                double from = 2 * Math.PI * random.nextDouble();
                double to = from + 0.5 * random.nextDouble();
                near.set(7, 8);
                cut.find(facets, facet, grazing, whole, random.nextBoolean() ? left : null);
                cut.findNear(from, to, facets, facet, grazing, near);
                for (double at = from; at <= to; at += 0.01) {
                    double on = at % (2 * Math.PI);
                    if (Math.abs(on - Math.rint(on / (Math.PI / 6)) * Math.PI / 6) > 1e-9) {
                        assertThat(holds(near, on))
                                .as("seed %d, facet %d at %s", seed, facet, on)
                                .isEqualTo(holds(whole, on));
                        met += holds(whole, on) ? 1 : 0;
                    }
                }
                assertThat(near.length()).as("of at most two of twelve pieces").isLessThan(Math.PI / 3 + 1e-9);
            }
        }
        assertThat(met).isGreaterThan(1_000);
    }

    private static boolean holds(IntervalSet open, double at) {
        for (int i = 0; i < open.count(); i++) {
            if (open.from(i) <= at && at <= open.to(i)) {
                return true;
            }
        }
        return false;
    }
}
