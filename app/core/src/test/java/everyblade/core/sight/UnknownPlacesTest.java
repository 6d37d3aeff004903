package everyblade.core.sight;

import static everyblade.core.sight.PastBoxes.AHEAD;
import static everyblade.core.sight.PastBoxes.AMONG;
import static everyblade.core.sight.PastBoxes.BETWEEN;
import static everyblade.core.sight.PastBoxes.CRITERIA;
import static everyblade.core.sight.PastBoxes.OTHER;
import static everyblade.core.sight.PastBoxes.OWN;
import static everyblade.core.sight.PastBoxes.RADIUS;
import static everyblade.core.sight.PastBoxes.alone;
import static everyblade.core.sight.PastBoxes.arcs;
import static everyblade.core.sight.PastBoxes.measure;
import static everyblade.core.sight.PastBoxes.pastEach;
import static everyblade.core.sight.PastBoxes.phase;
import static everyblade.core.sight.PastBoxes.pieces;
import static everyblade.core.sight.PastBoxes.place;
import static everyblade.core.sight.PastBoxes.same;
import static everyblade.core.sight.PastBoxes.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row past vanes of which nobody knows quite where they stand. */
class UnknownPlacesTest {

    @Nested
    class BladesPastVanesOfAnUnknownPlace {

        private Blocks blocks() {
            return new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.STATOR, 8, OTHER);
        }

        /** From ahead they may stand anywhere in their pitch of 45°: in each of 18 pieces of 2.5° for itself. */
        @Test
        void whatIsSureIsInSightPastEachPieceOfAPitch() throws UnusableShape {
            Setting setting = setting(blocks(), AHEAD);
            double[] from = IntStream.range(0, 18).mapToDouble(i -> 2.5 * i).toArray();

            same(setting.surely(AHEAD, CRITERIA).get(0), pastEach(alone(blocks()), pieces(8, 2.5, from), false, AHEAD));
            assertThat(setting.others().ways(AHEAD)).hasSize(18);
            assertThat(setting.between(AHEAD)).singleElement().satisfies(between -> {
                assertThat(between.rings()).as("all that it sweeps").isEmpty();
                assertThat(between.sure()).isFalse();
                assertThat(between.turns()).isFalse();
            });
        }

        /** From 10° to 16° is three pieces of 2.5°, which lie over each other. */
        @Test
        void ofADoubtSmallerThanAPitchOnlyItsPieces() throws UnusableShape {
            Blocks known = blocks().known("other", place(10, 16));
            Setting setting = setting(known, AHEAD);

            List<Ring> rings = pieces(8, 2.5, 10, 11.75, 13.5);
            same(setting.surely(AHEAD, CRITERIA).get(0), pastEach(alone(known), rings, false, AHEAD));
            assertThat(setting.between(AHEAD).get(0).rings())
                    .extracting(ring -> ring.offset().degrees())
                    .satisfies(offsets -> {
                        assertThat(offsets).hasSize(3);
                        assertThat(offsets.get(0)).isCloseTo(10, within(1e-9));
                        assertThat(offsets.get(1)).isCloseTo(11.75, within(1e-9));
                        assertThat(offsets.get(2)).isCloseTo(13.5, within(1e-9));
                    });
            assertThat(setting.between(AHEAD).get(0).sure()).isFalse();
        }

        /** A doubt of 2° is one piece of its own. */
        @Test
        void ofADoubtSmallerThanAPieceItAlone() throws UnusableShape {
            Blocks known = blocks().known("other", place(10, 12));

            same(
                    setting(known, AHEAD).surely(AHEAD, CRITERIA).get(0),
                    arcs(alone(known).withFixed(pieces(8, 2, 10).get(0)), AHEAD));
        }

        /** Among them they stand where they leave a scope tip of 2 mm radius its room. */
        @Test
        void fromAmongThemTheyStandWhereTheyLeaveItRoom() throws UnusableShape {
            Setting setting = setting(blocks(), AMONG);
            Span span =
                    new VaneRoom(BETWEEN, 8).of(Span.anywhere(8), AMONG, RADIUS).get(0);
            double[] from = span.pieces(Math.toRadians(2.5)).stream()
                    .mapToDouble(Math::toDegrees)
                    .toArray();
            List<Ring> rings = pieces(8, 2.5, from);

            assertThat(from).hasSizeBetween(10, 13);
            same(setting.surely(AMONG, CRITERIA).get(0), pastEach(alone(blocks()), rings, false, AMONG));
            assertThat(setting.between(AMONG).get(0).rings()).isEqualTo(rings);
        }

