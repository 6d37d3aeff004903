package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.BoundaryModel.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Sets of many arcs on the standard circle, against a model that asks every arc about every piece. */
class ArcSetRandomTest {

    private static final Circle CIRCLE = Circle.STANDARD;
    private static final Rule FIRST = (a, b) -> a;

    private final SplittableRandom random = new SplittableRandom(20240229);

    /** Up to 24 arcs; some on a coarse grid so that they touch, some empty, some from or over the seam. */
    private BoundaryModel drawn() {
        List<long[]> arcs = new ArrayList<>();
        int count = random.nextInt(25);
        long longest = CIRCLE.ticks() / (1 + random.nextInt(40));
        long grid = random.nextBoolean() ? 1 : CIRCLE.ticks() / 48;
        for (int i = 0; i < count; i++) {
            arcs.add(new long[] {
                random.nextLong(CIRCLE.ticks()) / grid * grid, random.nextLong(longest + 1) / grid * grid
            });
        }
        return new BoundaryModel(CIRCLE, arcs);
    }

    private long anyShift() {
        return random.nextLong(-3 * CIRCLE.ticks(), 3 * CIRCLE.ticks());
    }

    @Test
    void combinationsOfTwoSetsKeepTheRightPiecesTurnedToo() {
        for (int round = 0; round < 1500; round++) {
            BoundaryModel a = drawn();
            BoundaryModel b = drawn();
            combinationsAgree(a, b, a.set(), b.set());
            long by = anyShift();
            combinationsAgree(
                    a.turned(by), b.turned(by), a.set().shift(by), b.set().shift(by));
        }
    }

    private static void combinationsAgree(BoundaryModel a, BoundaryModel b, ArcSet first, ArcSet second) {
        assertThat(first.arcs()).isEqualTo(BoundaryModel.combined(a, a, FIRST));
        assertThat(first.complement().arcs()).isEqualTo(BoundaryModel.combined(a, a, (x, y) -> !x));
        assertThat(first.union(second).arcs()).isEqualTo(BoundaryModel.combined(a, b, (x, y) -> x || y));
        assertThat(first.intersection(second).arcs()).isEqualTo(BoundaryModel.combined(a, b, (x, y) -> x && y));
        assertThat(first.difference(second).arcs()).isEqualTo(BoundaryModel.combined(a, b, (x, y) -> x && !y));
    }

    @Test
    void growingMovesEveryEndOutwardsAndShrinkingEveryEndInwards() {
        for (int round = 0; round < 1500; round++) {
            BoundaryModel model = drawn();
            long radius = random.nextLong(CIRCLE.ticks() / (1 + random.nextInt(100)));
            long by = anyShift();
            ArcSet turned = model.set().shift(by);
            BoundaryModel grown = model.turned(by).grown(radius);
            assertThat(turned.grow(radius).arcs()).isEqualTo(BoundaryModel.combined(grown, grown, FIRST));
            assertThat(turned.complement().shrink(radius).arcs())
                    .isEqualTo(BoundaryModel.combined(grown, grown, (x, y) -> !x));
        }
    }

    @Test
    void aSetAndAnArcMeetIfTheirIntersectionHoldsATick() {
        int met = 0;
        for (int round = 0; round < 3000; round++) {
            BoundaryModel model = drawn();
            long[] one = {random.nextLong(CIRCLE.ticks()), random.nextLong(CIRCLE.ticks() / 8)};
            BoundaryModel arc = new BoundaryModel(CIRCLE, List.<long[]>of(one));
            boolean meets =
                    !BoundaryModel.combined(model, arc, (x, y) -> x && y).isEmpty();
            assertThat(model.set().meets(new Arc(CIRCLE, one[0], one[1]))).isEqualTo(meets);
            met += meets ? 1 : 0;
        }
        assertThat(met).isBetween(500, 2500);
    }

    @Test
    void measuresOfUnionAndIntersectionAddUp() {
        for (int round = 0; round < 3000; round++) {
            ArcSet a = drawn().set();
            ArcSet b = drawn().set();
            assertThat(a.union(b).measure() + a.intersection(b).measure()).isEqualTo(a.measure() + b.measure());
            assertThat(a.measure() + a.complement().measure()).isEqualTo(CIRCLE.ticks());
            assertThat(a.shift(anyShift()).measure()).isEqualTo(a.measure());
        }
    }

    @Test
    void textReadsBackAsTheSameSet() {
        for (int round = 0; round < 2000; round++) {
            ArcSet set = drawn().set();
            assertThat(ArcText.parse(CIRCLE, set.toString())).isEqualTo(set);
        }
    }
}
