package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import everyblade.spi.Window;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Twelve blades, roots and tips, of which a window shows the roots alone: a cell is in sight as a whole or not at all. */
class DeclaredCellsTest {

    private static final ZoneSet ROOT = new ZoneSet(1);
    private static final ZoneSet TIP = new ZoneSet(2);
    private static final ZoneSet BOTH = new ZoneSet(3);

    private static Job job(double play, String... lines) {
        return new Job(new Engines()
                        .row("c1", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                        .view("roots", "c1", 0, 2, "root")
                        .pad("pad", Ratio.ONE, play, 0, 0)
                        .built())
                .enter("view roots", "datum c1 1")
                .enter(lines);
    }

    private final Job exact = job(0, "turn 90");
    private final RowCoverage row = exact.coverage().row("c1");

    @Nested
    class OfOneBlade {

        @Test
        void haveTheShareOfCells() {
            assertThat(row.areas(1, 0)).isEqualTo(new Areas(1, 1, 1));
            assertThat(row.areas(1, 1)).isEqualTo(new Areas(0, 0, 0));
            assertThat(row.areas(2, 0)).isEqualTo(new Areas(1, 0, 0));
            RowCoverage loose = job(4, "turn 90").coverage().row("c1");
            assertThat(loose.state(10, 0)).isEqualTo(State.MAYBE);
            assertThat(loose.areas(10, 0)).isEqualTo(new Areas(1, 0, 1));
        }

        @Test
        void areDoneByTheZoneThatIsSeen() {
            BitSet roots = new BitSet();
            roots.set(0);
            assertThat(row.surely(1)).isEqualTo(roots);
            assertThat(row.surely(2)).isEqualTo(new BitSet());
            assertThat(row.wholly(1)).isEqualTo(new BitSet());
            assertThat(row.doneBy(2, 0, roots, new BitSet())).isTrue();
            assertThat(row.doneBy(2, 1, roots, new BitSet())).isFalse();
        }

        @Test
        void haveNoEdgeAndNothingThatHidesThem() {
            assertThat(row.lacksEdgeAlone(1, 0)).isFalse();
            assertThat(row.lacksEdgeAlone(2, 0)).isFalse();
            assertThat(row.why(1, 1)).contains(Why.NO_ACCESS);
            assertThat(row.hindrance(1, 1)).isEmpty();
            assertThat(row.reach()).isEmpty();
            assertThat(row.seen(1, 0)).isZero();
        }
    }

    @Nested
    class OfAllBlades {

        @Test
        void haveTheMeanShareAndAsMuchSurfaceAsThereAreCells() {
            assertThat(row.areas(BOTH)).isEqualTo(new Areas(0.5, 4 / 24.0, 4 / 24.0));
            assertThat(row.areas(ROOT)).isEqualTo(new Areas(1, 4 / 12.0, 4 / 12.0));
            assertThat(row.areas(TIP)).isEqualTo(new Areas(0, 0, 0));
            assertThat(row.areas(ZoneSet.NONE)).isEqualTo(new Areas(0, 0, 0));
            assertThat(row.surface(BOTH)).isEqualTo(24);
            assertThat(row.surface(ROOT)).isEqualTo(12);
        }

        @Test
        void areCountedByZones() {
            assertThat(row.tally(ROOT).seen()).isEqualTo(4);
            assertThat(row.tally(ROOT).cells()).isEqualTo(12);
            assertThat(row.tally(TIP).noAccess()).isEqualTo(12);
            assertThat(row.tally(1, BOTH).cells()).isEqualTo(2);
            assertThat(row.headline(ROOT)).isEqualTo(new Headline(8, 12, 4 / 12.0, 0));
            assertThat(row.cells()).isEqualTo(24);
            assertThat(row.declaredCells()).as("beside what is computed").isZero();
        }
    }

    @Test
    void areAskedForAllUnlessTheTaskSaysWhich() {
        assertThat(row.asked()).isEqualTo(BOTH);
        assertThat(exact.enter("ask c1 root").coverage().row("c1").asked()).isEqualTo(ROOT);
    }

    @Test
    void ofNothingWithinReachNothingIsSeen() {
        assertThat(new Areas(0, 0, 0).seenOfReach()).isZero();
        assertThat(new Areas(0.5, 0.25, 0.25).seenOfReach()).isEqualTo(0.5);
    }

    @Test
    void theWindowsOfOtherRowsShowNothingOfThem() {
        Coverage coverage = new Job(new Engines()
                        .row("c1", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                        .row("c2", RowKind.ROTOR, 14, Direction.CW, 2, List.of(), false, 0)
                        .view("roots", "c1", 0, 2, "root")
                        .view("all", "c2", 0, 2)
                        .built())
                .coverage();
        assertThat(coverage.row("c1").why(1, 1)).contains(Why.NO_ACCESS);
        assertThat(coverage.row("c1").why(1, 0)).contains(Why.SKIPPED);
        assertThat(coverage.row("c2").tally(BOTH).noAccess()).isZero();
    }

    @Nested
    class InAnEngineOfSeveralRows {

        private final ShapedEngine engine = new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .row("q", RowKind.ROTOR, 18, 20, 60)
                .window("w", "q", 10);

        /** A view of stations shows what is computed, whatever a window of its own would declare. */
        @Test
        void theWindowOfAViewWithStationsDeclaresNothing() {
            ShapedEngine both = engine.view(
                    "v",
                    "r",
                    "fwd60",
                    Optional.of(new Window(10, List.of("all"))),
                    ShapedEngine.station("s", -15, 135, new Heading(1, 0.3, -0.3), 0, 0));
            RowCoverage seen = new Job(both.built())
                    .enter("view v", "datum r 1", "turn 360")
                    .coverage()
                    .row("r");
            assertThat(seen.basis()).isEqualTo(Basis.COMPUTED);
            assertThat(seen.declaredCells()).isZero();
        }

        @Test
        void whatIsComputedLeads() {
            Coverage declared = new Job(engine.built()).coverage();
            assertThat(declared.leading()).isEqualTo(Basis.DECLARED);
            Coverage both = new Job(
                            engine.view("v", "r", ShapedEngine.station("s", -15, 135, new Heading(1, 0.3, -0.3), 0, 0))
                                    .built())
                    .coverage();
            assertThat(both.leading()).isEqualTo(Basis.COMPUTED);
            assertThat(both.tally().cells()).isEqualTo(20 * 12 + 18 * 12);
            assertThat(both.tally(Basis.DECLARED).cells()).isEqualTo(18 * 12);
        }
    }

    @Test
    void aCountThatWasFoundLostIsTold() {
        assertThat(exact.coverage().lostCount()).isFalse();
        assertThat(exact.enter("here 10 ± 0").coverage().lostCount()).isFalse();
        assertThat(exact.enter("turn 90", "here 9 ± 0").coverage().lostCount()).isTrue();
    }

    @Test
    void theWordsOfReasonsAndStatesInFilesStay() {
        assertThat(IntStream.range(0, Why.values().length).mapToObj(i -> Why.values()[i].word()))
                .containsExactly(
                        "skipped",
                        "not watched",
                        "noAccess",
                        "coarse",
                        "edge",
                        "fast",
                        "count lost",
                        "slip",
                        "play",
                        "placement");
        assertThat(State.UNSEEN.word()).isEqualTo("unseen");
        assertThat(List.of(Why.values()).stream().filter(Why::outOfReach)).containsExactly(Why.NO_ACCESS, Why.COARSE);
        assertThat(List.of(State.values()).stream().filter(State::isDone)).containsExactly(State.SEEN, State.PART);
    }
}
