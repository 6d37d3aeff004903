package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.turning.Engine;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    private static List<String> explained(Coverage coverage, String row, int airfoil, int zone) {
        return English.say(Explanation.of(coverage, row, airfoil, zone));
    }

    private static Job job(double play) {
        return new Job(new Engines()
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.<ChordBand>of(), false, 0)
                .view("v", "c1", 0, 2)
                .view("roots", "c1", 0, 2, "root")
                .pad("pad", Ratio.ONE, play, 0, 0)
                .built());
    }

    @Test
    void theCountedAndTheAdjustedAngleStandSideBySide() {
        Job job = job(1.9).enter("view v", "datum c1 1");
        Collections.nCopies(9, "turn on 38").forEach(job::enter);
        job.enter("here 3");
        assertThat(explained(job.coverage(), "c1", 3, 0))
                .containsExactly(
                        "entries 3 to 11, through v: counted from 0.0° to 342.0°, adjusted from 0.0° to 340.0°, at the"
                                + " end good to −0.0° +0.0°; surely in sight",
                        "so blade 3 of row c1 (c1), root is seen (declared, by windows)");
    }

    @Test
    void playIsNamedWhereItLeavesACellInDoubt() {
        Job job = job(1.9).enter("view v", "datum c1 1");
        Collections.nCopies(9, "turn on 38").forEach(job::enter);
        assertThat(explained(job.coverage(), "c1", 3, 1).toString())
                .contains("at the end good to −5.7° +5.7°", "only maybe in sight", "too much play");
    }

    @Test
    void aPartThatWasNotWatchedIsSaidToHavePassedUnwatched() {
        Job job = job(0).enter("view v", "datum c1 1", "watch root", "turn on 360");
        assertThat(explained(job.coverage(), "c1", 5, 1))
                .containsExactly(
                        "entry 4, through v: not watched while it was in sight",
                        "so blade 5 of row c1 (c1), tip is not seen: not watched while it was in sight (declared, by"
                                + " windows)");
    }

    @Test
    void aViewThatDoesNotShowThePartIsNamed() {
        Job job = job(0).enter("view roots", "datum c1 1", "turn on 360");
        assertThat(explained(job.coverage(), "c1", 5, 1).get(0))
                .isEqualTo("entry 3, through roots: this view does not show tip");
    }

    @Test
    void aRowThatWasNeverIdentifiedSaysSo() {
        Job job = job(0).enter("view v", "turn on 360");
        assertThat(explained(job.coverage(), "c1", 5, 1).get(0)).contains("no blade of this row was ever identified");
    }

    /** Blades seen past vanes ahead of them; once a vane is identified, and where the vanes are out of the way, nothing is said. */
    @Test
    void vanesThatMayHideAPartAreToBeIdentified() {
        Job past = shaped(-40).enter("view v", "datum r 1", "turn 360");
        assertThat(explained(past.coverage(), "r", 1, 0))
                .filteredOn(line -> line.startsWith("nobody said where the vanes of"))
                .singleElement()
                .asString()
                .contains("datum g N");
        assertThat(explained(past.enter("datum g 1").coverage(), "r", 1, 0).toString())
                .doesNotContain("nobody said where");
        assertThat(explained(shaped(60).enter("view v", "datum r 1", "turn 360").coverage(), "r", 1, 0)
                        .toString())
                .doesNotContain("nobody said where");
    }

    private static List<Explained> facts(Job job, String row, int airfoil, int zone) {
        return Explanation.of(job.coverage(), row, airfoil, zone);
    }

    private static <T> T only(Class<T> type, List<?> facts) {
        return facts.stream()
                .filter(type::isInstance)
                .map(type::cast)
                .reduce((one, other) -> {
                    throw new AssertionError("told twice: " + one + ", " + other);
                })
                .orElseThrow();
    }

    @Nested
    class WhatSomeoneSaidOfACell {

        private final Job job = job(0).enter(
                        "view roots",
                        "datum c1 1",
                        "nick 3 root",
                        "recheck 4 shiny",
                        "saw root 5 photo a.jpg",
                        "noaccess root 6 because dark");

        private List<Explained> said(int airfoil, int zone) {
            List<Explained> facts = facts(job, "c1", airfoil, zone);
            return facts.subList(0, facts.size() - 1);
        }

        @Test
        void isToldBeforeTheConclusion() {
            assertThat(said(3, 0)).containsExactly(Explained.Remarked.FOUND);
            assertThat(said(4, 0)).containsExactly(Explained.Remarked.RECHECK);
            assertThat(said(5, 0)).containsExactly(Explained.Remarked.STATED);
            assertThat(said(6, 0)).containsExactly(Explained.Remarked.ACCEPTED);
            assertThat(said(7, 0)).isEmpty();
        }

        @Test
        void isNotSaidOfTheSameCellOfAnotherRow() {
            Job two = new Job(new Engines()
                            .rotor("c1", 36)
                            .rotor("c2", 36)
                            .view("v", "c1", 0, 2)
                            .view("w", "c2", 0, 2)
                            .built())
                    .enter("view v", "datum c1 1", "nick 3 all", "view w", "datum c2 1");
            assertThat(facts(two, "c1", 3, 0)).contains(Explained.Remarked.FOUND);
            assertThat(facts(two, "c2", 3, 0)).doesNotContain(Explained.Remarked.FOUND);
        }

        @Test
        void isToldOnceWhereWhatNoViewShowsWasAccepted() {
            Job roots = new Job(new Engines()
                            .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.<ChordBand>of(), false, 0)
                            .view("roots", "c1", 0, 2, "root")
                            .built())
                    .enter("view roots", "datum c1 1", "noaccess c1 unshown because no view");
            assertThat(facts(roots, "c1", 7, 1).subList(0, 1)).containsExactly(Explained.Remarked.ACCEPTED);
            assertThat(facts(roots, "c1", 7, 1)).hasSize(2);
            assertThat(facts(roots, "c1", 7, 0)).hasSize(1);
        }
    }

    @Nested
    class OneOfManyPasses {

        @Test
        void saysHowFarTheRowTurnedIfThatIsATurnOrMore() {
            Explained.Passed whole =
                    only(Explained.Passed.class, facts(job(0).enter("view v", "datum c1 1", "turn 360"), "c1", 5, 0));
            assertThat(whole.track().inAll()).contains(360.0);
            Explained.Passed part =
                    only(Explained.Passed.class, facts(job(0).enter("view v", "datum c1 1", "turn 359"), "c1", 5, 0));
            assertThat(part.track().inAll()).isEmpty();
            assertThat(part.track().countedFrom()).isZero();
            assertThat(part.track().countedTo()).isEqualTo(359);
            assertThat(part.track().widened()).isEmpty();
        }

        /** ± is taken wider from the eleventh run of watching on. */
        @Test
        void saysByHowMuchItsPlaceIsTakenWider() {
            Job job = job(0).enter("view v", "datum c1 1");
            IntStream.range(0, 11).forEach(i -> job.enter("turn 1", "skip 9"));
            List<Explained.Passed> passes = facts(job, "c1", 5, 0).stream()
                    .filter(Explained.Passed.class::isInstance)
                    .map(Explained.Passed.class::cast)
                    .toList();
            assertThat(passes).hasSize(11);
            assertThat(passes.subList(0, 10))
                    .allSatisfy(pass -> assertThat(pass.track().widened()).isEmpty());
            assertThat(passes.get(10).track().widened())
                    .contains(new Explained.Widened(SmoothedTrack.widening(11), 11));
        }
    }

    @Nested
    class ThroughAWindow {

        @Test
        void aCellThatPassedTooFastOrNotAtAllIsSaidToHave() {
            Job job = job(0).leastView(1).enter("view v", "datum c1 1", "turn 90 in 2s");
            assertThat(only(Explained.Passed.class, facts(job, "c1", 33, 0)).shown())
                    .isEqualTo(Why.FAST);
            assertThat(only(Explained.Passed.class, facts(job, "c1", 5, 0)).shown())
                    .isEqualTo(Explained.Shown.NOT_AT_ALL);
        }

        @Test
        void ofSomethingElseNothingIsSaid() {
            Job job = job(0).enter("view v", "datum c1 1", "watch tip", "turn 90", "skip 90", "watch root", "look");
            assertThat(facts(job, "c1", 5, 0))
                    .filteredOn(Explained.Unwatched.class::isInstance)
                    .as("it was not in sight either")
                    .isEmpty();
            assertThat(only(Explained.Passed.class, facts(job, "c1", 19, 0)).by())
                    .isEqualTo(new Explained.By(7, 7, 1, "v"));
            assertThat(only(Explained.Unwatched.class, facts(job, "c1", 35, 0)))
                    .isEqualTo(new Explained.Unwatched(new Explained.By(4, 4, 1, "v"), Why.NOT_WATCHED));
            assertThat(facts(job, "c1", 35, 1)).noneMatch(Explained.Unwatched.class::isInstance);
        }
    }

    @Nested
    class OfAComputedRow {

        private final Station ahead = ShapedEngine.station("ahead", -15, 135, new Heading(1, 0.3, -0.3), 0, 0);

        private Job job() {
            return new Job(new ShapedEngine()
                    .row("r", RowKind.ROTOR, 20, 35, 0)
                    .view("v", "r", ahead)
                    .window("w", "r", 10)
                    .built());
        }

        @Test
        void eachPassSaysHowMuchOfTheCellItShowed() {
            assertSaysHowMuch(job().enter("view v", "datum r 1", "turn 90"));
        }

        @Test
        void onlyOfWhatIsSeenInPartItIsSaidThatItsEdgeIsWanting() {
            Job job = job().set("seen", "0.2").enter("view v", "datum r 1", "turn 20");
            RowCoverage row = job.coverage().row("r");
            assertThat(IntStream.range(0, row.zoning().size())
                            .filter(zone -> row.lacksEdgeAlone(20, zone))
                            .mapToObj(zone -> row.state(20, zone))
                            .distinct())
                    .contains(State.PART)
                    .hasSizeGreaterThan(1);
            assertSaysHowMuch(job);
        }

        private static void assertSaysHowMuch(Job job) {
            RowCoverage row = job.coverage().row("r");
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                Areas areas = row.areas(20, zone);
                List<Explained> facts = facts(job, "r", 20, zone);
                Explained.Share share =
                        (Explained.Share) only(Explained.Passed.class, facts).shown();
                assertThat(share.seen()).isEqualTo(Explained.percent(areas.seen()));
                assertThat(share.maybe()).isEqualTo(Explained.percent(areas.maybe()));
                assertThat(share.nothing()).isEqualTo(areas.maybe() == 0);
                assertThat(share.brief()).isFalse();
                assertThat(share.stations()).containsExactly("ahead");
                Explained.Conclusion conclusion = only(Explained.Conclusion.class, facts);
                assertThat(conclusion.state()).isEqualTo(row.state(20, zone));
                assertThat(conclusion.glimpse()).isEqualTo(row.glimpsed(20, zone));
                assertThat(conclusion.lacksEdge())
                        .isEqualTo(row.state(20, zone) == State.PART && row.lacksEdgeAlone(20, zone));
                assertThat(conclusion.ground())
                        .isEqualTo(new Explained.Computed(
                                Explained.percent(areas.seen()),
                                Explained.percent(areas.maybe()),
                                Explained.percent(areas.reach()),
                                row.hindrance(20, zone)));
            }
        }

        @Test
        void aDoubtIsSaidOfThePassThatLeavesItAndOfNoOther() {
            Job job = job().enter("view v", "datum r 1", "turn 90", "slip", "turn 20");
            RowCoverage row = job.coverage().row("r");
            int zone = IntStream.range(0, row.zoning().size())
                    .filter(one -> row.state(20, one) == State.PART)
                    .findFirst()
                    .orElseThrow();
            assertThat(facts(job, "r", 20, zone))
                    .filteredOn(Explained.Passed.class::isInstance)
                    .extracting(fact -> ((Explained.Share) ((Explained.Passed) fact).shown()).why())
                    .containsExactly(Optional.empty(), Optional.of(Why.SLIP));
        }

        @Test
        void aPassThatWasTooFastIsSaidToHaveBeen() {
            Job job = job().leastView(1).enter("view v", "datum r 1", "turn 90 in 1s");
            RowCoverage row = job.coverage().row("r");
            int zone = IntStream.range(0, row.zoning().size())
                    .filter(one -> row.why(18, one).equals(Optional.of(Why.FAST)))
                    .findFirst()
                    .orElseThrow();
            Explained.Share share = (Explained.Share)
                    only(Explained.Passed.class, facts(job, "r", 18, zone)).shown();
            assertThat(share.brief()).isTrue();
            assertThat(share.nothing()).isTrue();
        }

        @Test
        void whatPassedWhileSomethingElseWasWatchedIsSaidToHave() {
            Job job = job().enter("view v", "datum r 1", "watch tip", "turn 90");
            RowCoverage row = job.coverage().row("r");
            int zone = IntStream.range(0, row.zoning().size())
                    .filter(one -> row.why(20, one).equals(Optional.of(Why.NOT_WATCHED)))
                    .findFirst()
                    .orElseThrow();
            assertThat(only(Explained.Unwatched.class, facts(job, "r", 20, zone))
                            .by())
                    .isEqualTo(new Explained.By(4, 4, 1, "v"));
            assertThat(facts(job, "r", 10, zone)).noneMatch(Explained.Unwatched.class::isInstance);
        }

        @Test
        void whatAWindowDeclaresCountsApart() {
            Job job = job().enter("view w", "datum r 1", "turn 360");
            assertThat(only(Explained.Passed.class, facts(job, "r", 3, 0)).shown())
                    .isEqualTo(Explained.Shown.WINDOW_APART);
        }
    }

    private static Job shaped(double vanesAt) {
        return new Job(Engine.of(new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .row("g", RowKind.STATOR, 12, 20, vanesAt)
                .view("v", "r", ShapedEngine.station("ahead", -50, 130, new Heading(1, 0, -0.1), 0, 0))
                .model()));
    }
}
