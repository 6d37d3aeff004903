package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Circle;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How far a range must reach, against trying every range that begins at a place. */
class NeedTest {

    private static final int STEPS = 24;
    private static final long STEP = Circle.STANDARD.ticks() / STEPS;

    private static Need need(long low, long high) {
        return new Need(low * STEP, high * STEP);
    }

    /** Whether from one step to another, unrolled, meets a need a whole number of turns away. */
    private static boolean meets(long from, long to, Need need) {
        for (long turn = -2; turn <= 2; turn++) {
            long low = need.low() / STEP + turn * STEPS;
            long high = need.high() / STEP + turn * STEPS;
            if (from <= low && to >= high) {
                return true;
            }
        }
        return false;
    }

    private static long tried(long start, List<List<Need>> all) {
        for (long width = -STEPS; ; width++) {
            long end = start + width;
            if (all.stream().allMatch(needs -> needs.stream().anyMatch(need -> meets(start, end, need)))) {
                return width * STEP;
            }
        }
    }

    @Test
    void oneNeedIsMetFromItsLowToItsHigh() {
        assertThat(Need.furthest(2 * STEP, List.of(List.of(need(3, 5))))).isEqualTo(3 * STEP);
        assertThat(Need.furthest(3 * STEP, List.of(List.of(need(3, 5))))).isEqualTo(2 * STEP);
        assertThat(Need.furthest(4 * STEP, List.of(List.of(need(3, 5))))).isEqualTo(25 * STEP);
    }

    @Test
    void theNearestOfSeveralAndTheFurthestOfAll() {
        List<Need> either = List.of(need(10, 12), need(4, 5));
        List<Need> also = List.of(need(6, 8));
        assertThat(Need.furthest(0, List.of(either))).isEqualTo(5 * STEP);
        assertThat(Need.furthest(0, List.of(either, also))).isEqualTo(8 * STEP);
        assertThat(Need.furthest(0, List.of())).isEqualTo(-STEPS * STEP);
    }

    @Test
    void asFarAsTryingFindsIt() {
        SplittableRandom random = new SplittableRandom(418);
        for (int round = 0; round < 500; round++) {
            List<List<Need>> all = Stream.generate(() -> Stream.generate(() -> {
                                long low = random.nextInt(STEPS);
                                return need(low, low + random.nextInt(-3, 6));
                            })
                            .limit(random.nextInt(1, 4))
                            .toList())
                    .limit(random.nextInt(1, 4))
                    .toList();
            long start = random.nextInt(STEPS);
            assertThat(Need.furthest(start * STEP, all))
                    .as("%d of %s", start, all)
                    .isEqualTo(tried(start, all));
        }
    }
}
