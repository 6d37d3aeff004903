package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of positions, runs and sets in one line each, tick by tick. */
class SmallRulesTest {

    @ParameterizedTest
    @CsvSource({"0, 3, 3", "3, 0, -3", "9, 1, 2", "1, 9, -2", "0, 5, 5", "5, 0, 5", "0, 6, -4", "-7, 8, 5"})
    void fromOnePositionToAnotherGoesTheShorterWayAndHalfATurnOn(long from, long to, long apart) {
        assertThat(new Circle(10).apart(from, to)).isEqualTo(apart);
    }

    @Test
    void aSetWithoutItsShorterArcsKeepsThoseOfExactlyTheLeast() {
        Circle circle = new Circle(20);
        ArcSet set = ArcSet.of(circle, List.of(new Arc(circle, 2, 3), new Arc(circle, 8, 4), new Arc(circle, 18, 3)));

        assertThat(set.withoutShorter(3)).isEqualTo(set);
        assertThat(set.withoutShorter(4)).isEqualTo(ArcSet.of(new Arc(circle, 8, 4)));
        assertThat(set.withoutShorter(5)).isEqualTo(ArcSet.empty(circle));
    }

    @Test
    void aSetThatHasNoShorterArcsIsItself() {
        Circle circle = new Circle(20);
        ArcSet set = ArcSet.of(circle, List.of(new Arc(circle, 2, 3), new Arc(circle, 8, 4)));

        assertThat(set.withoutShorter(3)).isSameAs(set);
        assertThat(set.withoutShorter(4)).isEqualTo(ArcSet.of(new Arc(circle, 8, 4)));
        assertThat(ArcSet.empty(circle).withoutShorter(1)).isEqualTo(ArcSet.empty(circle));
    }

    /** Three ticks over the seam lie in two runs of the set, of two ticks and of one. */
    @Test
    void anArcOverTheSeamIsAsLongAsBothItsPieces() {
        Circle circle = new Circle(20);
        ArcSet set = ArcSet.of(new Arc(circle, 18, 3));

        assertThat(set.withoutShorter(3)).isEqualTo(set);
        assertThat(set.withoutShorter(2)).isEqualTo(set);
        assertThat(set.withoutShorter(4).isEmpty()).isTrue();
    }

    @Test
    void aClosedRangeIsNeverLongerThanATurn() {
        Circle circle = new Circle(10);
        assertThat(Arc.closed(circle, 0, 8).length()).isEqualTo(9);
        assertThat(Arc.closed(circle, 0, 9).length()).isEqualTo(10);
        assertThat(Arc.closed(circle, 0, 10).length()).isEqualTo(10);
        assertThat(Arc.closed(circle, 0, 11).length()).isEqualTo(10);
        assertThat(Arc.closed(circle, 0, 35).isFull()).isTrue();
    }

    /** A thousandth of a tick is what ten decimals may be off; more is another place. */
    @Test
    void aNumberReadIsATickIfItIsAThousandthOffAndNotMore() {
        Circle circle = new Circle(10);
        assertThat(ArcText.parse(circle, "[2.001,4)")).hasToString("[2,4)");
        assertThatIllegalArgumentException().isThrownBy(() -> ArcText.parse(circle, "[2.0011,4)"));
    }

    @Test
    void aNumberReadLiesWithinTwoTurns() {
        Circle circle = new Circle(10);
        assertThat(ArcText.parse(circle, "[-20,-19)")).hasToString("[0,1)");
        assertThat(ArcText.parse(circle, "[19,20)")).hasToString("[9,10)");
        assertThatIllegalArgumentException().isThrownBy(() -> ArcText.parse(circle, "[-21,-20)"));
    }

    @Test
    void setsScatterInATableOfHashes() {
        Circle circle = new Circle(60);
        assertThat(IntStream.range(0, 50)
                        .mapToObj(start -> ArcSet.of(new Arc(circle, start, 7)).hashCode())
                        .distinct())
                .hasSizeGreaterThan(40);
    }
}
