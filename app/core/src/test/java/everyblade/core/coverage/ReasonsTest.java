package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.gap.ToldGap;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why a cell is not seen is true, and is the same wherever it is told. */
class ReasonsTest {

    /** Two stations some way apart, so that each shows what the other does not. */
    private static final Station FORE = ShapedEngine.station("fore", -15, 135, new Heading(1, 0.3, -0.3), 0, 0);

    private static final Station AFT = ShapedEngine.station("aft", 45, 120, new Heading(-1, 0.3, 0.2), 0, 0);

    private static Job windows(double play) {
        return new Job(new Engines()
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.<ChordBand>of(), false, 0)
                .view("v", "c1", 0, 2)
                .pad("pad", Ratio.ONE, play, 0, 0)
                .built());
    }

    private static Job stations(Station... stations) {
        return new Job(new ShapedEngine()
                .row("c1", RowKind.ROTOR, 20, 35, 0)
                .view("v", "c1", stations)
                .built());
    }

    private static Set<Why> reasons(Job job, State state) {
        RowCoverage row = job.coverage().row("c1");
        return IntStream.rangeClosed(1, row.row().count())
                .boxed()
                .flatMap(n -> IntStream.range(0, row.zoning().size())
                        .filter(zone -> row.state(n, zone) == state)
                        .mapToObj(zone -> row.why(n, zone).orElseThrow()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Why.class)));
    }

    @Nested
    class WhatWasWatchedAfterASlip {

        @ParameterizedTest
        @ValueSource(strings = {"slip", "pause", "takeover B. Mechanic"})
        void isInDoubtForTheSlipAndNotForPlay(String breaking) {
            Job job = windows(1).enter("view v", "datum c1 1", "turn 20 ± 0", breaking, "turn 360");
            assertThat(reasons(job, State.MAYBE)).containsExactly(Why.SLIP);
        }

        @ParameterizedTest
        @ValueSource(strings = {"slip", "pause", "takeover B. Mechanic"})
        void isSoForStationsToo(String breaking) {
            Job job = stations(FORE).enter("view v", "datum c1 1", "look", breaking, "turn 360");
            assertThat(reasons(job, State.MAYBE)).containsExactly(Why.SLIP);
        }

        @Test
        void isInDoubtForPlayWhereItWasWatchedBeforeWithTooMuchOfIt() {
            Job job = windows(3).enter("view v", "datum c1 1", "turn 90", "slip", "turn 360");
            assertThat(job.coverage().row("c1").why(28, 0)).contains(Why.PLAY);
            assertThat(job.coverage().row("c1").why(18, 0)).contains(Why.SLIP);
        }
    }

    @Nested
    class WhatWasTurnedPast {

        @Test
        void isNotWatchedWhereSomethingElseWasBeingWatched() {
            Job job = windows(0).enter("view v", "datum c1 1", "watch root", "turn 90", "skip 270");
            RowCoverage row = job.coverage().row("c1");
            assertThat(row.why(36, 1)).contains(Why.NOT_WATCHED);
            assertThat(row.why(18, 1)).contains(Why.SKIPPED);
            assertThat(row.why(18, 0)).contains(Why.SKIPPED);
        }

        @Test
        void isNotWatchedBeforeAStationToo() {
            Job job = stations(FORE).enter("view v", "datum c1 1", "watch pressure", "turn 90");
            Job watched = stations(FORE).enter("view v", "datum c1 1", "turn 90");
            RowCoverage row = job.coverage().row("c1");
            RowCoverage all = watched.coverage().row("c1");
            int unwatched = 0;
            for (int n = 1; n <= 20; n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    if (row.state(n, zone) == State.UNSEEN
                            && !row.why(n, zone).orElseThrow().outOfReach()) {
                        boolean wouldBe = all.state(n, zone) != State.UNSEEN;
                        assertThat(row.why(n, zone)).contains(wouldBe ? Why.NOT_WATCHED : Why.SKIPPED);
                        unwatched += wouldBe ? 1 : 0;
                    }
                }
            }
            assertThat(unwatched).isPositive();
        }

        /** Where the row may have stood anywhere, nothing in particular came by. */
        @Test
        void isSkippedWhereNobodyKnowsWhatCameBy() {
            for (Job job : List.of(windows(0), stations(FORE))) {
                job.enter("view v", "datum c1 1", "slip", "watch root", "turn 360");
                assertThat(reasons(job, State.UNSEEN))
                        .doesNotContain(Why.NOT_WATCHED)
                        .contains(Why.SKIPPED);
                assertThat(reasons(job, State.MAYBE)).containsExactly(Why.SLIP);
            }
        }
    }

    @Nested
    class WhereTheCountWasLost {

        @Test
        void whatWasWatchedOnTheWayIsInDoubtForThat() {
            for (Job job : List.of(windows(0), stations(FORE))) {
                job.enter("view v", "datum c1 1 ± 0", "turn 90", "here 7 ± 0");
                assertThat(reasons(job, State.MAYBE)).containsExactly(Why.COUNT_LOST);
            }
        }

        @Test
        void whatWasWatchedWithTooMuchPlayBeforeIsInDoubtForThatToo() {
            for (Job job : List.of(
                    windows(3),
                    new Job(new ShapedEngine()
                            .row("c1", RowKind.ROTOR, 20, 35, 0)
                            .play(3)
                            .view("v", "c1", FORE)
                            .built()))) {
                job.enter("view v", "datum c1 1", "turn 90", "view v", "skip 30");
                assertThat(reasons(job, State.MAYBE)).contains(Why.PLAY).doesNotContain(Why.COUNT_LOST);
                job.enter("datum c1 5 ± 0", "turn 90", "here 11 ± 0");
                assertThat(reasons(job, State.MAYBE)).contains(Why.COUNT_LOST);
            }
        }
    }

    @Nested
    class WhatDependsOnTheScopeTip {

        /** The rotor was turned exactly, so nothing is for want of knowing its angle. */
        @Test
        void isNotPlayWhereTheScopeTipWasMovedWhileTheRotorTurned() {
            Job job = stations(FORE, AFT).enter("view v", "datum c1 1", "turn 360 through fore aft");
            assertThat(reasons(job, State.MAYBE)).containsExactly(Why.PLACEMENT);
        }

        @Test
        void isNotPlayWhereEachOfManyPlacesShowsAnotherPart() {
            Station loose = ShapedEngine.station("loose", -15, 135, new Heading(1, 0.3, -0.3), 5, 10);
            Job job = stations(loose, AFT).enter("view v", "datum c1 1", "turn 360", "at aft", "turn 360");
            assertThat(reasons(job, State.MAYBE)).containsExactly(Why.PLACEMENT);
        }

        /** What was seen while the row may have stood anywhere leaves a place to what is better known. */
        @Test
        void isPlacementAlsoWhereTheSameWasSeenAfterASlip() {
            Station loose = ShapedEngine.station("loose", -15, 135, new Heading(1, 0.3, -0.3), 5, 10);
            Job job = stations(loose, AFT).enter("view v", "datum c1 1", "turn 10", "slip", "turn 360");
            assertThat(reasons(job, State.MAYBE)).contains(Why.SLIP);
            job.enter("slip", "here 1", "turn 360");
            assertThat(reasons(job, State.MAYBE)).containsExactly(Why.PLACEMENT);
        }

        @Test
        void isPlayAlsoWhereTheSameWasSeenAfterASlip() {
            Job job = new Job(new ShapedEngine()
                            .row("c1", RowKind.ROTOR, 20, 35, 0)
                            .play(4)
                            .view("v", "c1", FORE)
                            .built())
                    .enter("view v", "datum c1 1", "slip", "turn 360", "slip", "here 1", "turn 90");
            assertThat(reasons(job, State.MAYBE)).contains(Why.SLIP, Why.PLAY);
        }
    }

    @Nested
    class WhatOnlyCoarseViewsShow {

        private final Job job = stations(FORE).set("detail", "0.1").enter("view v", "datum c1 1", "turn 360");

        @Test
        void isTooCoarseAndNeverOutOfAccess() {
            RowCoverage row = job.coverage().row("c1");
            RowCoverage coarse = stations(FORE).coverage().row("c1");
            Tally all = row.tally(row.zoning().all());
            Tally without = coarse.tally(row.zoning().all());
            assertThat(all.coarse()).isPositive();
            assertThat(all.noAccess()).isEqualTo(without.noAccess());
        }

        @Test
        void isWaitedForByNobody() {
            List<Gap> coarse = Gaps.of(job.coverage()).stream()
                    .filter(gap -> gap.why() == Why.COARSE)
                    .toList();
            assertThat(coarse).isNotEmpty().allSatisfy(gap -> {
                assertThat(gap.reach()).isEmpty();
                assertThat(English.say(ToldGap.of(gap))).contains("too coarse").doesNotContain("to reach it");
            });
        }
    }

    @Test
    void theListOfGapsAndTheExplanationGiveTheSameReason() {
        List<Job> jobs = List.of(
                windows(2)
                        .leastView(0.2)
                        .enter(
                                "view v",
                                "datum c1 1",
                                "watch root",
                                "turn 60 in 60s",
                                "watch all",
                                "turn 60 in 1s",
                                "skip 20",
                                "turn 60",
                                "here 30"),
                stations(FORE, AFT)
                        .set("detail", "0.4")
                        .enter(
                                "view v",
                                "datum c1 1",
                                "watch tip",
                                "turn 90 ± 2",
                                "slip",
                                "turn 60",
                                "here 5",
                                "look"));
        Set<Why> told = EnumSet.noneOf(Why.class);
        for (Job job : jobs) {
            Coverage coverage = job.coverage();
            List<Gap> gaps = Gaps.of(coverage);
            gaps.forEach(gap -> told.add(gap.why()));
            for (Gap gap : gaps) {
                assertThat(English.say(ToldGap.of(gap))).contains("(" + English.say(gap.why()) + ")");
                for (int zone = 0; zone < coverage.row("c1").zoning().size(); zone++) {
                    if (gap.zones().contains(zone)) {
                        List<String> lines = English.say(
                                Explanation.of(coverage, "c1", gap.airfoils().get(0), zone));
                        assertThat(lines.get(lines.size() - 1)).contains(": " + English.say(gap.why()) + " (");
                    }
                }
            }
        }
        assertThat(told).hasSizeGreaterThan(5);
    }
}
