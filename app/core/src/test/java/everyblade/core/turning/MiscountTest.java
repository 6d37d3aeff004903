package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import org.junit.jupiter.api.Test;

/** What the difference of what was counted and what was seen means, on a row of 36 blades. */
class MiscountTest {

    private static final Row ROW = Engines.of(36, 2).rows().get("c1");

    private static Miscount of(double degrees, boolean outside, boolean lost, boolean unlogged) {
        return Miscount.of(new CountError(9, 2, "c1", 7, degrees, Uncertainty.of(3), 10, outside, lost, unlogged), ROW);
    }

    @Test
    void isToldWithTheEntryThatFoundItAndTheOneFromWhichWasCounted() {
        assertThat(of(-2, false, false, false))
                .isEqualTo(new Miscount.Within(
                        new Miscount.Identified(9, RowKind.ROTOR, 7, "c1"), new Miscount.Difference(2, true, 2)));
        assertThat(of(0, false, false, false))
                .isEqualTo(new Miscount.Within(
                        new Miscount.Identified(9, RowKind.ROTOR, 7, "c1"), new Miscount.Difference(0, false, 2)));
    }

    @Test
    void isOneOfFourKinds() {
        assertThat(of(4, true, false, false)).isInstanceOf(Miscount.TooLarge.class);
        assertThat(of(38, true, true, false))
                .isInstanceOfSatisfying(
                        Miscount.Lost.class, lost -> assertThat(lost.airfoils()).isEqualTo(4));
        assertThat(of(38, true, true, true)).isInstanceOf(Miscount.Unlogged.class);
    }
}
