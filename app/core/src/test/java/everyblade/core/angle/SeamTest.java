package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Where the circle closes, and where nothing and everything could be confused. */
class SeamTest {

    private static final Circle CIRCLE = Circle.STANDARD;
    private static final long TURN = CIRCLE.ticks();

    private static ArcSet set(String text) {
        return ArcText.parse(CIRCLE, text);
    }

    @Nested
    class NothingAndEverything {

        @Test
        void anArcOfNoLengthIsNotAFullCircle() {
            Arc nothing = new Arc(CIRCLE, 123, 0);
            assertThat(nothing.isEmpty()).isTrue();
            assertThat(nothing.isFull()).isFalse();
            assertThat(nothing.contains(123)).isFalse();
            assertThat(ArcSet.of(nothing)).isEqualTo(ArcSet.empty(CIRCLE));
            assertThat(ArcSet.of(nothing).grow(TURN).isEmpty()).isTrue();
        }

        @Test
        void anArcOfAFullTurnIsNotEmptyWhereverItStarts() {
            Arc everything = new Arc(CIRCLE, 123, TURN);
            assertThat(everything.isFull()).isTrue();
            assertThat(everything).isEqualTo(new Arc(CIRCLE, 0, TURN));
            assertThat(everything.contains(122)).isTrue();
            assertThat(ArcSet.of(everything)).isEqualTo(ArcSet.full(CIRCLE));
            assertThat(ArcSet.full(CIRCLE).shrink(TURN).isFull()).isTrue();
        }

        @Test
        void emptyArcsAreOneArc() {
            assertThat(new Arc(CIRCLE, 5, 0)).isEqualTo(new Arc(CIRCLE, 900, 0));
        }

        @Test
        void allButOneTickIsNeitherFullNorLessThanThat() {
            ArcSet almost = ArcSet.of(new Arc(CIRCLE, 1, TURN - 1));
            assertThat(almost.isFull()).isFalse();
            assertThat(almost.complement().measure()).isEqualTo(1);
            assertThat(almost.grow(1).isFull()).isTrue();
            assertThat(almost.union(ArcSet.of(new Arc(CIRCLE, 0, 1)))).isEqualTo(ArcSet.full(CIRCLE));
        }

        @Test
        void anArcIsAsLongAsItsPartsOnBothSides() {
            ArcSet over = ArcSet.of(new Arc(CIRCLE, TURN - 3, 5), new Arc(CIRCLE, 100, 4));
            assertThat(over.withoutShorter(5)).isEqualTo(ArcSet.of(new Arc(CIRCLE, TURN - 3, 5)));
            assertThat(over.withoutShorter(4)).isEqualTo(over);
            assertThat(over.withoutShorter(6).isEmpty()).isTrue();
        }

