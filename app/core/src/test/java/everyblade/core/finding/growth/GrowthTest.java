package everyblade.core.finding.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Entry.Interval;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.LimitsUnderTest;
import everyblade.core.finding.growth.Growth.Trend;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GrowthTest {

    private static Job job(String... lines) {
        return new Job(LimitsUnderTest.ENGINE).enter(lines);
    }

    private static List<Finding> found(String... lines) {
        return Findings.of(job(lines).fold());
    }

    private static Growth growth(String then, String now) {
        Matching matching = Matching.of(found(then), found(now));
        return Growth.of(matching.pairs().get(0)).get(0);
    }

    @Nested
    class TheSameFinding {

        private static String told(Matching matching) {
            return Stream.of(
                            matching.pairs().stream()
                                    .map(pair -> pair.then().entry() + "-"
                                            + pair.now().entry()),
                            matching.fresh().stream().map(finding -> "new " + finding.entry()),
                            matching.missing().stream().map(finding -> "missing " + finding.entry()))
                    .flatMap(each -> each)
                    .toList()
                    .toString();
        }

        @Test
        void isOfTheSameRowAirfoilAndKindInACommonZone() {
            assertThat(told(Matching.of(
                            found(
                                    "a nick 3 tpl 1",
                                    "a nick 4 tpl 1",
                                    "a dent 5 tpl 1",
                                    "b nick 6 tpl 1",
                                    "a nick 7 tpl 1"),
                            found("a nick 3 tip/pressure 1", "a nick 5 tpl 1", "a nick 6 tpl 1", "a nick 7 rst 1"))))
                    .isEqualTo("[1-1, new 2, new 3, new 4, missing 2, missing 3, missing 4, missing 5]");
        }

        @Test
        void isTheOneOfTheNearestSizeWhereSeveralFit() {
            assertThat(told(Matching.of(
                            found("a nick 3 tpl 2", "a nick 3 tpl 1"), found("a nick 3 tpl 1.1", "a nick 3 tpl 2.3"))))
                    .isEqualTo("[2-1, 1-2]");
        }

        @Test
        void isToldInTheOrderOfThoseOfNowWhicheverFitsBest() {
            assertThat(told(Matching.of(
                            found("a nick 3 tpl 1", "a nick 3 tpl 2"), found("a nick 3 tpl 1.3", "a nick 3 tpl 2.1"))))
                    .isEqualTo("[1-1, 2-2]");
        }

        @Test
        void areThoseThatWereEnteredFirstWhereAllFitAlike() {
            assertThat(told(Matching.of(
                            found("a nick 3 tpl 1", "a nick 3 tpl 1"),
                            found("a nick 3 tpl 1", "a nick 3 tpl 1", "a nick 3 tpl 1"))))
                    .isEqualTo("[1-1, 2-2, new 3]");
        }

        @Test
        void isTheOneOfMostCommonZonesBeforeTheNearestSize() {
            assertThat(told(Matching.of(found("a nick 3 tip 1", "a nick 3 tip/pressure 5"), found("a nick 3 tip 5"))))
                    .isEqualTo("[1-1, missing 2]");
        }

        /** Pairs, new and missing ones are each finding once, whatever is entered. */
        @Test
        void isNeverCountedTwice() {
            SplittableRandom random = new SplittableRandom(3);
            for (int i = 0; i < 300; i++) {
                List<Finding> then = found(drawn(random));
                List<Finding> now = found(drawn(random));
                Matching matching = Matching.of(then, now);
                List<Finding> allNow = new ArrayList<>(matching.fresh());
                List<Finding> allThen = new ArrayList<>(matching.missing());
                matching.pairs().forEach(pair -> {
                    allNow.add(pair.now());
                    allThen.add(pair.then());
                });
                allNow.sort(Comparator.comparingInt(Finding::entry));
                allThen.sort(Comparator.comparingInt(Finding::entry));
                assertThat(allNow).isEqualTo(now);
                assertThat(allThen).isEqualTo(then);
            }
        }

        private static String[] drawn(SplittableRandom random) {
            return random.ints(random.nextInt(0, 8), 0, 1000)
                    .mapToObj(n -> "a nick " + (1 + n % 2) + (n % 3 == 0 ? " tip " : " tpl ") + (1 + n % 7))
                    .toArray(String[]::new);
        }
    }

    @Nested
    class Sizes {

        /** U = √(0.3² + 0.4²) = 0.5 mm. */
        @Test
        void growByTheirDifferenceWithBothUncertainties() {
            Growth growth = growth("a nick 3 tpl 1.0 ± 0.3", "a nick 3 tpl 1.8 ± 0.4");

            assertThat(growth.amount().value().millimetres()).isEqualTo(0.8, within(1e-9));
            assertThat(growth.amount().plusMinus().orElseThrow().millimetres()).isEqualTo(0.5, within(1e-6));
            assertThat(growth.trend()).isEqualTo(Trend.GROWN);
            Usage.Run run = new Usage.Run(BigDecimal.valueOf(400), Interval.CYCLES);
            assertThat(growth.rate(run)).isEqualTo(0.002, within(1e-12));
            assertThat(growth.rateError(run).orElseThrow()).isEqualTo(0.00125, within(1e-9));
        }

        @Test
        void growOnlyIfTheUncertaintyDoesNotExplainIt() {
            assertThat(growth("a nick 3 tpl 1 ± 0.3", "a nick 3 tpl 1.5 ± 0.4").trend())
                    .isEqualTo(Trend.UNSURE);
            assertThat(growth("a nick 3 tpl 1 ± 0.3", "a nick 3 tpl 0.5 ± 0.4").trend())
                    .isEqualTo(Trend.UNSURE);
            assertThat(growth("a nick 3 tpl 1 ± 0.3", "a nick 3 tpl 0.4 ± 0.4").trend())
                    .isEqualTo(Trend.SHRUNK);
            assertThat(growth("a nick 3 tpl 1 ± 0.3", "a nick 3 tpl 0.7 ± 0.4").trend())
                    .isEqualTo(Trend.UNSURE);
            assertThat(growth("a nick 3 tpl 1 ± 0.3", "a nick 3 tpl 1.2 ± 0.4").trend())
                    .isEqualTo(Trend.UNSURE);
            assertThat(growth("a nick 3 tpl 1", "a nick 3 tpl 5 ± 0.4").trend()).isEqualTo(Trend.UNKNOWN);
        }

        @Test
        void areTheSameInEitherUnit() {
            assertThat(growth("a nick 3 tpl 0.040 ± 0 in", "a nick 3 tpl 1.016 ± 0 mm")
                            .amount()
                            .value()
                            .millimetres())
                    .isZero();
        }
    }

    @Nested
    class WhatWasRun {

        private static Optional<Usage.Run> run(String[] then, String[] now) {
            return Usage.of(job(now).fold()).since(Usage.of(job(then).fold()));
        }

        @Test
        void isToldInCyclesOrElseInHours() {
            assertThat(run(
                            new String[] {"fact cycles 100", "fact hours 50"},
                            new String[] {"fact Cycles 90", "fact cycles 140", "fact hours 70"}))
                    .contains(new Usage.Run(BigDecimal.valueOf(40), Interval.CYCLES));
            assertThat(run(new String[] {"fact hours 50,5"}, new String[] {"fact cycles 140", "fact hours 70.5"}))
                    .contains(new Usage.Run(new BigDecimal("20.0"), Interval.HOURS));
        }

        @Test
        void isNotToldWhereNothingWasRunOrNobodySaid() {
            assertThat(run(new String[] {"fact cycles 100"}, new String[] {"fact cycles 100"}))
                    .isEmpty();
            assertThat(run(
                            new String[] {"fact cycles 100"},
                            new String[] {"fact cycles 140", "void 1 because of another engine"}))
                    .isEmpty();
            assertThat(run(new String[] {"fact cycles many"}, new String[] {"fact cycles 100"}))
                    .isEmpty();
        }
    }

    @Test
    void whatWasNotSeenLastTimeIsAskedForFirst() {
        Job then = job("view va", "round 1", "b noaccess all all because blocked");
        Job now = job("note nothing yet");

        assertThat(LeftAgain.first(Gaps.of(now.coverage()), then.coverage()))
                .extracting(left -> left.gap().row().id() + " " + left.lastTimeToo())
                .containsExactly("b true", "a false");
    }

    /** Of ten blades then and twelve now, the last two were not there to be seen. */
    @Test
    void ofAnEngineWithFewerBladesOrWithoutTheRowNothingWasLeftLastTime() {
        Job now = job("note nothing yet");
        Job fewer = new Job(new Engines()
                        .row("a", RowKind.ROTOR, 10, Direction.CW, 2, List.of(), false, 0)
                        .view("va", "a", 0, 2)
                        .built())
                .enter("view va", "round 1");
        assertThat(LeftAgain.first(Gaps.of(now.coverage()), fewer.coverage()))
                .extracting(left -> left.gap().row().id() + " " + left.lastTimeToo())
                .containsExactly("a false", "b false");
        Job asMany = new Job(Engines.of(12, 2));
        assertThat(LeftAgain.first(Gaps.of(now.coverage()), asMany.coverage())).noneMatch(LeftAgain.Left::lastTimeToo);
    }

    @Test
    void theLastBladeOfThenCountsAsWell() {
        Engine twelve = new Engines().rotor("a", 12).view("v", "a", 0, 2).built();
        Job then = new Job(twelve).enter("view v", "datum a 1", "turn back 300");
        Job now = new Job(twelve).enter("view v", "datum a 1", "turn back 300");
        assertThat(LeftAgain.first(Gaps.of(now.coverage()), then.coverage()))
                .singleElement()
                .satisfies(left -> {
                    assertThat(left.gap().airfoils()).hasSize(1);
                    assertThat(left.lastTimeToo()).isTrue();
                });
    }
}
