package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.IndexRun;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Patches of two facets of three airfoils. */
class PatchBitsTest {

    private static final IndexRun ALL = new IndexRun(0, 3);

    private final PatchBits bits = PatchBits.none(3, 2);

    @Test
    void aFacetIsFullOnlyWithAllItsPatches() {
        bits.add(ALL, 1, 0, 4);
        assertThat(bits.isFull(1, 0, 4)).isTrue();
        assertThat(bits.isFull(1, 1, 4)).isFalse();
        assertThat(bits.isFull(1, 0, 1)).as("asked of the whole facet").isFalse();
        bits.add(ALL, 1, 0, 1);
        assertThat(bits.isFull(1, 3, 4)).isTrue();
        assertThat(bits.isFull(1, 0, 1)).isTrue();
    }

    @Test
    void whatNothingWasAddedToHoldsNothing() {
        bits.add(new IndexRun(0, 0), 0, 2, 4);
        assertThat(bits.whole(0)).isTrue();
        assertThat(bits.isFull(0)).isFalse();
        assertThat(bits.contains(2, 0, 3)).isFalse();
        assertThat(bits.word(0, 0, 3)).isZero();
    }

    @Test
    void whatTwoSetsShareIsWhatBothHold() {
        PatchBits other = PatchBits.none(3, 2);
        bits.add(ALL, 0, 1, 4);
        bits.add(ALL, 1, 0, 1);
        other.add(new IndexRun(1, 1), 1, 2, 4);
        PatchBits shared = bits.copy();
        shared.keep(other);
        assertThat(shared.contains(2, 1, 2)).isTrue();
        assertThat(shared.contains(2, 1, 1)).isFalse();
        assertThat(shared.contains(1, 1, 2)).isFalse();
        assertThat(shared.contains(2, 0, 1)).isFalse();
        assertThat(bits.contains(2, 0, 1)).as("what was copied").isTrue();
        shared.add(bits);
        assertThat(shared.contains(1, 0, 1)).isTrue();
        assertThat(shared.contains(1, 0, 2)).isFalse();
        assertThat(shared.isFull(1)).isTrue();
    }

    private static final int PATCHES = 4;

    /** The same patches of two facets of 70 airfoils, kept one by one. */
    private static final class Both {

        static final int AIRFOILS = 70;
        final boolean[][][] plain = new boolean[2][PATCHES][AIRFOILS];
        final PatchBits bits = PatchBits.none(AIRFOILS, 2);

        static Both drawn(SplittableRandom random) {
            Both both = new Both();
            int runs = random.nextInt(6);
            for (int i = 0; i < runs; i++) {
                int facet = random.nextInt(2);
                IndexRun run = new IndexRun(random.nextInt(AIRFOILS), random.nextInt(AIRFOILS + 1));
                boolean whole = random.nextBoolean();
                int patch = whole ? 0 : random.nextInt(PATCHES);
                both.bits.add(run, facet, patch, whole ? 1 : PATCHES);
                for (int k = 0; k < run.length(); k++) {
                    for (int p = 0; p < PATCHES; p++) {
                        both.plain[facet][p][(run.first() + k) % AIRFOILS] |= whole || p == patch;
                    }
                }
            }
            return both;
        }
    }

    private interface Of {
        boolean holds(int facet, int patch, int index);
    }

    private static void assertHolds(PatchBits bits, Of plain) {
        for (int facet = 0; facet < 2; facet++) {
            boolean all = true;
            for (int patch = 0; patch < PATCHES; patch++) {
                boolean full = true;
                for (int index = 0; index < Both.AIRFOILS; index++) {
                    boolean holds = plain.holds(facet, patch, index);
                    full &= holds;
                    assertThat(bits.contains(index + 1, facet, patch)).isEqualTo(holds);
                    assertThat(bits.word(index / 64, facet, patch) >>> index % 64 & 1)
                            .isEqualTo(holds ? 1 : 0);
                    if (bits.whole(facet)) {
                        assertThat(holds).isEqualTo(plain.holds(facet, 0, index));
                    }
                }
                all &= full;
                assertThat(bits.isFull(facet, patch, PATCHES)).isEqualTo(full);
            }
            assertThat(bits.isFull(facet)).isEqualTo(all);
            assertThat(bits.isFull(facet, 0, 1)).isEqualTo(all);
        }
    }

    @Test
    void whateverWasAddedAndKeptEachPatchOfEachAirfoilBelongsToItThatShould() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 200; round++) {
            Both one = Both.drawn(random);
            Both other = Both.drawn(random);
            assertHolds(one.bits, (facet, patch, index) -> one.plain[facet][patch][index]);
            PatchBits added = one.bits.copy();
            added.add(other.bits);
            assertHolds(
                    added, (facet, patch, index) -> one.plain[facet][patch][index] || other.plain[facet][patch][index]);
            PatchBits kept = one.bits.copy();
            kept.keep(other.bits);
            assertHolds(
                    kept, (facet, patch, index) -> one.plain[facet][patch][index] && other.plain[facet][patch][index]);
            assertHolds(one.bits, (facet, patch, index) -> one.plain[facet][patch][index]);
            assertHolds(other.bits, (facet, patch, index) -> other.plain[facet][patch][index]);
        }
    }
}
