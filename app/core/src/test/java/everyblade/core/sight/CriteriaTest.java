package everyblade.core.sight;

import static everyblade.core.sight.Plates.UNDIVIDED;
import static everyblade.core.sight.Plates.facet;
import static everyblade.core.sight.Plates.pose;
import static everyblade.core.sight.Plates.sight;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class CriteriaTest {

    /** At 60 mm 640 pixels of a cone of 90° lie 0.1875 mm apart; three of them, seen at 30°, are 1.125 mm. */
    @Test
    void aViewIsAlwaysFineIfItsFarthestAndMostSlantedPointIs() {
        Pose pose = Plates.cone(Plates.within(pose(0, 20, 0, 0, 0, -1), 4, 60), 90);
        assertThat(Criteria.USUAL.withDetail(1.126).alwaysFine(pose)).isTrue();
        assertThat(Criteria.USUAL.withDetail(1.124).alwaysFine(pose)).isFalse();
        assertThat(Criteria.USUAL.alwaysFine(pose)).isTrue();
        assertThat(Criteria.USUAL.withDetail(1.126).withProof(0.02).alwaysFine(pose))
                .as("a line of 1.2 mm was the finest seen at 60 mm")
                .isFalse();
    }

    @Test
    void theDetailHidesNothingWhereAViewIsAlwaysFine() {
        Random random = new Random(20261130);
        int fine = 0;
        for (int i = 0; i < 300; i++) {
            Pose pose = Plates.cone(
                    Plates.within(pose(random.nextDouble() * 30, 10 + random.nextDouble() * 50, 0, 0, 0, -1), 0, 60),
                    60 + random.nextDouble() * 60);
            SightScene scene = SightScene.of(
                    facet(random.nextDouble() * 30, 0, 10, random.nextDouble() - 0.5, random.nextDouble() - 0.5, 1),
                    1,
                    UNDIVIDED);
            Criteria criteria = Criteria.USUAL.withDetail(0.3 + 2 * random.nextDouble());
            if (criteria.alwaysFine(pose)) {
                assertThat(sight(scene, pose, criteria).arcs(0))
                        .isEqualTo(sight(scene, pose, Criteria.USUAL).arcs(0));
                fine++;
            }
        }
        assertThat(fine).isBetween(50, 250);
    }
}
