package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Settings;
import everyblade.core.move.VisibilityWindow.Slack;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Degrees as they are typed, what a move costs, and where an airfoil must pass, number by number. */
class SmallFiguresTest {

    private static final Prices PRICES = new Prices(6, 2, 0.5, 1, 4, 10, 3);

    /** Nobody types tenths where nothing is known to a degree, nor finer than it must be. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0.00001", "0.1, 0, 0.1", "0, 0.9, 0.1", "0.6, 0.3, 0.1", "0.5, 0.5, 1", "0, 4, 1"})
    void theGridIsAsCoarseAsTheDoubtAllows(double below, double above, double grid) {
        assertThat(TypedDegrees.grid(new Slack(below, above))).isEqualTo(grid);
    }

    @ParameterizedTest
    @CsvSource({
        "12.34, 0.1, 12.3, 12.3, 12.4",
        "12.36, 0.1, 12.4, 12.3, 12.4",
        "12.3, 0.1, 12.3, 12.3, 12.3",
        "-0.04, 0.1, 0, -0.1, 0",
        "7, 1, 7, 7, 7",
        "7.0000001, 1, 7, 7, 7",
        "6.9999999, 1, 7, 7, 7",
        "7.5, 1, 8, 7, 8"
    })
    void degreesAreRoundedToTheGridButForASlipOfArithmetic(
            double degrees, double grid, double nearest, double below, double above) {
        assertThat(TypedDegrees.nearest(degrees, grid)).isEqualTo(nearest, within(1e-9));
        assertThat(TypedDegrees.below(degrees, grid)).isEqualTo(below, within(1e-9));
        assertThat(TypedDegrees.above(degrees, grid)).isEqualTo(above, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "10, 10", "-10, 350", "370, 10", "360, 0", "-360, 0", "359.9999999999, 0", "725, 5"})
    void aPositionIsWithinATurn(double degrees, double wrapped) {
        assertThat(TypedDegrees.wrapped(degrees)).isEqualTo(wrapped, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1200, 1200", "0, 0", "0.5, 0.5", "1.234567, 1.23457", "-30, -30"})
    void aNumberIsTypedWithoutTrailingZerosOrAnExponent(double degrees, String typed) {
        assertThat(TypedDegrees.number(degrees)).hasToString(typed);
        assertThat(TypedDegrees.turn(degrees)).isEqualTo(Turn.ofDegrees(new BigDecimal(typed)));
    }

    @Test
    void whereAnyPlaceWillDoTheLaterEndIsReachedAndTheEarlierIsNotPassed() {
        VisibilityWindow any = VisibilityWindow.anywhereIn(Turn.ofDegrees(10), Turn.ofDegrees(25));
        assertThat(any).isEqualTo(new VisibilityWindow(25, 10));
        VisibilityWindow all = VisibilityWindow.allOf(Turn.ofDegrees(10), Turn.ofDegrees(25));
        assertThat(all).isEqualTo(new VisibilityWindow(10, 35));
        assertThat(all.moved(-4)).isEqualTo(new VisibilityWindow(6, 31));
    }

    @Test
    void whoeverMayBeOffBeginsSoMuchEarlierAndGoesOnSoMuchFurther() {
        VisibilityWindow window = new VisibilityWindow(10, 35);
        Slack slack = new Slack(1, 3);
        assertThat(window.safe(slack)).isEqualTo(new VisibilityWindow(7, 36));
        assertThat(window.safe(slack).before(slack)).isEqualTo(window);
        assertThat(slack.or(new Slack(2, 1))).isEqualTo(new Slack(2, 3));
        assertThat(Slack.NONE.none()).isTrue();
        assertThat(new Slack(0, 1).none()).isFalse();
        assertThat(new Slack(1, 0).none()).isFalse();
    }

    @Test
    void aMoveCostsItsBeginningAndHowFarItGoesWhicheverWay() {
        assertThat(PRICES.watching(180)).isEqualTo(3.5);
        assertThat(PRICES.watching(-90)).isEqualTo(2);
        assertThat(PRICES.watching(0)).isEqualTo(0.5);
        assertThat(PRICES.turning(180)).isEqualTo(1.5);
        assertThat(PRICES.turning(-90)).isEqualTo(1);
        assertThat(PRICES.turning(0)).as("no move at all").isZero();
        assertThat(PRICES.searching()).isEqualTo(PRICES.turning(180));
    }

    @Test
    void aJobSetsItsOwnPricesAndKeepsTheUsualOnesOtherwise() {
        Prices usual = Prices.of(Settings.USUAL);
        assertThat(Prices.of(Settings.of(Map.of("minutes-port", new BigDecimal("42")))))
                .isEqualTo(new Prices(
                        usual.watched(),
                        usual.unwatched(),
                        usual.move(),
                        usual.station(),
                        usual.view(),
                        42,
                        usual.identification()));
        assertThat(usual.watched()).isGreaterThan(usual.unwatched());
    }

    @ParameterizedTest
    @CsvSource({"5, 0.1, 5", "4.95, 0.1, 5", "5.11, 0.1, 0", "-20, 0, -20", "20, 0, 20", "21, 0, 0", "-21, 0, 0"})
    void airfoilsAreCountedIfTheyAreWholeAndFew(double way, double within, int whole) {
        assertThat(ByEye.whole(way, within)).isEqualTo(whole);
    }

    @Test
    void stepsAreHundredThousandthsOfADegreeRoundedDown() {
        assertThat(Steps.floor(Turn.ofDegrees(new BigDecimal("1.23456")))).isEqualTo(123_456);
        assertThat(Steps.floor(Turn.ofDegrees(new BigDecimal("1.234569")))).isEqualTo(123_456);
        assertThat(Steps.floor(Turn.ofDegrees(new BigDecimal("-0.000001")))).isEqualTo(-1);
        assertThat(Steps.turn(123_456)).isEqualTo(Turn.ofDegrees(new BigDecimal("1.23456")));
        assertThat(Steps.degrees(Steps.TURN)).hasToString("360");
        assertThat(Steps.degrees(150_000)).hasToString("1.5");
        assertThat(Steps.degrees(1)).hasToString("0.00001");
    }
}