        @Test
        void ofTwoOfThemTheScopeTipsOwnIsToldApart() throws UnusableShape {
            Blocks two = new Blocks()
                    .row("own", RowKind.ROTOR, 6, OWN)
                    .row("first", RowKind.STATOR, 10, -8, -4, 1, 19, 24)
                    .row("other", RowKind.STATOR, 8, OTHER);

            List<Ring> rings = setting(two, AMONG).between(AMONG).get(1).rings();
            assertThat(rings).isNotEmpty();
            same(
                    setting(two, AMONG).surely(AMONG, CRITERIA).get(0),
                    pastEach(alone(two).withSwept(Blocks.box(-8, -4, 1, 19, 24)), rings, false, AMONG));
            assertThat(setting(two, AMONG).between(AMONG).get(0).rings()).isEmpty();

            // From ahead the first of them is told apart, in 18 pieces of 2°.
            Mesh first = Smear.of(Blocks.box(-8, -4, 1, 19, 24), Math.toRadians(2));
            List<Ring> places = IntStream.range(0, 18)
                    .mapToObj(i -> new Ring(first, 10, Turn.ofDegrees(2 * i)))
                    .toList();
            same(
                    setting(two, AHEAD).surely(AHEAD, CRITERIA).get(0),
                    pastEach(alone(two).withSwept(BETWEEN), places, false, AHEAD));
        }
    }

    @Nested
    class VanesPastVanesOfAnUnknownPlace {

        private Blocks blocks() {
            return new Blocks().row("own", RowKind.STATOR, 6, phase(5), OWN).row("other", RowKind.STATOR, 8, OTHER);
        }

        @Test
        void theyKeepTheirPlaceToTheVanesAndAreAlikeRoundEach() throws UnusableShape {
            Setting setting = setting(blocks(), AHEAD);
            double[] from = IntStream.range(0, 18).mapToDouble(i -> 2.5 * i).toArray();

            assertThat(setting.surely(AHEAD, CRITERIA)).hasSize(1);
            same(setting.surely(AHEAD, CRITERIA).get(0), pastEach(alone(blocks()), pieces(8, 2.5, from), true, AHEAD));
            assertThat(setting.between(AHEAD).get(0).turns()).isTrue();
        }

        /** Own ones stand at 5°, the others from 10° to 14° of the engine, which is 5° to 9° after the first own one. */
        @Test
        void ofASmallDoubtTheyAreOfKindsAgain() throws UnusableShape {
            Blocks known = blocks().known("other", place(10, 14));
            List<List<ArcSet>> kinds = setting(known, AHEAD).surely(AHEAD, CRITERIA);

            assertThat(kinds).hasSize(3);
            for (int kind = 0; kind < 3; kind++) {
                List<Ring> rings = pieces(8, 2.5, 5 - 60 * kind, 6.5 - 60 * kind);
                same(kinds.get(kind), pastEach(alone(known), rings, true, AHEAD));
            }
        }

        /** Either may be off by as much: 10° to 14° less 4° to 5° is 5° to 10°. */
        @Test
        void theDoubtOfBothAddsUp() throws UnusableShape {
            Blocks known = new Blocks()
                    .row("own", RowKind.STATOR, 8, OWN)
                    .row("other", RowKind.STATOR, 8, OTHER)
                    .known("own", place(4, 5))
                    .known("other", place(10, 14));

            same(
                    setting(known, AHEAD).surely(AHEAD, CRITERIA).get(0),
                    pastEach(alone(known), pieces(8, 2.5, 5, 7.5), true, AHEAD));
        }

        /** 32 kinds of two pieces each are told apart, 33 kinds are not: at most 64 ways. */
        @ParameterizedTest
        @CsvSource({"32, 2", "33, 1"})
        void ofTooManyWaysTheDoubtIsTakenAsAWhole(int own, int ways) throws UnusableShape {
            Blocks many = new Blocks()
                    .row("own", RowKind.STATOR, own, phase(0), 0, 10, 0.5, 20, 30)
                    .row("other", RowKind.STATOR, 7, -20, -12, 1, 19, 31)
                    .known("other", place(10, 15));

            assertThat(setting(many, AHEAD).others().ways(AHEAD)).hasSize(own * ways);
        }

        /** The scope tip is moved from vane to vane past those among which it stands: only what shows past all of them is sure. */
        @Test
        void fromAmongThemOnlyWhatShowsWhereverTheyStandIsSure() throws UnusableShape {
            Setting setting = setting(blocks(), AMONG);
            Setting.Between between = setting.between(AMONG).get(0);
            List<SightArcs> ways = SightArcs.compute(
                            setting.scene(), Standings.of(List.of(AMONG), setting.others()), CRITERIA, Progress.NONE)
                    .get(0);

            assertThat(ways).hasSize(1);
            assertThat(between.turns()).isFalse();
            assertThat(between.rings()).hasSizeBetween(10, 13);
            SightScene past = alone(blocks());
            for (Ring ring : between.rings()) {
                past = past.withFixed(ring);
            }
            assertThat(measure(arcs(past, AMONG))).isPositive();
            same(setting.surely(AMONG, CRITERIA).get(0), arcs(past, AMONG));
        }
    }
}
