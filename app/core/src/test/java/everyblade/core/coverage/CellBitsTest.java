package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import java.util.BitSet;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets of parts of airfoils against a plain set of numbers, for rows of less than a word, exactly one and more. */
class CellBitsTest {

    private static final int PARTS = 3;

    /** A set with the same parts kept one by one. */
    private static final class Both {

        final int airfoils;
        final BitSet plain = new BitSet();
        final CellBits bits;

        Both(int airfoils) {
            this.airfoils = airfoils;
            this.bits = CellBits.none(airfoils, PARTS);
        }

        static Both drawn(int airfoils, SplittableRandom random) {
            Both both = new Both(airfoils);
            int runs = random.nextInt(5);
            for (int i = 0; i < runs; i++) {
                IndexRun run = new IndexRun(random.nextInt(airfoils), random.nextInt(airfoils + 1));
                long zones = random.nextInt(1 << PARTS);
                both.bits.add(run, new ZoneSet(zones));
                for (int part = 0; part < PARTS; part++) {
                    for (int k = 0; k < run.length() && (zones >> part & 1) != 0; k++) {
                        both.plain.set(part * airfoils + (run.first() + k) % airfoils);
                    }
                }
            }
            return both;
        }

        boolean holds(int n, int part) {
            return plain.get(part * airfoils + n - 1);
        }
    }

    private static void assertAlike(CellBits bits, Both both) {
        for (int part = 0; part < PARTS; part++) {
            boolean full = true;
            for (int n = 1; n <= both.airfoils; n++) {
                boolean holds = both.holds(n, part);
                full &= holds;
                assertThat(bits.contains(n, part)).isEqualTo(holds);
                assertThat(bits.word((n - 1) / 64, part) >>> (n - 1) % 64 & 1).isEqualTo(holds ? 1 : 0);
            }
            assertThat(bits.isFull(part)).isEqualTo(full);
            int last = CellBits.words(both.airfoils) - 1;
            int used = both.airfoils - 64 * last;
            assertThat(used == 64 ? 0 : bits.word(last, part) >>> used)
                    .as("beyond the last airfoil")
                    .isZero();
        }
        for (int n = 1; n <= both.airfoils; n++) {
            int airfoil = n;
            assertThat(bits.parts(n).stream().boxed())
                    .isEqualTo(IntStream.range(0, PARTS)
                            .filter(part -> both.holds(airfoil, part))
                            .boxed()
                            .toList());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 63, 64, 65, 128, 130})
    void runsAreAddedAlsoOverTheSeam(int airfoils) {
        SplittableRandom random = new SplittableRandom(airfoils);
        for (int round = 0; round < 20; round++) {
            Both both = Both.drawn(airfoils, random);
            assertAlike(both.bits, both);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 63, 64, 65, 128, 130})
    void whatIsAddedAndKeptIsWhatEitherAndBothHold(int airfoils) {
        SplittableRandom random = new SplittableRandom(-airfoils);
        for (int round = 0; round < 20; round++) {
            Both one = Both.drawn(airfoils, random);
            Both other = Both.drawn(airfoils, random);
            CellBits before = one.bits.copy();
            Both either = new Both(airfoils);
            either.plain.or(one.plain);
            either.plain.or(other.plain);
            CellBits added = one.bits.copy();
            added.add(other.bits);
            assertAlike(added, either);
            Both shared = new Both(airfoils);
            shared.plain.or(one.plain);
            shared.plain.and(other.plain);
            CellBits kept = one.bits.copy();
            kept.keep(other.bits);
            assertAlike(kept, shared);
            assertThat(one.bits).as("what was copied").isEqualTo(before).hasSameHashCodeAs(before);
            assertThat(one.bits.equals(other.bits)).isEqualTo(one.plain.equals(other.plain));
        }
    }

    @Test
    void ofRowsOfOtherCountsNoneIsTheSame() {
        assertThat(CellBits.none(5, 1)).isNotEqualTo(CellBits.none(6, 1)).isNotEqualTo("5");
        CellBits all = CellBits.none(5, 1);
        all.add(new IndexRun(0, 5), 0);
        assertThat(all.hashCode()).isNotEqualTo(CellBits.none(5, 1).hashCode());
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "63, 1", "64, 1", "65, 2", "128, 2", "129, 3"})
    void aWordHoldsSixtyFourAirfoils(int airfoils, int words) {
        assertThat(CellBits.words(airfoils)).isEqualTo(words);
    }

    @Test
    void aSetOfOnePartIsRepeatedForEach() {
        CellBits one = CellBits.none(70, 1);
        one.add(new IndexRun(60, 8), 0);
        CellBits all = one.repeated(4);
        for (int part = 0; part < 4; part++) {
            for (int n = 1; n <= 70; n++) {
                assertThat(all.contains(n, part)).isEqualTo(n > 60 && n <= 68);
            }
        }
    }

    /** Airfoils 1 and 3 differ from 2 and 4 in one thing, 3 and 4 from the others in the next. */
    @Test
    void airfoilsAreAlikeThatNothingTellsApart() {
        Alike alike = new Alike(6);
        assertThat(alike.firsts()).isEqualTo(0b1);
        alike.tellApart(0b000101);
        alike.tellApart(0b001100);
        alike.tellApart(0b111111);
        alike.tellApart(0);
        BitSet groups = new BitSet();
        long[] together = new long[1];
        alike.forEach(group -> {
            groups.set((int) group);
            together[0] += group;
        });
        assertThat(groups.stream()).containsExactlyInAnyOrder(0b110010, 0b000001, 0b000100, 0b001000);
        assertThat(together[0]).isEqualTo(0b111111);
        assertThat(alike.firsts()).isEqualTo(0b001111);
    }

    @Test
    void aWordFullOfAirfoilsCanBeToldApart() {
        Alike alike = new Alike(64);
        for (int n = 0; n < 64; n++) {
            alike.tellApart(1L << n);
        }
        assertThat(alike.firsts()).isEqualTo(-1L);
    }
}
