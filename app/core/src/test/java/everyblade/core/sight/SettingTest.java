package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowBuilder;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A row of boxes at x from 0 to 10 and a row of others before it at x from −20 to −12, in the eye of a scope tip ahead of both
 * or among the others. What is in sight past them is what is in sight past a ring at each place where they may stand.
 */
class SettingTest {

    private static final double[] OWN = {0, 10, 3, 20, 30};
    private static final double[] OTHER = {-20, -12, 1.5, 19, 31};
    private static final Mesh BETWEEN = Blocks.box(-20, -12, 1.5, 19, 31);
    private static final double RADIUS = 2;
    private static final Criteria CRITERIA = Plates.FACING;

    private final Pose ahead = Plates.cone(Plates.pose(-35, 26, 10, 1, 0, 0), 120);
    /** Half-way between two of eight vanes, one of which stands at clock 0. */
    private final Pose among = Plates.cone(Plates.pose(-16, 25, 22.5, 1, 0, 0), 150);

    private static UnaryOperator<RowBuilder> phase(double degrees) {
        return row -> row.phase(degrees);
    }

    private static Place place(double low, double high) {
        return new Place(Turn.ofDegrees(low), Turn.ofDegrees(high), Turn.ofDegrees((low + high) / 2));
    }

    private static Setting setting(Blocks blocks, Pose pose) throws UnusableShape {
        ViewScene engine = blocks.scene();
        Row row = engine.model().row("own").orElseThrow();
        return Setting.of(engine, engine.ring(row).orElseThrow(), row, pose, 0, RADIUS);
    }

    private static SightScene alone(Blocks blocks) throws UnusableShape {
        ViewScene engine = blocks.scene();
        return engine.ring(engine.model().row("own").orElseThrow()).orElseThrow();
    }

    private static List<ArcSet> arcs(SightScene scene, Pose pose) {
        SightArcs sight = Plates.sight(scene, pose, CRITERIA);
        return IntStream.range(0, sight.facetCount()).mapToObj(sight::arcs).toList();
    }

    /** What is in sight past each of these rings alike. */
    private static List<ArcSet> pastEach(SightScene alone, List<Ring> rings, boolean turning, Pose pose) {
        List<ArcSet> left = null;
        for (Ring ring : rings) {
            List<ArcSet> past = arcs(turning ? alone.withMate(ring) : alone.withFixed(ring), pose);
            List<ArcSet> before = left == null ? past : left;
            left = IntStream.range(0, past.size())
                    .mapToObj(facet -> before.get(facet).intersection(past.get(facet)))
                    .toList();
        }
        return left;
    }

    /** Rings of all places in a piece, from these clock angles on, degrees. */
    private static List<Ring> pieces(int count, double piece, double... from) {
        Mesh smear = Smear.of(BETWEEN, Math.toRadians(piece));
        return DoubleStream.of(from)
                .mapToObj(clock -> new Ring(smear, count, Turn.ofDegrees(clock).wrapped()))
                .toList();
    }

    private static double measure(List<ArcSet> arcs) {
        return arcs.stream().mapToLong(ArcSet::measure).sum();
    }

    private static void same(List<ArcSet> one, List<ArcSet> other) {
        assertThat(one).hasSameSizeAs(other);
        for (int facet = 0; facet < one.size(); facet++) {
            assertThat(one.get(facet).difference(other.get(facet)).measure()
                            + other.get(facet).difference(one.get(facet)).measure())
                    .as("facet %d: %s and %s", facet, one.get(facet), other.get(facet))
                    .isLessThan(100);
        }
    }

    @Nested
    class PastARowThatTurns {

        private final Blocks blocks =
                new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.ROTOR, 8, OTHER);

