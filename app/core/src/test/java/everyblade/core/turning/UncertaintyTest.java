package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UncertaintyTest {

    /** ± 3° that add in quadrature, and 0.5° that only ever fall short. */
    private static final Uncertainty SHORT = new Uncertainty(9, 0.5, 0);

    @Test
    void reachesFurtherOnTheSideOnWhichItMayFallShort() {
        assertThat(SHORT.below()).isEqualTo(3.5);
        assertThat(SHORT.above()).isEqualTo(3);
        assertThat(new Uncertainty(9, 0, 2).above()).isEqualTo(5);
    }

    @Test
    void toldFromTheOtherEndReachesAsFarToTheOtherSide() {
        assertThat(SHORT.reversed()).isEqualTo(new Uncertainty(9, 0, 0.5));
    }

    @Test
    void isTighterIfItLeavesLessRoomOnBothSidesTogether() {
        assertThat(Uncertainty.of(3).tighterThan(SHORT)).isTrue();
        assertThat(SHORT.tighterThan(Uncertainty.of(3))).isFalse();
        assertThat(SHORT.tighterThan(SHORT)).isFalse();
        assertThat(Uncertainty.of(3).tighterThan(new Uncertainty(4, 0, 2.5))).isTrue();
        assertThat(new Uncertainty(4, 1.9, 0).tighterThan(Uncertainty.of(3))).isTrue();
        assertThat(new Uncertainty(4, 0, 1.9).tighterThan(Uncertainty.of(3))).isTrue();
        assertThat(new Uncertainty(4, 1.1, 1.1).tighterThan(Uncertainty.of(3))).isFalse();
    }
}
