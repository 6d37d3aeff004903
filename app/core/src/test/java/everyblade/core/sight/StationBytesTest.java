package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.ShapedEngine;
import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Tolerance;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a station shows, written and read again: boxes, of which each has six facets of 32 patches. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StationBytesTest {

    private static final int FACETS = 6;
    private static final int PATCHES = 32;
    /** Numbers of kinds, poses and facets. */
    private static final int HEAD = 12;

    private final Blocks blocks = new Blocks()
            .row("own", RowKind.STATOR, 6, row -> row.phase(5), 0, 10, 3, 20, 30)
            .row("other", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
            .row("slim", RowKind.ROTOR, 8, 50, 60, 1, 19, 31)
            .known("other", new Place(Turn.ofDegrees(10), Turn.ofDegrees(12), Turn.ofDegrees(11)));
    private final Grain grain = grain();
    private final StationSight sight = sight();

    private Grain grain() {
        try {
            ViewScene engine = blocks.scene();
            return engine.grain(engine.model().row("own").orElseThrow()).orElseThrow();
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    /** Three kinds of vanes, from 27 poses. */
    private StationSight sight() {
        try {
            ViewScene engine = blocks.scene();
            Row row = engine.model().row("own").orElseThrow();
            Pose pose = Plates.within(Plates.cone(Plates.pose(-24, 26, 10, 1, 0.2, 0.1), 50), 0, 60);
            Setting setting = Setting.of(engine, engine.ring(row).orElseThrow(), row, pose, 0.5, 2);
            Criteria criteria = Criteria.USUAL;
            return StationSight.compute(
                    setting, grain, PoseFamily.of(pose, new Tolerance(0.5, 2)), criteria, Progress.NONE);
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    private Optional<StationSight> read(byte[] bytes) {
        return StationBytes.read(bytes, grain);
    }

    /** Of one kind, seen from so many poses alike. */
    private byte[] written(int poses, ArcSet arcs, byte reason, ArcSet[][] divided, ArcSet[][] whole) {
        ArcSet[][][] all = new ArcSet[1][FACETS][poses];
        for (ArcSet[] facet : all[0]) {
            Arrays.fill(facet, arcs);
        }
        byte[][] why = new byte[1][FACETS];
        Arrays.fill(why[0], reason);
        ArcSet[][][][] ofPatches = new ArcSet[1][FACETS][][];
        ofPatches[0][2] = divided;
        ArcSet[][][][] ofWhole = new ArcSet[1][FACETS][][];
        ofWhole[0][2] = whole;
        return StationBytes.of(all, why, ofPatches, ofWhole);
    }

    private static ArcSet arc(long start, long length) {
        return ArcSet.of(new Arc(Circle.STANDARD, start, length));
    }

    private static ArcSet[][] each(int poses, ArcSet arcs) {
        ArcSet[][] patches = new ArcSet[PATCHES][poses];
        for (ArcSet[] patch : patches) {
            Arrays.fill(patch, arcs);
        }
        return patches;
    }

    private byte[] plain() {
        return written(2, arc(5, 900_000), (byte) -1, null, null);
    }

    @Nested
    class ReadAgain {

        @Test
        void allIsAsItWas() {
            StationSight again = read(sight.written()).orElseThrow();

            assertThat(again.written()).isEqualTo(sight.written());
            assertThat(again.kinds()).isEqualTo(3);
            assertThat(again.poses()).isEqualTo(27);
            assertThat(again.facets()).isEqualTo(FACETS);
            int divided = 0;
            int whole = 0;
            for (int kind = 0; kind < 3; kind++) {
                for (int facet = 0; facet < FACETS; facet++) {
                    assertThat(again.why(facet)).isEqualTo(sight.why(facet));
                    assertThat(again.reaches(kind, facet)).isEqualTo(sight.reaches(kind, facet));
                    assertThat(again.patches(facet)).isEqualTo(sight.patches(facet));
                    assertThat(again.showsWhole(kind, facet)).isEqualTo(sight.showsWhole(kind, facet));
                    for (int patch = 0; patch < sight.patches(facet); patch++) {
                        assertThat(again.reaches(kind, facet, patch)).isEqualTo(sight.reaches(kind, facet, patch));
                        for (int pose = 0; pose < 27; pose++) {
                            assertThat(again.arcs(kind, pose, facet, patch))
                                    .isEqualTo(sight.arcs(kind, pose, facet, patch));
                            assertThat(again.startSlack(kind, pose, facet, patch))
                                    .isEqualTo(sight.startSlack(kind, pose, facet, patch));
                            if (sight.showsWhole(kind, facet)) {
                                assertThat(again.whole(kind, pose, facet, patch))
                                        .isEqualTo(sight.whole(kind, pose, facet, patch));
                                whole++;
                            }
                        }
                        divided += sight.patches(facet) > 1 ? 1 : 0;
                    }
                }
            }
            assertThat(divided).isPositive();
            assertThat(whole).isPositive();
        }

        @Test
        void aPatchThatIsAsItsFacetIsSoStill() {
            ArcSet[][] divided = each(2, null);
            divided[3][1] = arc(7, 800_000);

            StationSight again =
                    read(written(2, arc(5, 900_000), (byte) -1, divided, null)).orElseThrow();

            assertThat(again.arcs(0, 0, 2, 3)).isEqualTo(arc(5, 900_000));
            assertThat(again.arcs(0, 1, 2, 3)).isEqualTo(arc(7, 800_000));
            assertThat(again.arcs(0, 1, 2, 4)).isEqualTo(arc(5, 900_000));
        }
    }

    /** Of each facet a reason, two heads for patches, and of its first pose a head and 16 bytes an arc. */
    @Nested
    class TakesNoMoreRoomThanItNeeds {

        private static final int ARC = 16;

        @Test
        void posesThatShowTheSameAreWrittenOnce() {
            assertThat(written(1, arc(5, 900_000), (byte) -1, null, null)).hasSize(HEAD + FACETS * (1 + 2 + 1 + ARC));
            assertThat(written(27, arc(5, 900_000), (byte) -1, null, null)).hasSize(HEAD + FACETS * (1 + 2 + 27 + ARC));
        }

        @Test
        void patchesFollowOnlyWhereThereAreSome() {
            int plain = plain().length;

            assertThat(written(2, arc(5, 900_000), (byte) -1, each(2, null), null))
                    .hasSize(plain + 2 * PATCHES);
            assertThat(written(2, arc(5, 900_000), (byte) -1, null, each(2, arc(1, 720_000))))
                    .hasSize(plain + PATCHES * (2 + ARC));
        }

        @Test
        void patchesOfAKindThatAreAsThoseOfTheKindBeforeAreWrittenOnce() {
            ArcSet[][][] arcs = new ArcSet[2][FACETS][1];
            for (ArcSet[][] kind : arcs) {
                for (ArcSet[] facet : kind) {
                    facet[0] = ArcSet.empty(Circle.STANDARD);
                }
            }
            ArcSet[][][][] none = new ArcSet[2][FACETS][][];
            ArcSet[][][][] alike = new ArcSet[2][FACETS][][];
            alike[0][1] = each(1, arc(1, 720_000));
            alike[1][1] = each(1, arc(1, 720_000));

            byte[] bytes = StationBytes.of(arcs, new byte[2][FACETS], none, alike);

            assertThat(bytes).hasSize(HEAD + 2 * FACETS * (1 + 2 + 1) + PATCHES * (1 + ARC));
            StationSight again = read(bytes).orElseThrow();
            assertThat(again.whole(1, 0, 1, 31)).isEqualTo(arc(1, 720_000));
            assertThat(again.showsWhole(1, 2)).isFalse();
        }
    }

    @Nested
    class BytesThatAreSomethingElse {

        @Test
        void areNotReadIfSomeAreMissingOrTooMany() {
            byte[] bytes = plain();
            for (int length = 0; length < bytes.length; length++) {
                assertThat(read(Arrays.copyOf(bytes, length)))
                        .as("%d bytes", length)
                        .isEmpty();
            }
            assertThat(read(Arrays.copyOf(bytes, bytes.length + 1))).isEmpty();
            assertThat(read(bytes)).isPresent();
        }

        @Test
        void areNotReadIfTheyAreOfAnotherAirfoil() throws UnusableShape {
            ViewScene engine = new Blocks()
                    .row("own", RowKind.ROTOR, 6, row -> row, 0, 10, 3, 20, 30)
                    .scene();
            Grain same = engine.grain(engine.model().row("own").orElseThrow()).orElseThrow();
            ViewScene shaped = new ViewScene(
                    new ShapedEngine().row("r", RowKind.ROTOR, 20, 35, 0).model(), Map.of(), Map.of());
            Grain other = shaped.grain(shaped.model().rows().get(0)).orElseThrow();

            assertThat(StationBytes.read(plain(), same)).isPresent();
            assertThat(StationBytes.read(plain(), other)).isEmpty();
        }

        @ParameterizedTest
        @ValueSource(ints = {0, -1, 1_000_000, Integer.MAX_VALUE})
        void areNotReadIfSoManyKindsOrPosesCannotBe(int count) {
            assertThat(read(ByteBuffer.wrap(plain()).putInt(0, count).array())).isEmpty();
            assertThat(read(ByteBuffer.wrap(plain()).putInt(4, count).array())).isEmpty();
        }

        @ParameterizedTest
        @ValueSource(bytes = {-2, 5, 100})
        void areNotReadIfTheyGiveAReasonThatIsNone(byte reason) {
            assertThat(read(written(2, arc(5, 900_000), reason, null, null))).isEmpty();
        }

        @Test
        void areReadWithAnyReason() {
            for (Hindrance hindrance : Hindrance.values()) {
                assertThat(read(written(2, arc(5, 900_000), (byte) hindrance.ordinal(), null, null))
                                .orElseThrow()
                                .why(1))
                        .contains(hindrance);
            }
        }

        private byte[] with(byte[] bytes, int at, int value) {
            byte[] changed = bytes.clone();
            changed[at] = (byte) value;
            return changed;
        }

        /** The first facet's first pose is −1, as the one before it, or −2, as its facet. */
        @Test
        void areNotReadIfAFacetGoesOnWithWhatIsNotThere() {
            int first = HEAD + FACETS;
            byte[] empty = written(1, ArcSet.empty(Circle.STANDARD), (byte) 0, null, null);

            assertThat(read(empty)).isPresent();
            assertThat(read(with(empty, first, -1))).isEmpty();
            assertThat(read(with(empty, first, -2))).isEmpty();
            assertThat(read(with(empty, first, -3))).isEmpty();
        }

        @Test
        void areNotReadIfPatchesOfTheFirstKindGoOnWithOneBefore() {
            byte[] empty = written(1, ArcSet.empty(Circle.STANDARD), (byte) 0, null, null);

            for (int head : new int[] {-1, -2, 2}) {
                assertThat(read(with(empty, empty.length - 1, head)))
                        .as("%d", head)
                        .isEmpty();
            }
        }

        @Test
        void areNotReadIfTheWholeOfAPatchIsAsItsFacet() {
            assertThat(read(written(2, arc(5, 900_000), (byte) 0, null, each(2, null))))
                    .isEmpty();
            assertThat(read(written(2, arc(5, 900_000), (byte) 0, each(2, null), null)))
                    .isPresent();
        }

        /** Whatever is damaged, it is read as something or not at all. */
        @Test
        void neverMakeItFail() {
            byte[] bytes = sight.written();
            SplittableRandom random = new SplittableRandom(8);
            int refused = 0;
            for (int i = 0; i < 300; i++) {
                byte[] damaged = with(bytes, random.nextInt(Math.min(4_000, bytes.length)), random.nextInt(256));
                refused += read(damaged).isEmpty() ? 1 : 0;
            }
            assertThat(refused).isGreaterThan(50);
            assertThat(List.of(bytes)).allMatch(all -> read(all).isPresent());
        }
    }
}
