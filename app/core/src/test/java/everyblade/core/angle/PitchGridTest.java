package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which airfoils stand in a range of angles, against a plain loop over exact fractions. */
class PitchGridTest {

    /** Every airfoil whose place, some turns more or less, is from one angle on and before another. */
    private static TreeSet<Integer> byLoop(ExactTicks base, int count, ExactTicks from, ExactTicks to) {
        TreeSet<Integer> standing = new TreeSet<>();
        int first =
                from.minus(base).times(count, Circle.STANDARD.ticks()).floor().intValueExact() - 1;
        int last = to.minus(base).times(count, Circle.STANDARD.ticks()).floor().intValueExact() + 1;
        for (int j = first; j <= last; j++) {
            ExactTicks place = base.plus(ExactTicks.ofTurns(j, count));
            if (from.compareTo(place) <= 0 && place.compareTo(to) < 0) {
                standing.add(Math.floorMod(j, count));
            }
        }
        return standing;
    }

    private static TreeSet<Integer> indices(IndexRun run, int count) {
        TreeSet<Integer> indices = new TreeSet<>();
        for (int k = 0; k < run.length(); k++) {
            indices.add((run.first() + k) % count);
        }
        return indices;
    }

    private static void agrees(ExactTicks base, int count, ExactTicks from, ExactTicks to) {
        IndexRun run = new PitchGrid(base.turn(), count).between(from.turn(), to.turn());
        TreeSet<Integer> expected = byLoop(base, count, from, to);
        assertThat(indices(run, count))
                .as("%d airfoils from %s, between %s and %s", count, base.turn(), from.turn(), to.turn())
                .isEqualTo(expected);
        assertThat(run.length()).isEqualTo(expected.size());
    }

    @ParameterizedTest(name = "{0} airfoils")
    @ValueSource(ints = {1, 2, 19, 28, 97})
    void whileTheFirstIsTurnedThoseComePastThatStandThereFromSomePlaceOfIt(int count) {
        SplittableRandom random = new SplittableRandom(count);
        for (int i = 0; i < 2000; i++) {
            Turn low = Turn.ofTicks(random.nextLong(-1L << 40, 1L << 40));
            Turn high = low.plus(Turn.ofTicks(random.nextLong(1L << 31)));
            Turn first = ExactTicks.any(random).turn();
            Turn last = first.plus(ExactTicks.any(random).turn().abs());
            assertThat(PitchGrid.passing(low, high, first, last, count))
                    .as("%d airfoils, between %s and %s, the first from %s to %s", count, low, high, first, last)
                    .isEqualTo(new PitchGrid(Turn.ZERO, count).between(low.minus(last), high.minus(first)));
        }
    }

    @Nested
    class Between {

        static IntStream counts() {
            return IntStream.concat(IntStream.rangeClosed(1, 40), IntStream.of(47, 60, 77, 80, 94, 97, 113, 120));
        }

        @ParameterizedTest(name = "{0} airfoils")
        @MethodSource("counts")
        void anyTwoAnglesStandTheAirfoilsThatALoopFinds(int count) {
            SplittableRandom random = new SplittableRandom(count);
            for (int i = 0; i < 60; i++) {
                ExactTicks from = ExactTicks.any(random);
                // From two turns backwards, which is empty, to two turns on, which is everything.
                ExactTicks length = ExactTicks.any(random).wrapped().times(random.nextInt(-2, 3), 1);
                agrees(ExactTicks.any(random), count, from, from.plus(length));
            }
        }

        @ParameterizedTest(name = "{0} airfoils")
        @MethodSource("counts")
        void anglesExactlyOnAirfoilsTheFirstCountsAndTheLastDoesNot(int count) {
            SplittableRandom random = new SplittableRandom(-count);
            for (int i = 0; i < 40; i++) {
                ExactTicks base = ExactTicks.any(random);
                int first = random.nextInt(-2 * count, 2 * count + 1);
                int length = random.nextInt(count + 1);
                ExactTicks from = base.plus(ExactTicks.ofTurns(first, count));
                ExactTicks to = base.plus(ExactTicks.ofTurns(first + length, count));
                agrees(base, count, from, to);
                agrees(base, count, from.plus(ExactTicks.whole(1).times(1, 1000)), to);
                agrees(base, count, from, to.plus(ExactTicks.whole(1).times(1, 1000)));
                IndexRun run = new PitchGrid(base.turn(), count).between(from.turn(), to.turn());
                assertThat(run)
                        .isEqualTo(
                                length == 0
                                        ? new IndexRun(0, 0)
                                        : new IndexRun(length == count ? 0 : Math.floorMod(first, count), length));
            }
        }

