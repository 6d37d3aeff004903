package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SpreadTest {

    @Test
    void labels_with_room_stay_where_they_were_wanted() {
        assertThat(Spread.of(List.of(10.0, 200.0, 90.0), 5))
                .usingElementComparator((a, b) -> CurvedText.apart(a, b) < 1e-9 ? 0 : 1)
                .containsExactly(10.0, 200.0, 90.0);
    }

    @Test
    void labels_wanted_at_one_place_stand_evenly_about_it_also_across_12_o_clock() {
        List<Double> placed = Spread.of(List.of(359.0, 1.0, 0.0), 6);
        assertThat(CurvedText.apart(placed.get(0), 354)).isCloseTo(0, within(1e-9));
        assertThat(CurvedText.apart(placed.get(2), 0)).isCloseTo(0, within(1e-9));
        assertThat(CurvedText.apart(placed.get(1), 6)).isCloseTo(0, within(1e-9));
    }

    @Test
    void no_two_labels_come_nearer_than_the_least_distance_however_many_there_are() {
        SplittableRandom random = new SplittableRandom(3);
        for (int trial = 0; trial < 300; trial++) {
            int count = random.nextInt(1, 100);
            double least = random.nextDouble(1, 10);
            List<Double> wanted = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                wanted.add(random.nextBoolean() ? random.nextDouble(360) : random.nextInt(4) * 90.0);
            }
            List<Double> placed = Spread.of(wanted, least);
            assertThat(placed).hasSize(count);
            double kept = Math.min(least, 360.0 / count) - 1e-6;
            List<Double> sorted =
                    placed.stream().map(CurvedText::wrapped).sorted().toList();
            for (int i = 1; i < count; i++) {
                assertThat(sorted.get(i) - sorted.get(i - 1)).isGreaterThanOrEqualTo(kept);
            }
            assertThat(count == 1 || sorted.get(0) + 360 - sorted.get(count - 1) >= kept)
                    .isTrue();
        }
    }
}
