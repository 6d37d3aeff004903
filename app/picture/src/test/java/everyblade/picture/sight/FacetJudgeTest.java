package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Facets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FacetJudgeTest {

    private static final double DETAIL = 0.4;

    private final Vantage vantage = Vantages.of("larkspur-4", "in-c1", "low", Criteria.USUAL.withDetail(DETAIL));

    @Test
    void reasons_are_those_of_the_criteria_at_that_angle() {
        FacetJudge judge = new FacetJudge(vantage);
        SplittableRandom random = new SplittableRandom(3);
        Map<Hindrance, Integer> counts = new EnumMap<>(Hindrance.class);
        int inSight = 0;
        for (int i = 0; i < 20_000; i++) {
            int facet = random.nextInt(vantage.scene().facets().count());
            Turn clock = Turn.ofDegrees(random.nextInt(-25_000, 25_000) / 1000.0);
            Optional<Hindrance> why = judge.why(0, facet, clock);
            Optional<Hindrance> expected = criterion(facet, clock);
            if (why.equals(Optional.of(Hindrance.HIDDEN))) {
                counts.merge(Hindrance.HIDDEN, 1, Integer::sum);
            } else {
                assertThat(why).as("facet %d at %s", facet, clock).isEqualTo(expected);
                why.ifPresent(reason -> counts.merge(reason, 1, Integer::sum));
                inSight += why.isEmpty() ? 1 : 0;
            }
        }
        assertThat(counts).containsOnlyKeys(Hindrance.values());
        assertThat(counts.values()).allMatch(count -> count > 5);
        assertThat(inSight).isGreaterThan(100);
    }

    /** Whether a facet is turned away, or the first criterion that it fails, by its place and direction; empty if it meets all but hiding. */
    private Optional<Hindrance> criterion(int facet, Turn clock) {
        Facets facets = vantage.scene().facets();
        Pose pose = vantage.pose();
        // Seen from the airfoil at 12 o'clock it is the scope tip that is turned back.
        double stand = Math.toRadians(pose.clock().minus(clock).degrees());
        double sine = Math.sin(stand);
        double cosine = Math.cos(stand);
        double[] to = {
            facets.centroid(facet, 0) - pose.x(),
            facets.centroid(facet, 1) - pose.r() * sine,
            facets.centroid(facet, 2) - pose.r() * cosine
        };
        double[] ahead = {
            pose.forward().axial(),
            pose.forward().tangential() * cosine + pose.forward().radial() * sine,
            pose.forward().radial() * cosine - pose.forward().tangential() * sine
        };
        double distance = Math.sqrt(to[0] * to[0] + to[1] * to[1] + to[2] * to[2]);
        double along = (to[0] * ahead[0] + to[1] * ahead[1] + to[2] * ahead[2]) / distance;
        double facing =
                -(to[0] * facets.normal(facet, 0) + to[1] * facets.normal(facet, 1) + to[2] * facets.normal(facet, 2))
                        / distance;
        double cone = Math.toRadians(pose.cone().degrees());
        double pixel = 2 * distance * Math.tan(cone / 2) / pose.pixels();
        if (facing < 0) {
            return Optional.of(Hindrance.GRAZING);
        } else if (along < Math.cos(cone / 2)) {
            return Optional.of(Hindrance.OUTSIDE_CONE);
        } else if (distance < pose.near() || distance > pose.far()) {
            return Optional.of(Hindrance.OUT_OF_RANGE);
        } else if (facing < Math.sin(Math.toRadians(30))) {
            return Optional.of(Hindrance.GRAZING);
        }
        return 3 * pixel / facing > DETAIL ? Optional.of(Hindrance.TOO_COARSE) : Optional.empty();
    }
}
