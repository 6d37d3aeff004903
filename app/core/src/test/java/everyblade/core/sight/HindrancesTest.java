package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.Station.Heading;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which share of the turn each hindrance leaves, against angles that are tried one by one. */
class HindrancesTest {

    private static final int STEPS = 1_440;
    /** An arc's ends lie between two of the angles that are tried; there may be several arcs. */
    private static final double ROUGHLY = 4.0 / STEPS;

    private static final class Tried {
        private final Pose pose;
        private final Criteria criteria;
        private final Facets facets;

        Tried(Pose pose, Criteria criteria, Facets facets) {
            this.pose = pose;
            this.criteria = criteria;
            this.facets = facets;
        }

        /** What first hides a facet while the airfoil stands at an angle, radians; HIDDEN if nothing does but others. */
        private Hindrance first(int facet, double least, double clock) {
            double stand = Math.toRadians(pose.clock().degrees());
            double[] eye = Ray.turned(new double[] {pose.x(), 0, pose.r()}, stand);
            Heading heading = pose.forward();
            double[] forward =
                    Ray.turned(new double[] {heading.axial(), heading.tangential(), heading.radial()}, stand);
            double[] place = Ray.turned(axes(facet, false), clock);
            double[] normal = Ray.turned(axes(facet, true), clock);
            double[] line = Ray.minus(place, eye);
            double distance = Math.sqrt(Ray.dot(line, line));
            double facing = -Ray.dot(line, normal) / distance;
            if (Math.toDegrees(Math.acos(Ray.dot(line, forward) / distance))
                    > pose.cone().degrees() / 2) {
                return Hindrance.OUTSIDE_CONE;
            }
            if (distance < pose.near() || distance > pose.far()) {
                return Hindrance.OUT_OF_RANGE;
            }
            if (Math.toDegrees(Math.asin(facing)) < least) {
                return Hindrance.GRAZING;
            }
            double pixel = 2 * distance * Math.tan(Math.toRadians(pose.cone().degrees() / 2)) / pose.pixels();
            boolean coarse = criteria.detail().isPresent()
                    && 3 * pixel / facing > criteria.detail().getAsDouble();
            return coarse ? Hindrance.TOO_COARSE : Hindrance.HIDDEN;
        }

        private double[] axes(int facet, boolean normal) {
            double[] at = new double[3];
            for (int axis = 0; axis < 3; axis++) {
                at[axis] = normal ? facets.normal(facet, axis) : facets.centroid(facet, axis);
            }
            return at;
        }

        Map<Hindrance, Double> left(int facet, double least) {
            Map<Hindrance, Double> left = new EnumMap<>(Hindrance.class);
            for (int step = 0; step < STEPS; step++) {
                Hindrance first = first(facet, least, 2 * Math.PI * step / STEPS);
                for (Hindrance hindrance : Hindrance.values()) {
                    left.merge(hindrance, hindrance.compareTo(first) < 0 ? 1.0 / STEPS : 0, Double::sum);
                }
            }
            return left;
        }
    }

    @Test
    void eachLeavesTheShareOfAnglesAtWhichNeitherItNorOneBeforeItHides() {
        int partly = 0;
        for (int seed = 0; seed < 60; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh airfoil = rings.airfoil();
            Pose pose = rings.pose();
            Criteria criteria = rings.criteria();
            SightScene scene = SightScene.of(airfoil, 1, SmallRings.ZONING);
            SightArcs sight = Plates.sight(scene, pose, criteria);
            Tried tried = new Tried(pose, criteria, scene.facets());
            for (int facet = 0; facet < airfoil.faceCount(); facet++) {
                Turn least = criteria.grazing(SmallRings.ZONING, airfoil.zone(facet));
                Map<Hindrance, Double> left = tried.left(facet, least.degrees());
                for (Hindrance hindrance : Hindrance.values()) {
                    if (hindrance != Hindrance.HIDDEN) {
                        assertThat(sight.left(facet, hindrance))
                                .as("seed %d, facet %d, %s", seed, facet, hindrance)
                                .isCloseTo(left.get(hindrance), within(ROUGHLY));
                        partly += left.get(hindrance) > 0.01 && left.get(hindrance) < 0.99 ? 1 : 0;
                    }
                }
            }
        }
        assertThat(partly).isGreaterThan(500);
    }
}
