package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.entry.Settings;
import everyblade.core.move.Sweeping.Stretch;
import everyblade.spi.Direction;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Places are degrees; an airfoil is seen wherever within a degree of its place it passes, if that is watched. */
class SweepingTest {

    private static final Prices PRICES = Prices.of(Settings.USUAL);
    private static final Set<Direction> BOTH = EnumSet.allOf(Direction.class);

    private static VisibilityWindow at(double degrees) {
        return new VisibilityWindow(degrees + 1, degrees - 1);
    }

    private static double begin(Sweeping sweeping, double here, boolean rising) {
        return sweeping.begin(here, rising, (from, to) -> RotationProblem.way(from, to, BOTH));
    }

    /** Seventeen of twenty airfoils 18° apart, three beside each other left out, wherever that is on the circle. */
    @ParameterizedTest
    @ValueSource(ints = {0, 18, 90, 306, 324, 342, 7})
    void itBeginsAfterWhereMostIsLeftOut(int offset) {
        List<VisibilityWindow> windows = IntStream.range(0, 17)
                .mapToObj(n -> at((18 * n + offset) % 360))
                .toList();
        Sweeping best = Sweeping.of(windows, PRICES).get(0);
        assertThat(best.length()).isCloseTo(16 * 18 - 2, within(1e-9));
        assertThat(TypedDegrees.wrapped(best.from())).isCloseTo((offset + 1) % 360, within(1e-9));
        assertThat(best.stretches()).hasSize(1);
        assertThat(best.minutes(PRICES)).isCloseTo(0.25 + 4 * 286 / 360.0, within(1e-9));
    }

    /** Of twelve or fewer every one may come first, of more those after the twelve widest gaps. */
    @Test
    void eachMayComeFirstWhereTheyAreFew() {
        List<VisibilityWindow> few =
                IntStream.range(0, 12).mapToObj(n -> at(30 * n)).toList();
        assertThat(Sweeping.of(few, PRICES))
                .extracting(sweeping -> TypedDegrees.wrapped(sweeping.from()))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 12).mapToObj(n -> 30.0 * n + 1).toList());
        List<VisibilityWindow> many = IntStream.range(0, 24)
                .mapToObj(n -> at(15 * n + (n % 2 == 0 ? 0 : -2)))
                .toList();
        assertThat(Sweeping.of(many, PRICES))
                .extracting(sweeping -> TypedDegrees.wrapped(sweeping.from()))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 12).mapToObj(n -> 30.0 * n + 1).toList());
    }

    @Test
    void whatNeedNotBeWatchedIsPassedUnwatched() {
        Sweeping best = Sweeping.of(List.of(at(10), at(20), at(150)), PRICES).get(0);
        assertThat(best.stretches()).containsExactly(new Stretch(11, 19), new Stretch(149, 149));
        assertThat(best.minutes(PRICES)).isCloseTo(0.25 + 4 * 8 / 360.0 + 0.25 + 130 / 360.0 + 0.25, within(1e-9));
        assertThat(best.length()).isEqualTo(149 - 11);
    }

    /** From 200° by way of 10° and 20° to the end of the circle and on it is 180°, the other ways 190° and more. */
    @Test
    void theQuickestComesFirst() {
        List<Sweeping> all = Sweeping.of(List.of(at(10), at(20), at(200)), PRICES);
        assertThat(all).hasSize(3);
        assertThat(all.get(0).from()).isEqualTo(201);
        assertThat(all).isSortedAccordingTo((a, b) -> Double.compare(a.minutes(PRICES), b.minutes(PRICES)));
    }

    /** The first look may be from 9° to 11°, the last from 95° to 105°; going up each is taken as soon as it will do. */
    @Test
    void looksAtBothEndsTellHowFarOffTheyMayBe() {
        Sweeping best = Sweeping.of(List.of(at(10), new VisibilityWindow(105, 95)), PRICES)
                .get(0);
        assertThat(best).isEqualTo(new Sweeping(List.of(new Stretch(11, 11), new Stretch(95, 95)), 2, 10));
    }

    @Test
    void aStretchAtAnEndMayNotBeOff() {
        Sweeping best =
                Sweeping.of(List.of(at(10), at(14), at(150), at(154)), PRICES).get(0);
        assertThat(best).isEqualTo(new Sweeping(List.of(new Stretch(11, 13), new Stretch(151, 153)), 0, 0));
    }

    /** Of one that must be passed from 100° to 130°, and one within, there is but one stretch. */
    @Test
    void whatOverlapsIsWatchedInOne() {
        Sweeping best = Sweeping.of(List.of(new VisibilityWindow(100, 130), at(110), at(125)), PRICES)
                .get(0);
        assertThat(best.stretches()).containsExactly(new Stretch(100, 130));
    }

    /** A look at rest serves from 6° to 10°. */
    @ParameterizedTest
    @CsvSource({"8, 8", "6, 6", "10, 10", "5, 6", "12, 10", "368, 8", "190, 6", "187, 10", "189, 6", "-172, 10"})
    void aLookIsWhereItIsNearest(double here, double there) {
        Sweeping look = new Sweeping(List.of(new Stretch(10, 10)), 4, 0);
        assertThat(begin(look, here, true)).isEqualTo(there);
        assertThat(begin(look, here, false)).isEqualTo(there);
        assertThat(look.longer(there, true)).isZero();
    }

    @Test
    void whoBeginsAtAFirstLookGoesAsMuchFurther() {
        Sweeping looks = new Sweeping(List.of(new Stretch(10, 10), new Stretch(50, 50)), 4, 3);
        assertThat(begin(looks, 8, true)).isEqualTo(8);
        assertThat(looks.longer(8, true)).isEqualTo(2);
        assertThat(begin(looks, 0, true)).isEqualTo(6);
        assertThat(begin(looks, 52, false)).isEqualTo(52);
        assertThat(looks.longer(52, false)).isEqualTo(2);
        assertThat(begin(looks, 90, false)).isEqualTo(53);
        assertThat(begin(looks, 40, false)).isEqualTo(50);
    }

    @Test
    void aStretchIsBegunAtItsEnd() {
        Sweeping stretch = new Sweeping(List.of(new Stretch(10, 40)), 0, 0);
        assertThat(begin(stretch, 100, true)).isEqualTo(10);
        Sweeping two = new Sweeping(List.of(new Stretch(10, 40), new Stretch(60, 80)), 0, 0);
        assertThat(begin(two, 0, false)).isEqualTo(80);
    }
}
