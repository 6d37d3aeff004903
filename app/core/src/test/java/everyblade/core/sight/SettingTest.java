package everyblade.core.sight;

import static everyblade.core.sight.PastBoxes.AHEAD;
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
import static everyblade.core.sight.PastBoxes.place;
import static everyblade.core.sight.PastBoxes.same;
import static everyblade.core.sight.PastBoxes.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Turn;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A row past others that turn, or stand where it is known. */
class SettingTest {

    @Nested
    class PastARowThatTurns {

        private final Blocks blocks =
                new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.ROTOR, 8, OTHER);

        @Test
        void allThatItSweepsHides() throws UnusableShape {
            Setting setting = setting(blocks, AHEAD);

            assertThat(setting.surely(AHEAD, CRITERIA)).hasSize(1);
            same(setting.surely(AHEAD, CRITERIA).get(0), arcs(alone(blocks).withSwept(BETWEEN), AHEAD));
            assertThat(setting.between(AHEAD)).singleElement().satisfies(between -> {
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
            Setting setting = setting(blades(clock), AHEAD);
            Ring ring = new Ring(BETWEEN, 8, Turn.ofDegrees(clock));

            List<ArcSet> past = setting.surely(AHEAD, CRITERIA).get(0);
            same(past, arcs(alone(blades(clock)).withFixed(ring), AHEAD));
            assertThat(measure(past)).isPositive().isLessThan(measure(arcs(alone(blades(clock)), AHEAD)));
            assertThat(setting.between(AHEAD)).singleElement().satisfies(between -> {
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

            assertThat(setting(both, AHEAD)
                            .between(AHEAD)
                            .get(0)
                            .rings()
                            .get(0)
                            .offset()
                            .degrees())
                    .isCloseTo(13, within(1e-9));
            assertThat(setting(journal, AHEAD)
                            .between(AHEAD)
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
            Setting setting = setting(vanes(own, other), AHEAD);

            assertThat(setting.surely(AHEAD, CRITERIA)).hasSize(kinds);
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

            assertThat(IntStream.rangeClosed(1, 6).map(setting(blocks, AHEAD)::kind))
                    .containsExactly(0, 2, 1, 0, 2, 1);
        }

        /** Of own vanes at 5° and others at 12° the others stand 7° after the first, and by as much less after each further one. */
        @Test
        void eachKindIsSeenPastThemWhereTheyStandToIt() throws UnusableShape {
            Blocks blocks = vanes(6, 8);
            Setting setting = setting(blocks, AHEAD);

            List<List<ArcSet>> kinds = setting.surely(AHEAD, CRITERIA);
            for (int kind = 0; kind < 3; kind++) {
                Ring ring = new Ring(
                        Blocks.box(-20, -12, 0.5, 19, 31),
                        8,
                        Turn.ofDegrees(7 - 60 * kind).wrapped());
                same(kinds.get(kind), arcs(alone(blocks).withMate(ring), AHEAD));
            }
            assertThat(kinds.get(0)).isNotEqualTo(kinds.get(1));
            assertThat(setting.between(AHEAD)).singleElement().satisfies(between -> {
                assertThat(between.sure()).isTrue();
                assertThat(between.turns()).isTrue();
                assertThat(between.rings().get(0).offset().degrees()).isCloseTo(7, within(1e-9));
            });
        }

        @ParameterizedTest
        @CsvSource({"27, 8, 12", "27, 6, 4", "8, 9, 12", "6, 24, 2"})
        void ofTwoSuchRowsKindsAreAsManyAsGoIntoBoth(int first, int second, int kinds) throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("own", RowKind.STATOR, 12, phase(0), 0, 10, 1, 20, 30)
                    .row("other", RowKind.STATOR, first, phase(3), -20, -18, 0.3, 19, 31)
                    .row("third", RowKind.STATOR, second, phase(9), -16, -12, 0.3, 19, 31);

            assertThat(setting(blocks, AHEAD).others().kinds()).isEqualTo(kinds);
        }

        @Test
        void severalSuchRowsMakeAsManyKindsAsTheyTogetherTell() throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("own", RowKind.STATOR, 12, phase(0), 0, 10, 1, 20, 30)
                    .row("other", RowKind.STATOR, 27, phase(3), -20, -18, 0.3, 19, 31)
                    .row("third", RowKind.STATOR, 8, phase(9), -16, -12, 0.3, 19, 31);
            Setting setting = setting(blocks, AHEAD);

            List<List<ArcSet>> kinds = setting.surely(AHEAD, CRITERIA);
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
                same(kinds.get(kind), arcs(past, AHEAD));
            }
            assertThat(setting.between(AHEAD))
                    .extracting(between -> between.row().id())
                    .containsExactly("other", "third");
        }
    }

    @Nested
    class WhetherTheyHideAnything {

        private boolean hides(double... box) throws UnusableShape {
            Blocks blocks = new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.STATOR, 8, box);
            return setting(blocks, AHEAD).hidesSomewhere(AHEAD, CRITERIA);
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
        SightArcs alone = Plates.sight(ring, AHEAD, CRITERIA);

        InTheWay inTheWay = InTheWay.of(engine, ring, alone, row, AHEAD, RADIUS, CRITERIA);

        List<Ring> rings = new ArrayList<>();
        for (int kind = 0; kind < 3; kind++) {
            rings.add(new Ring(BETWEEN, 8, Turn.ofDegrees(7 - 60 * kind).wrapped()));
        }
        same(inTheWay.left(), pastEach(ring, rings, true, AHEAD));
        assertThat(measure(inTheWay.left())).isPositive();
        assertThat(inTheWay.rows()).extracting(Row::id).containsExactly("other");
    }
}
