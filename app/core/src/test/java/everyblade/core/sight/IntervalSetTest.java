package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class IntervalSetTest {

    private static final int CELLS = 16;

    private static IntervalSet ofBits(int bits) {
        IntervalSet open = new IntervalSet();
        for (int i = 0; i < CELLS; i++) {
            if ((bits >> i & 1) == 1) {
                open.append(i, i + 1);
            }
        }
        return open;
    }

    private static int bits(IntervalSet open) {
        int bits = 0;
        for (int i = 0; i < open.count(); i++) {
            for (int cell = (int) open.from(i); cell < open.to(i); cell++) {
                bits |= 1 << cell;
            }
        }
        return bits;
    }

    @Test
    void takingAwayIsWhatItIsForBits() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 20_000; i++) {
            int before = random.nextInt(1 << CELLS);
            int from = random.nextInt(CELLS);
            int to = from + random.nextInt(CELLS - from + 1);
            IntervalSet open = ofBits(before);

            open.subtract(from, to);

            int taken = (1 << to) - (1 << from);
            assertThat(bits(open)).isEqualTo(before & ~taken);
            assertThat(open.length()).isEqualTo(Integer.bitCount(before & ~taken));
        }
    }

    @Test
    void keepingWhatIsInBothIsWhatItIsForBits() {
        SplittableRandom random = new SplittableRandom(2);
        for (int i = 0; i < 20_000; i++) {
            int one = random.nextInt(1 << CELLS);
            int other = i % 10 == 0 ? 0 : random.nextInt(1 << CELLS);
            IntervalSet open = ofBits(one);

            open.intersect(ofBits(other));

            assertThat(bits(open)).isEqualTo(one & other);
        }
    }

    @Test
    void whatIsLeftBetweenShadesThatTouchIsNoLight() {
        IntervalSet open = new IntervalSet();
        open.set(0, 1);
        open.subtract(-1, 0.5);
        open.subtract(0.5 + 1e-13, 2);

        assertThat(open.isEmpty()).isTrue();
    }

    @Test
    void intervalsThatTouchAreOne() {
        IntervalSet open = new IntervalSet();
        open.append(0, 1);
        open.append(1, 2);

        assertThat(open.count()).isEqualTo(1);
        assertThat(open.to(0)).isEqualTo(2);
    }

    @Test
    void anIntervalThatBeginsWithinTheLastGoesOnWithIt() {
        IntervalSet open = new IntervalSet();
        open.append(0, 5);
        open.append(2, 3);
        open.append(4, 7);

        assertThat(open.count()).isEqualTo(1);
        assertThat(open.to(0)).isEqualTo(7);
    }

    @Test
    void holdsAsManyIntervalsAsThereAre() {
        IntervalSet open = new IntervalSet();
        for (int i = 0; i < 100; i++) {
            open.append(2 * i, 2 * i + 1);
        }
        IntervalSet same = new IntervalSet();
        same.set(-5, -4);
        same.set(open);
        IntervalSet cut = new IntervalSet();
        cut.set(0, 200);
        for (int i = 0; i < 99; i++) {
            cut.subtract(2 * i + 1, 2 * i + 2);
        }

        for (IntervalSet set : new IntervalSet[] {open, same, cut}) {
            assertThat(set.count()).isEqualTo(100);
            assertThat(set.from(57)).isEqualTo(114);
            assertThat(set.to(57)).isEqualTo(115);
            assertThat(set.isEmpty()).isFalse();
        }
        open.clear();
        assertThat(open.isEmpty()).isTrue();
        assertThat(open.length()).isZero();
    }

    @Test
    void takingAwayNothingOrWhatLiesBesideLeavesItAsItIs() {
        IntervalSet open = new IntervalSet();
        open.subtract(0, 1);
        assertThat(open.isEmpty()).isTrue();
        open.append(0, 1);
        open.append(2, 3);
        open.subtract(1, 2);
        open.subtract(3, 9);
        open.subtract(-9, 0);
        open.subtract(0.5, 0.5);

        assertThat(open.length()).isEqualTo(2);
    }

    @Test
    void takingAwayWhatLiesBeyondTheLastLeavesAllHoweverManyThereAre() {
        for (int count = 0; count <= 100; count++) {
            IntervalSet open = new IntervalSet();
            for (int i = 0; i < count; i++) {
                open.append(2 * i, 2 * i + 1);
            }

            open.subtract(1_000, 1_001);

            assertThat(open.count()).isEqualTo(count);
            assertThat(open.length()).isEqualTo(count);
        }
    }

    /** What is left must be longer than 10⁻¹¹. */
    @Test
    void whatIsLeftAtAnEndIsLightOnlyIfItIsMoreThanRounding() {
        for (double left : new double[] {2e-11, 0.9e-11}) {
            IntervalSet open = new IntervalSet();
            open.set(0, 1);
            open.subtract(left, 0.5);
            open.subtract(0.6, 1 - left);

            assertThat(open.count()).isEqualTo(left > 1e-11 ? 3 : 1);
            assertThat(open.from(open.count() / 2)).isEqualTo(0.5);
            assertThat(open.to(open.count() / 2)).isEqualTo(0.6);
        }
    }
}