        @Test
        void aTurnOrMoreStandsEveryAirfoilOnce() {
            PitchGrid grid = new PitchGrid(Turn.ofFraction(1, 7), 19);
            for (Turn from : new Turn[] {Turn.ZERO, Turn.ofFraction(-5, 3), Turn.ofTicks(-1), Turn.ofFraction(1, 7)}) {
                assertThat(grid.between(from, from.plus(Turn.FULL))).isEqualTo(new IndexRun(0, 19));
                assertThat(grid.between(from, from.plus(Turn.FULL.times(5, 2)))).isEqualTo(new IndexRun(0, 19));
            }
        }

        @Test
        void anEmptyOrABackwardRangeStandsNone() {
            PitchGrid grid = new PitchGrid(Turn.ZERO, 19);
            assertThat(grid.between(Turn.ZERO, Turn.ZERO)).isEqualTo(new IndexRun(0, 0));
            assertThat(grid.between(Turn.FULL, Turn.ZERO)).isEqualTo(new IndexRun(0, 0));
        }

        @Test
        void anglesAtTheEndsOfALongAreCountedRightly() {
            for (int count : new int[] {1, 2, 94}) {
                for (long ticks : new long[] {Long.MIN_VALUE, Long.MIN_VALUE + 1, Long.MAX_VALUE - 1}) {
                    ExactTicks pitches = ExactTicks.whole(ticks).times(count, Circle.STANDARD.ticks());
                    assertThat(Turn.ofTicks(ticks).ceilPitches(count))
                            .isEqualTo(pitches.ceil().longValueExact());
                }
            }
        }

        @Test
        void wholeTicksFindAnAirfoilByItsFlooredTick() {
            SplittableRandom random = new SplittableRandom(94);
            for (int i = 0; i < 2_000; i++) {
                int count = 1 + random.nextInt(120);
                int airfoil = random.nextInt(count);
                PitchGrid grid = new PitchGrid(ExactTicks.any(random).turn(), count);
                long tick = grid.tick(airfoil);
                assertThat(grid.between(Turn.ofTicks(tick), Turn.ofTicks(tick + 1)))
                        .isEqualTo(new IndexRun(airfoil, 1));
            }
        }
    }

    @Nested
    class MovesByPitches {

        @ParameterizedTest(name = "{0} airfoils")
        @ValueSource(ints = {19, 7, 11, 94})
        void bringNumberKExactlyToTheReference(int count) {
            // Number 0 stands at the reference; each move turns the rotor back by one pitch and so brings the next.
            Turn reference = Turn.ofDegrees(118);
            Turn atReference = reference;
            for (int k = 0; k <= 3 * count; k++) {
                PitchGrid grid = new PitchGrid(atReference, count);
                assertThat(grid.tick(k)).isEqualTo(reference.floorTicks());
                assertThat(grid.between(reference, reference.plus(Turn.ofTicks(1))))
                        .isEqualTo(new IndexRun(k % count, 1));
                atReference = atReference.minus(Turn.ofFraction(1, count));
            }
        }
    }

    @Nested
    class Places {

        @Test
        void areFlooredFromTheIndexAndNeverSummed() {
            PitchGrid grid = new PitchGrid(Turn.ZERO, 7);
            for (int i = -14; i < 21; i++) {
                assertThat(grid.tick(i)).isEqualTo(Math.floorMod(i, 7) * 1_296_000_000L / 7);
            }
        }

        @Test
        void areThoseOfTheExactFractionsFloored() {
            SplittableRandom random = new SplittableRandom(7);
            for (int i = 0; i < 5_000; i++) {
                ExactTicks base = ExactTicks.any(random);
                int count = 1 + random.nextInt(120);
                int airfoil = random.nextInt(-count, 2 * count);
                ExactTicks place = base.plus(ExactTicks.ofTurns(airfoil, count)).wrapped();
                assertThat(new PitchGrid(base.turn(), count).tick(airfoil))
                        .isEqualTo(place.floor().longValueExact());
            }
        }

        @Test
        void needAtLeastOneAirfoil() {
            assertThatIllegalArgumentException().isThrownBy(() -> new PitchGrid(Turn.ZERO, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> new IndexRun(-1, 2));
            assertThatIllegalArgumentException().isThrownBy(() -> new IndexRun(1, -2));
        }
    }
}