        @Test
        void allThatItSweepsHides() throws UnusableShape {
            Setting setting = setting(blocks, ahead);

            assertThat(setting.surely(ahead, CRITERIA)).hasSize(1);
            same(setting.surely(ahead, CRITERIA).get(0), arcs(alone(blocks).withSwept(BETWEEN), ahead));
            assertThat(setting.between(ahead)).singleElement().satisfies(between -> {
                assertThat(between.row().id()).isEqualTo("other");
                assertThat(between.rings()).isEmpty();
                assertThat(between.sure()).isFalse();
                assertThat(between.turns()).isFalse();
            });
        }
    }

    @Nested
    class PastVanesOfAKnownPlace {

        private Blocks blades(double clock) {
            return new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.STATOR, 8, phase(clock), OTHER);
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, 13, 44})
        void bladesAreSeenPastThemWhereTheyStand(double clock) throws UnusableShape {
            Setting setting = setting(blades(clock), ahead);
            Ring ring = new Ring(BETWEEN, 8, Turn.ofDegrees(clock));

            List<ArcSet> past = setting.surely(ahead, CRITERIA).get(0);
            same(past, arcs(alone(blades(clock)).withFixed(ring), ahead));
            assertThat(measure(past)).isPositive().isLessThan(measure(arcs(alone(blades(clock)), ahead)));
            assertThat(setting.between(ahead)).singleElement().satisfies(between -> {
                assertThat(between.sure()).isTrue();
                assertThat(between.turns()).isFalse();
                assertThat(between.rings()).singleElement().satisfies(one -> {
                    assertThat(one.count()).isEqualTo(8);
                    assertThat(one.offset().degrees()).isCloseTo(clock, within(1e-9));
                });
            });
        }

        /** The journal is asked where the maker says nothing. */
        @Test
        void theMakerHasTheWordBeforeTheJournal() throws UnusableShape {
            Blocks both = blades(13).known("other", place(20, 20));
            Blocks journal = new Blocks()
                    .row("own", RowKind.ROTOR, 6, OWN)
                    .row("other", RowKind.STATOR, 8, OTHER)
                    .known("other", place(20, 20));

            assertThat(setting(both, ahead)
                            .between(ahead)
                            .get(0)
                            .rings()
                            .get(0)
                            .offset()
                            .degrees())
                    .isCloseTo(13, within(1e-9));
            assertThat(setting(journal, ahead)
                            .between(ahead)
                            .get(0)
                            .rings()
                            .get(0)
                            .offset()
                            .degrees())
                    .isCloseTo(20, within(1e-9));
        }

        @ParameterizedTest
        @CsvSource({"12, 27, 4", "12, 24, 1", "12, 36, 1", "12, 6, 2", "6, 8, 3", "12, 10, 6"})
        void vanesAreOfAsManyKindsAsTheCountsTell(int own, int other, int kinds) throws UnusableShape {
            Setting setting = setting(vanes(own, other), ahead);

            assertThat(setting.surely(ahead, CRITERIA)).hasSize(kinds);
            for (int n = 1; n <= own; n++) {
                assertThat(setting.kind(n)).isEqualTo((n - 1) % kinds);
            }
        }

        private Blocks vanes(int own, int other) {
            double[] slim = {0, 10, 1, 20, 30};
            return new Blocks()
                    .row("own", RowKind.STATOR, own, phase(5), slim)
                    .row("other", RowKind.STATOR, other, phase(12), -20, -12, 0.5, 19, 31);
        }

        @Test
        void kindsCountTheOtherWayWhereNumbersRiseAnticlockwise() throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("own", RowKind.STATOR, 6, row -> row.phase(5).numbering(Direction.CCW), OWN)
                    .row("other", RowKind.STATOR, 8, phase(12), OTHER);

            assertThat(IntStream.rangeClosed(1, 6).map(setting(blocks, ahead)::kind))
                    .containsExactly(0, 2, 1, 0, 2, 1);
        }

        /** Of own vanes at 5° and others at 12° the others stand 7° after the first, and by as much less after each further one. */
        @Test
        void eachKindIsSeenPastThemWhereTheyStandToIt() throws UnusableShape {
            Blocks blocks = vanes(6, 8);
            Setting setting = setting(blocks, ahead);

            List<List<ArcSet>> kinds = setting.surely(ahead, CRITERIA);
            for (int kind = 0; kind < 3; kind++) {
                Ring ring = new Ring(
                        Blocks.box(-20, -12, 0.5, 19, 31),
                        8,
                        Turn.ofDegrees(7 - 60 * kind).wrapped());
                same(kinds.get(kind), arcs(alone(blocks).withMate(ring), ahead));
            }
            assertThat(kinds.get(0)).isNotEqualTo(kinds.get(1));
            assertThat(setting.between(ahead)).singleElement().satisfies(between -> {
                assertThat(between.sure()).isTrue();
                assertThat(between.turns()).isTrue();
                assertThat(between.rings().get(0).offset().degrees()).isCloseTo(7, within(1e-9));
            });
        }

        @Test
        void severalSuchRowsMakeAsManyKindsAsTheyTogetherTell() throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("own", RowKind.STATOR, 12, phase(0), 0, 10, 1, 20, 30)
                    .row("other", RowKind.STATOR, 27, phase(3), -20, -18, 0.3, 19, 31)
                    .row("third", RowKind.STATOR, 8, phase(9), -16, -12, 0.3, 19, 31);
            Setting setting = setting(blocks, ahead);

            List<List<ArcSet>> kinds = setting.surely(ahead, CRITERIA);
            assertThat(kinds).hasSize(12);
            for (int kind = 0; kind < 12; kind += 5) {
                SightScene past = alone(blocks)
                        .withMate(new Ring(
                                Blocks.box(-20, -18, 0.3, 19, 31),
                                27,
                                Turn.ofDegrees(3 - 30 * kind).wrapped()))
                        .withMate(new Ring(
                                Blocks.box(-16, -12, 0.3, 19, 31),
                                8,
                                Turn.ofDegrees(9 - 30 * kind).wrapped()));
                same(kinds.get(kind), arcs(past, ahead));
            }
            assertThat(setting.between(ahead))
                    .extracting(between -> between.row().id())
                    .containsExactly("other", "third");
        }
    }

    @Nested
    class BladesPastVanesOfAnUnknownPlace {

        private Blocks blocks() {
            return new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.STATOR, 8, OTHER);
        }

        /** From ahead they may stand anywhere in their pitch of 45°: in each of 18 pieces of 2.5° for itself. */
        @Test
        void whatIsSureIsInSightPastEachPieceOfAPitch() throws UnusableShape {
            Setting setting = setting(blocks(), ahead);
            double[] from = IntStream.range(0, 18).mapToDouble(i -> 2.5 * i).toArray();

            same(setting.surely(ahead, CRITERIA).get(0), pastEach(alone(blocks()), pieces(8, 2.5, from), false, ahead));
            assertThat(setting.others().ways(ahead)).hasSize(18);
            assertThat(setting.between(ahead)).singleElement().satisfies(between -> {
                assertThat(between.rings()).as("all that it sweeps").isEmpty();
                assertThat(between.sure()).isFalse();
                assertThat(between.turns()).isFalse();
            });
        }

        /** From 10° to 16° is three pieces of 2.5°, which lie over each other. */
        @Test
        void ofADoubtSmallerThanAPitchOnlyItsPieces() throws UnusableShape {
            Blocks known = blocks().known("other", place(10, 16));
            Setting setting = setting(known, ahead);

            List<Ring> rings = pieces(8, 2.5, 10, 11.75, 13.5);
            same(setting.surely(ahead, CRITERIA).get(0), pastEach(alone(known), rings, false, ahead));
            assertThat(setting.between(ahead).get(0).rings())
                    .extracting(ring -> ring.offset().degrees())
                    .satisfies(offsets -> {
                        assertThat(offsets).hasSize(3);
                        assertThat(offsets.get(0)).isCloseTo(10, within(1e-9));
                        assertThat(offsets.get(1)).isCloseTo(11.75, within(1e-9));
                        assertThat(offsets.get(2)).isCloseTo(13.5, within(1e-9));
                    });
            assertThat(setting.between(ahead).get(0).sure()).isFalse();
        }

        /** A doubt of 2° is one piece of its own. */
        @Test
        void ofADoubtSmallerThanAPieceItAlone() throws UnusableShape {
            Blocks known = blocks().known("other", place(10, 12));

            same(
                    setting(known, ahead).surely(ahead, CRITERIA).get(0),
                    arcs(alone(known).withFixed(pieces(8, 2, 10).get(0)), ahead));
        }

        /** Among them they stand where they leave a scope tip of 2 mm radius its room. */
        @Test
        void fromAmongThemTheyStandWhereTheyLeaveItRoom() throws UnusableShape {
            Setting setting = setting(blocks(), among);
            Span span =
                    new VaneRoom(BETWEEN, 8).of(Span.anywhere(8), among, RADIUS).get(0);
            double[] from = span.pieces(Math.toRadians(2.5)).stream()
                    .mapToDouble(Math::toDegrees)
                    .toArray();
            List<Ring> rings = pieces(8, 2.5, from);

            assertThat(from).hasSizeBetween(10, 13);
            same(setting.surely(among, CRITERIA).get(0), pastEach(alone(blocks()), rings, false, among));
            assertThat(setting.between(among).get(0).rings()).isEqualTo(rings);
        }

        @Test
        void ofTwoOfThemTheScopeTipsOwnIsToldApart() throws UnusableShape {
            Blocks two = new Blocks()
                    .row("own", RowKind.ROTOR, 6, OWN)
                    .row("first", RowKind.STATOR, 10, -8, -4, 1, 19, 24)
                    .row("other", RowKind.STATOR, 8, OTHER);

            List<Ring> rings = setting(two, among).between(among).get(1).rings();
            assertThat(rings).isNotEmpty();
            same(
                    setting(two, among).surely(among, CRITERIA).get(0),
                    pastEach(alone(two).withSwept(Blocks.box(-8, -4, 1, 19, 24)), rings, false, among));
            assertThat(setting(two, among).between(among).get(0).rings()).isEmpty();

            // From ahead the first of them is told apart, in 18 pieces of 2°.
            Mesh first = Smear.of(Blocks.box(-8, -4, 1, 19, 24), Math.toRadians(2));
            List<Ring> places = IntStream.range(0, 18)
                    .mapToObj(i -> new Ring(first, 10, Turn.ofDegrees(2 * i)))
                    .toList();
            same(
                    setting(two, ahead).surely(ahead, CRITERIA).get(0),
                    pastEach(alone(two).withSwept(BETWEEN), places, false, ahead));
        }
    }

    @Nested
    class VanesPastVanesOfAnUnknownPlace {

        private Blocks blocks() {
            return new Blocks().row("own", RowKind.STATOR, 6, phase(5), OWN).row("other", RowKind.STATOR, 8, OTHER);
        }

        @Test
        void theyKeepTheirPlaceToTheVanesAndAreAlikeRoundEach() throws UnusableShape {
            Setting setting = setting(blocks(), ahead);
            double[] from = IntStream.range(0, 18).mapToDouble(i -> 2.5 * i).toArray();

            assertThat(setting.surely(ahead, CRITERIA)).hasSize(1);
            same(setting.surely(ahead, CRITERIA).get(0), pastEach(alone(blocks()), pieces(8, 2.5, from), true, ahead));
            assertThat(setting.between(ahead).get(0).turns()).isTrue();
        }

        /** Own ones stand at 5°, the others from 10° to 14° of the engine, which is 5° to 9° after the first own one. */
        @Test
        void ofASmallDoubtTheyAreOfKindsAgain() throws UnusableShape {
            Blocks known = blocks().known("other", place(10, 14));
            List<List<ArcSet>> kinds = setting(known, ahead).surely(ahead, CRITERIA);

            assertThat(kinds).hasSize(3);
            for (int kind = 0; kind < 3; kind++) {
                List<Ring> rings = pieces(8, 2.5, 5 - 60 * kind, 6.5 - 60 * kind);
                same(kinds.get(kind), pastEach(alone(known), rings, true, ahead));
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
                    setting(known, ahead).surely(ahead, CRITERIA).get(0),
                    pastEach(alone(known), pieces(8, 2.5, 5, 7.5), true, ahead));
        }

        /** 32 kinds of two pieces each are told apart, 33 kinds are not: at most 64 ways. */
        @ParameterizedTest
        @CsvSource({"32, 2", "33, 1"})
        void ofTooManyWaysTheDoubtIsTakenAsAWhole(int own, int ways) throws UnusableShape {
            Blocks many = new Blocks()
                    .row("own", RowKind.STATOR, own, phase(0), 0, 10, 0.5, 20, 30)
                    .row("other", RowKind.STATOR, 7, -20, -12, 1, 19, 31)
                    .known("other", place(10, 15));

            assertThat(setting(many, ahead).others().ways(ahead)).hasSize(own * ways);
        }

        /** The scope tip is moved from vane to vane past those among which it stands: only what shows past all of them is sure. */
        @Test
        void fromAmongThemOnlyWhatShowsWhereverTheyStandIsSure() throws UnusableShape {
            Setting setting = setting(blocks(), among);
            Setting.Between between = setting.between(among).get(0);
            List<SightArcs> ways = SightArcs.compute(
                            setting.scene(), Standings.of(List.of(among), setting.others()), CRITERIA, Progress.NONE)
                    .get(0);

            assertThat(ways).hasSize(1);
            assertThat(between.turns()).isFalse();
            assertThat(between.rings()).hasSizeBetween(10, 13);
            SightScene past = alone(blocks());
            for (Ring ring : between.rings()) {
                past = past.withFixed(ring);
            }
            assertThat(measure(arcs(past, among))).isPositive();
            same(setting.surely(among, CRITERIA).get(0), arcs(past, among));
        }
    }

    @Nested
    class WhetherTheyHideAnything {

        private boolean hides(double... box) throws UnusableShape {
            Blocks blocks = new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.STATOR, 8, box);
            return setting(blocks, ahead).hidesSomewhere(ahead, CRITERIA);
        }

        @Test
        void theyDoIfTheyStandInTheWayAnywhere() throws UnusableShape {
            assertThat(hides(OTHER)).isTrue();
        }

        @Test
        void theyDoNotFarOut() throws UnusableShape {
            assertThat(hides(-20, -12, 1.5, 60, 70)).isFalse();
        }
    }

    @Test
    void whatIsLeftPastThemIsWhatTheyLeaveEveryAirfoil() throws UnusableShape {
        Blocks blocks = new Blocks()
                .row("own", RowKind.STATOR, 6, phase(5), OWN)
                .row("other", RowKind.STATOR, 8, phase(12), OTHER);
        ViewScene engine = blocks.scene();
        Row row = engine.model().row("own").orElseThrow();
        SightScene ring = engine.ring(row).orElseThrow();
        SightArcs alone = Plates.sight(ring, ahead, CRITERIA);

        InTheWay inTheWay = InTheWay.of(engine, ring, alone, row, ahead, RADIUS, CRITERIA);

        List<Ring> rings = new ArrayList<>();
        for (int kind = 0; kind < 3; kind++) {
            rings.add(new Ring(BETWEEN, 8, Turn.ofDegrees(7 - 60 * kind).wrapped()));
        }
        same(inTheWay.left(), pastEach(ring, rings, true, ahead));
        assertThat(measure(inTheWay.left())).isPositive();
        assertThat(inTheWay.rows()).extracting(Row::id).containsExactly("other");
    }
}
