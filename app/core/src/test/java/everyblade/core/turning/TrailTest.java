package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TrailTest {

    private static Trail<Integer> upTo(int last) {
        return IntStream.rangeClosed(1, last).boxed().reduce(Trail.empty(), Trail::with, (one, other) -> other);
    }

    @Test
    void growsAtItsEndAndStaysAsItWasForWhoHoldsIt() {
        Trail<Integer> three = upTo(3);
        Trail<Integer> many = upTo(3);
        for (int i = 4; i <= 40; i++) {
            many = many.with(i);
        }
        assertThat(three).containsExactly(1, 2, 3);
        assertThat(many).hasSize(40).startsWith(1, 2, 3, 4).endsWith(39, 40);
    }

    @Test
    void goneOnWithInTwoWaysFromOneItemIsTwoTrails() {
        Trail<Integer> common = upTo(2);
        Trail<Integer> one = common.with(3);
        Trail<Integer> other = common.with(9);
        assertThat(one.with(4)).containsExactly(1, 2, 3, 4);
        assertThat(other.with(8).with(7)).containsExactly(1, 2, 9, 8, 7);
        assertThat(one).containsExactly(1, 2, 3);
        assertThat(other).containsExactly(1, 2, 9);
        assertThat(common).containsExactly(1, 2);
    }

    @Test
    void goneOnWithFromItsBeginningLeavesItsEndAlone() {
        Trail<Integer> whole = upTo(3);
        assertThat(whole.first(2).with(9)).containsExactly(1, 2, 9);
        assertThat(whole.first(1).with(9)).containsExactly(1, 9);
        Trail<Integer> branch = whole.first(1).with(9);
        assertThat(branch.first(1).with(8)).containsExactly(1, 8);
        assertThat(branch).containsExactly(1, 9);
        assertThat(whole).containsExactly(1, 2, 3);
    }

    @Test
    void goneOnWithFromTwoPlacesOneBeforeTheOtherIsTwoTrails() {
        Trail<Integer> branch = upTo(3).first(2).with(9);
        assertThat(branch.first(1).with(8)).containsExactly(1, 8);
        assertThat(branch).containsExactly(1, 2, 9);
    }

    @Test
    void hasNothingBeyondItsEndThoughALongerOneHas() {
        Trail<Integer> three = upTo(3);
        Trail<Integer> two = three.first(2);
        assertThatThrownBy(() -> two.get(2)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> two.first(3)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThat(three.first(3)).containsExactly(1, 2, 3);
    }
}