        @Test
        void anArcIsFromNothingToATurnLong() {
            assertThatThrownBy(() -> new Arc(CIRCLE, 0, -1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Arc(CIRCLE, 0, TURN + 1)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Nested
    class OverTheSeam {

        @Test
        void zeroTo15With30To360LeavesOnlyTheGapBetweenThem() {
            ArcSet union = set("[0,15)").union(set("[30,360)"));
            assertThat(union.arcs())
                    .containsExactly(new Arc(CIRCLE, 30 * Circle.TICKS_PER_DEGREE, 345 * Circle.TICKS_PER_DEGREE));
            assertThat(union.complement()).isEqualTo(set("[15,30)"));
            assertThat(union).hasToString("[30,375)");
        }

        @Test
        void arcsThatTouchAtTheSeamAreOneArc() {
            assertThat(set("[350,360) [0,10)")).isEqualTo(set("[350,370)"));
            assertThat(set("[350,360)").union(set("[0,10)")).arcs()).hasSize(1);
        }

        @Test
        void anArcThatEndsAtTheSeamDoesNotHoldTheFirstTick() {
            assertThat(set("[350,360)").contains(0)).isFalse();
            assertThat(set("[350,360)").contains(-1)).isTrue();
            assertThat(set("[350,360)").meets(new Arc(CIRCLE, 0, 5))).isFalse();
        }

        @Test
        void growingReachesOverTheSeamAndShrinkingComesBack() {
            assertThat(set("[0,10)").grow(5 * Circle.TICKS_PER_DEGREE)).isEqualTo(set("[355,375)"));
            assertThat(set("[355,375)").shrink(5 * Circle.TICKS_PER_DEGREE)).isEqualTo(set("[0,10)"));
        }

        @Test
        void growingOverAGapFromBothSidesClosesItForGoodAndShrinkingDoesNotOpenItAgain() {
            ArcSet gap = set("[2,358)");
            ArcSet closed = gap.grow(2 * Circle.TICKS_PER_DEGREE);
            assertThat(closed.isFull()).isTrue();
            assertThat(closed.shrink(2 * Circle.TICKS_PER_DEGREE).isFull()).isTrue();
        }
    }

    @Nested
    class ClosedRanges {

        @Test
        void aClosedRangeHoldsBothItsEnds() {
            Arc range = Arc.closed(CIRCLE, -5, 5);
            assertThat(range).isEqualTo(new Arc(CIRCLE, TURN - 5, 11));
            assertThat(range.contains(-5)).isTrue();
            assertThat(range.contains(5)).isTrue();
            assertThat(range.contains(6)).isFalse();
        }

        @Test
        void aClosedRangeOfOneTickIsThatTick() {
            assertThat(Arc.closed(CIRCLE, 7, 7)).isEqualTo(new Arc(CIRCLE, 7, 1));
        }

        @Test
        void aClosedRangeIsFullFromATurnLessOneTickOn() {
            assertThat(Arc.closed(CIRCLE, 3, 3 + TURN - 2).isFull()).isFalse();
            assertThat(Arc.closed(CIRCLE, 3, 3 + TURN - 1).isFull()).isTrue();
            assertThat(Arc.closed(CIRCLE, -5 * TURN, 5 * TURN).isFull()).isTrue();
        }

        @Test
        void aRangeThatEndsBeforeItBeginsIsRefused() {
            assertThatThrownBy(() -> Arc.closed(CIRCLE, 5, 4)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Nested
    class DifferentCircles {

        private final Circle small = new Circle(10);

        @Test
        void doNotMix() {
            ArcSet standard = ArcSet.full(CIRCLE);
            ArcSet other = ArcSet.full(small);
            assertThatThrownBy(() -> standard.union(other)).hasMessageContaining("different circles");
            assertThatThrownBy(() -> standard.meets(new Arc(small, 0, 1))).hasMessageContaining("different circles");
            assertThatThrownBy(() -> ArcSet.of(new Arc(CIRCLE, 0, 1), new Arc(small, 0, 1)))
                    .hasMessageContaining("different circles");
            assertThatThrownBy(() -> new Arc(CIRCLE, 0, 1).meets(new Arc(small, 0, 1)))
                    .hasMessageContaining("different circles");
        }

        @Test
        void areNotEqualEvenIfBothAreEmpty() {
            assertThat(ArcSet.empty(CIRCLE)).isNotEqualTo(ArcSet.empty(small));
        }

        @Test
        void aCircleHasAtLeastOneTickAndLeavesRoomToAddTwoTurns() {
            assertThatThrownBy(() -> new Circle(0)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Circle(Long.MAX_VALUE / 2)).isInstanceOf(IllegalArgumentException.class);
            Circle largest = new Circle(Long.MAX_VALUE / 4);
            ArcSet half = ArcSet.of(new Arc(largest, -1, largest.ticks() / 2));
            assertThat(half.grow(Long.MAX_VALUE).isFull()).isTrue();
            assertThat(half.shift(Long.MIN_VALUE).measure()).isEqualTo(half.measure());
            assertThat(half.contains(Long.MIN_VALUE)).isEqualTo(half.contains(largest.wrap(Long.MIN_VALUE)));
            assertThat(ArcText.parse(largest, half.toString())).isEqualTo(half);
        }
    }
}
