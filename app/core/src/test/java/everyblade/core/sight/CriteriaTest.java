package everyblade.core.sight;

import static everyblade.core.sight.Plates.UNDIVIDED;
import static everyblade.core.sight.Plates.facet;
import static everyblade.core.sight.Plates.pose;
import static everyblade.core.sight.Plates.sight;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Settings;
import everyblade.core.entry.Zoning;
import everyblade.spi.ChordBand;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
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

    private static Criteria criteria(
            double grazing, double banded, OptionalDouble detail, double pixels, double proof) {
        return new Criteria(
                Turn.ofDegrees(grazing), Map.of(ChordBand.LEADING, Turn.ofDegrees(banded)), detail, pixels, proof);
    }

    @Test
    void anglesGoFromGrazingToSquareOn() {
        for (double angle : new double[] {-0.1, 90.1}) {
            assertThatThrownBy(() -> criteria(angle, 30, OptionalDouble.empty(), 3, 0))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> criteria(30, angle, OptionalDouble.empty(), 3, 0))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(criteria(90, 0, OptionalDouble.empty(), 3, 0).grazing()).isEqualTo(Turn.ofDegrees(90));
        assertThat(criteria(0, 90, OptionalDouble.empty(), 3, 0).grazing()).isEqualTo(Turn.ZERO);
    }

    @Test
    void aDetailHasASizeAndPixelsAcrossItAndALineOnATargetAWidth() {
        assertThatThrownBy(() -> criteria(30, 30, OptionalDouble.of(0), 3, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> criteria(30, 30, OptionalDouble.empty(), 0.9, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> criteria(30, 30, OptionalDouble.empty(), Double.NaN, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> criteria(30, 30, OptionalDouble.empty(), 3, -0.1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(criteria(30, 30, OptionalDouble.of(0.1), 1, 0).pixels()).isEqualTo(1);
    }

    /** Chord bands follow one another within each of the others. */
    @Test
    void aZoneHasTheAngleOfItsChordBandOrElseTheOneOfAll() {
        Criteria edges = criteria(30, 5, OptionalDouble.empty(), 3, 0);
        Zoning zoning = new Zoning(List.of("root", "tip"), List.of(), List.of("leading", "middle", "trailing"));

        assertThat(List.of(0, 1, 2, 3, 4, 5))
                .extracting(zone -> edges.grazing(zoning, zone).degrees())
                .containsExactly(5.0, 30.0, 30.0, 5.0, 30.0, 30.0);
        assertThat(edges.grazing(UNDIVIDED, 0)).isEqualTo(Turn.ofDegrees(30));
    }

    /** The most slanted surface that is in sight is one of the band that may be looked at at 5°. */
    @Test
    void theMostSlantedSurfaceIsThatOfTheLeastAngle() {
        Pose pose = Plates.cone(Plates.within(pose(0, 20, 0, 0, 0, -1), 4, 60), 90);
        double square = 60 * 3 * 2.0 / 640;
        Criteria edges = criteria(30, 5, OptionalDouble.empty(), 3, 0);

        assertThat(edges.withDetail(1.001 * square / Math.sin(Math.toRadians(5)))
                        .alwaysFine(pose))
                .isTrue();
        assertThat(edges.withDetail(0.999 * square / Math.sin(Math.toRadians(5)))
                        .alwaysFine(pose))
                .isFalse();
    }

    @Test
    void whatIsTakenOutOrPutInLeavesTheRest() {
        Criteria all = criteria(40, 5, OptionalDouble.of(0.3), 4, 0.01);

        assertThat(all.withoutDetail()).isEqualTo(criteria(40, 5, OptionalDouble.empty(), 4, 0.01));
        assertThat(all.withDetail(2)).isEqualTo(criteria(40, 5, OptionalDouble.of(2), 4, 0.01));
        assertThat(all.withProof(0.2)).isEqualTo(criteria(40, 5, OptionalDouble.of(0.3), 4, 0.2));
        assertThat(Criteria.USUAL.pixels()).isEqualTo(3);
    }

    @Test
    void isWrittenTheSameOnlyIfItIsTheSame() {
        List<Criteria> different = List.of(
                criteria(30, 5, OptionalDouble.empty(), 3, 0),
                criteria(31, 5, OptionalDouble.empty(), 3, 0),
                criteria(30, 6, OptionalDouble.empty(), 3, 0),
                criteria(30, 5, OptionalDouble.of(1), 3, 0),
                criteria(30, 5, OptionalDouble.empty(), 4, 0),
                criteria(30, 5, OptionalDouble.empty(), 3, 1));

        assertThat(different).extracting(Criteria::written).doesNotHaveDuplicates();
        assertThat(criteria(30, 5, OptionalDouble.empty(), 3, 0).written())
                .isEqualTo(different.get(0).written());
    }

    @Test
    void comesFromTheSettingsOfAJob() {
        Criteria set = Criteria.of(Settings.of(Map.of(
                "grazing",
                new BigDecimal(25),
                "grazing-leading",
                BigDecimal.TEN,
                "detail",
                new BigDecimal("0.4"),
                "pixels",
                new BigDecimal(5))));
        Turn angle = Turn.ofDegrees(25);

        assertThat(set)
                .isEqualTo(new Criteria(
                        angle,
                        Map.of(
                                ChordBand.LEADING,
                                Turn.ofDegrees(10),
                                ChordBand.MIDDLE,
                                angle,
                                ChordBand.TRAILING,
                                angle),
                        OptionalDouble.of(0.4),
                        5,
                        0));
        assertThat(Criteria.of(Settings.USUAL).detail()).isEmpty();
    }

    /** Just so fine is left to the computation. */
    @Test
    void aViewThatIsOnlyJustFineIsNotAlwaysSo() {
        Pose pose = Plates.cone(Plates.within(pose(0, 20, 0, 0, 0, -1), 4, 60), 90);
        double exact = 60 * Criteria.USUAL.finest(pose) / 0.5;

        assertThat(Criteria.USUAL.withDetail(exact).alwaysFine(pose)).isFalse();
        assertThat(Criteria.USUAL.withDetail(1.00001 * exact).alwaysFine(pose)).isTrue();
    }
}
