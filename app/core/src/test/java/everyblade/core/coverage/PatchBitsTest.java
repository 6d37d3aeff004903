package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.IndexRun;
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
}
