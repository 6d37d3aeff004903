package everyblade.core.finding;

import static everyblade.core.finding.Verdict.BEYOND;
import static everyblade.core.finding.Verdict.CLOSE;
import static everyblade.core.finding.Verdict.NOT_MEASURED;
import static everyblade.core.finding.Verdict.NO_RULE;
import static everyblade.core.finding.Verdict.OTHER_FACE;
import static everyblade.core.finding.Verdict.WITHIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.entry.ZonePhrase;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JudgingTest {

    private final LimitsUnderTest limits = new LimitsUnderTest();

    @Nested
    class Sizes {

        @Test
        void areShownWithTheRuleTheFigureAndTheMargin() {
            limits.rule("edges", "a", "nick", "leading", limits.step("length 1"));

            Ruling ruling =
                    limits.judge("a nick 3 tpl 0.8 ± 0.06").get(0).decisive().orElseThrow();

            assertThat(ruling.rule().id()).isEqualTo("edges");
            assertThat(English.say(ruling.outcome())).isEqualTo("step length 1");
            assertThat(ruling.figures()).singleElement().satisfies(figure -> {
                assertThat(English.say(figure.what())).isEqualTo("length");
                assertThat(English.say(figure.value())).isEqualTo("0.8 ± 0.06 mm");
                assertThat(English.say(figure.limit())).isEqualTo("at most 1 mm");
                assertThat(English.say(figure.margin().orElseThrow())).isEqualTo("0.2 mm inside, guard 0.049 mm");
                assertThat(figure.verdict()).isEqualTo(WITHIN);
            });
        }

        @Test
        void meanTheSameInEitherUnit() {
            limits.inches().rule("edges", "a", "nick", "leading", limits.step("length 0.040"));

            assertThat(limits.verdicts(
                            "a nick 3 tpl 1.016 ± 0 mm", "a nick 4 tpl 0.040 ± 0 in", "a nick 5 tpl 1.017 ± 0"))
                    .containsExactly(WITHIN, WITHIN, BEYOND);
        }

        @Test
        void thatALimitAsksForButNobodyMeasuredAreNamed() {
            limits.rule("depth", "a", "nick", "", limits.step("length 1, depth 0.3"));

            Judgement judgement = limits.judge("a nick 3 tpl 0.5 ± 0.1").get(0);

            assertThat(judgement.verdict()).isEqualTo(NOT_MEASURED);
            assertThat(judgement.decisive().orElseThrow().figures())
                    .anySatisfy(figure -> assertThat(English.say(figure.what()) + " " + English.say(figure.value()))
                            .isEqualTo("depth not entered"));
        }

        @Test
        void withoutTheirUncertaintyAreJudgedOnlyIfTheLimitsAssumeOne() {
            limits.rule("edges", "a", "nick", "", limits.step("length 1"));

            assertThat(limits.verdicts("a nick 3 tpl 0.5")).containsExactly(NOT_MEASURED);
            assertThat(limits.assuming("0.2").verdicts("a nick 3 tpl 0.5", "a nick 4 tpl 0.9"))
                    .containsExactly(WITHIN, CLOSE);
        }

        @Test
        void pastOneStepAreHeldAgainstTheNext() {
            limits.rule("edges", "a", "nick", "", limits.step("length 0.5"), limits.step("length 1"));

            List<Judgement> judged = limits.judge(
                    "a nick 1 tpl 0.4 ± 0.01",
                    "a nick 2 tpl 0.8 ± 0.01",
                    "a nick 3 tpl 0.5 ± 0.1",
                    "a nick 4 tpl 2 ± 0.1");

            assertThat(judged).extracting(Judgement::verdict).containsExactly(WITHIN, WITHIN, CLOSE, BEYOND);
            assertThat(judged)
                    .extracting(judgement ->
                            English.say(judgement.decisive().orElseThrow().outcome()))
                    .containsExactly(
                            "step length 0.5",
                            "step length 1",
                            "either \"step length 0.5\" or \"step length 1\"",
                            "beyond edges");
        }
    }

    @Nested
    class WhatARuleIsOn {

        @Test
        void isToldByRowKindAndZone() {
            limits.rule("edges", "a", "nick dent", "leading trailing", limits.step("length 1"));

            assertThat(limits.verdicts(
                            "a nick 1 tpl 0.5 ± 0.1",
                            "b nick 1 tpl 0.5 ± 0.1",
                            "a crack 1 tpl 0.5 ± 0.1",
                            "a nick 1 tip/pressure/middle 0.5 ± 0.1"))
                    .containsExactly(WITHIN, NO_RULE, NO_RULE, NO_RULE);
        }

        @Test
        void isAlsoWhatIsSaidTooBroadlyToBeOutsideIt() {
            limits.rule("edges", "a", "nick", "leading", limits.step("length 1"))
                    .rule("rest", "a", "nick", "middle trailing", limits.step("length 3"));

            Judgement broad = limits.judge("a nick 1 tip/pressure 2 ± 0.1").get(0);

            assertThat(broad.rulings()).hasSize(2);
            assertThat(broad.verdict()).isEqualTo(BEYOND);
        }

        @Test
        void isAllowedWithoutLimitOrNotAtAll() {
            limits.rule("spatter", "a", "spatter", "", limits.step("")).rule("cracks", "a", "crack", "");

            assertThat(limits.verdicts("a spatter 1 tip", "a crack 1 tip 0.1 ± 0.1"))
                    .containsExactly(WITHIN, BEYOND);
            assertThat(limits.judge("a crack 1 tip 0.1 ± 0.1")
                            .get(0)
                            .decisive()
                            .orElseThrow()
                            .figures())
                    .containsExactly(new Figure(
                            LimitsUnderTest.kind("crack"),
                            Figure.Value.Without.FOUND,
                            Figure.Allowed.Whole.NONE,
                            Optional.empty(),
                            BEYOND));
        }
    }

    @Nested
    class Numbers {

        @Test
        void areCountedOnTheAirfoil() {
            limits.rule("n", "a", "nick", "", limits.step("airfoil 2"));

            assertThat(limits.verdicts("a nick 1 tip", "a nick 1 root", "a nick 2 tip"))
                    .containsExactly(WITHIN, WITHIN, WITHIN);
            assertThat(limits.verdicts("a nick 1 tip", "a nick 1 root", "a nick 1 tpl", "a nick 2 tip"))
                    .containsExactly(BEYOND, BEYOND, BEYOND, WITHIN);
        }

        @Test
        void areCountedInTheRowAndByAirfoils() {
            limits.rule("r", "a", "nick", "", limits.step("row 3"))
                    .rule("b", "b", "nick", "", limits.step("airfoils 1"));

            assertThat(limits.verdicts("a nick 1 tip", "a nick 1 tip", "a nick 3 tip", "b nick 1 tip", "b nick 1 root"))
                    .containsOnly(WITHIN);
            assertThat(limits.verdicts(
                            "a nick 1 tip",
                            "a nick 2 tip",
                            "a nick 3 tip",
                            "a nick 4 tip",
                            "b nick 1 tip",
                            "b nick 2 tip"))
                    .containsOnly(BEYOND);
        }

        @Test
        void ofNeighboursGoOnOverTheSeam() {
            limits.rule("n", "a", "nick", "", limits.step("neighbours 2"));

            assertThat(limits.verdicts("a nick 12 tip", "a nick 1 tip", "a nick 3 tip"))
                    .containsOnly(WITHIN);
            assertThat(limits.verdicts("a nick 12 tip", "a nick 1 tip", "a nick 2 tip", "a nick 5 tip"))
                    .containsExactly(BEYOND, BEYOND, BEYOND, WITHIN);
        }

        @ParameterizedTest
        @CsvSource({"11, BEYOND", "12, WITHIN"})
        void ofNeighboursAreAllOfTheRowWhereEachAirfoilHasOne(int most, Verdict verdict) {
            limits.rule("n", "a", "nick", "", limits.step("neighbours " + most));

            assertThat(limits.verdicts(IntStream.rangeClosed(1, 12)
                            .mapToObj(n -> "a nick " + n + " tip")
                            .toArray(String[]::new)))
                    .containsOnly(verdict);
        }

        @Test
        void leaveOutWhatAnEarlierStepTakesAndDoubtWhatItMayTake() {
            limits.rule("n", "a", "nick", "", limits.step("length 0.1"), limits.step("length 1, airfoil 1"));

            assertThat(limits.verdicts(
                            "a nick 1 tip 0.05 ± 0.01", "a nick 1 tip 0.05 ± 0.01", "a nick 1 tip 0.5 ± 0.1"))
                    .containsOnly(WITHIN);
            assertThat(limits.verdicts("a nick 1 tip 0.5 ± 0.1", "a nick 1 tip 0.6 ± 0.1"))
                    .containsOnly(BEYOND);
            assertThat(limits.verdicts("a nick 1 tip 0.5 ± 0.1", "a nick 1 tip 0.1 ± 0.05"))
                    .containsOnly(CLOSE);
        }
    }

    @Test
    void aJournalIsJudgedByItsCoverageAndTheShapesOfItsModel() {
        Job job = new Job(LimitsUnderTest.ENGINE).enter("a nick 3 tpl 0.5 ± 0.1", "b nick 3 tpl 2 ± 0.1");
        Limits built = limits.rule("n", "", "nick", "", limits.step("length 1")).built();
        assertThat(Judging.of(built, job.fold(), job.coverage()))
                .extracting(Judgement::verdict)
                .containsExactly(WITHIN, BEYOND);
    }

    /**
     * The manner of US Army TM 55-2840-251-23 p. 2-17 (public domain): area A no crack, at most three nicks or dents to
     * 0.003 in; area B at most one; edges at most one to 0.010 in; fillet none. The areas stand for zones of our row.
     */
    @Nested
    class LimitsInTheMannerOfAManual {

        private LimitsUnderTest manual() {
            LimitsUnderTest inches = new LimitsUnderTest().inches();
            return inches.rule("cracks", "a", "crack", "")
                    .rule("area A", "a", "nick dent", "tip/pressure/middle", inches.step("length 0.003, airfoil 3"))
                    .rule("area B", "a", "nick dent", "tip/suction/middle", inches.step("length 0.003, airfoil 1"))
                    .rule("edges", "a", "nick dent", "leading trailing", inches.step("length 0.010, airfoil 1"))
                    .rule("fillet", "a", "nick dent", "root/pressure/middle root/suction/middle");
        }

        @Test
        void takesThreeSmallOnesInAreaAAndNoFourth() {
            String[] four = new String[4];
            java.util.Arrays.fill(four, "a nick 5 tip/pressure/middle 0.002 ± 0.001 in");

            assertThat(manual().verdicts(four[0], four[1], four[2])).containsOnly(WITHIN);
            assertThat(manual().verdicts(four)).containsOnly(BEYOND);
        }

        @Test
        void takesNoLargerOneInAreaAAndNoCrackAnywhere() {
            assertThat(manual().verdicts(
                                    "a dent 5 tip/pressure/middle 0.0045 ± 0.001 in",
                                    "a crack 6 tip/pressure/middle 0.001 ± 0.001 in",
                                    "a nick 7 tip/pressure/middle 0.003 ± 0.001 in"))
                    .containsExactly(BEYOND, BEYOND, CLOSE);
        }

        @Test
        void takesOneInAreaBOneAtTheEdgesAndNoneInTheFillet() {
            assertThat(manual().verdicts(
                                    "a nick 1 tip/suction/middle 0.002 ± 0.001 in",
                                    "a nick 2 tpl 0.008 ± 0.001 in",
                                    "a nick 3 root/suction/middle 0.001 ± 0.001 in"))
                    .containsExactly(WITHIN, WITHIN, BEYOND);
            assertThat(manual().verdicts("a nick 2 tpl 0.2 ± 0.03 mm", "a nick 2 rst 0.2 ± 0.03 mm"))
                    .containsOnly(BEYOND);
        }
    }

    @Nested
    class ARuleThatHangsOnAnotherRow {

        private LimitsUnderTest hanging() {
            return limits.rule("a", "a", "", "", limits.step("length 1"))
                    .rule("b", "b", "", "", false, List.of("a"), limits.step("length 1"));
        }

        @Test
        void allowsNothingWhenThatRowIsBeyond() {
            assertThat(hanging().verdicts("b nick 1 tip 0.5 ± 0.1", "a nick 1 tip 2 ± 0.1"))
                    .containsExactly(BEYOND, BEYOND);
        }

        @Test
        void isTooCloseToCallWhileThatRowIsNotSeenWhole() {
            assertThat(hanging().verdicts("b nick 1 tip 0.5 ± 0.1", "a nick 1 tip 0.2 ± 0.1"))
                    .containsExactly(CLOSE, WITHIN);
            assertThat(new LimitsUnderTest()
                            .rule("b", "b", "", "", false, List.of("a"), limits.step("length 1"))
                            .verdicts("view va", "round 1", "b nick 1 tip 0.5 ± 0.1"))
                    .containsExactly(WITHIN);
        }

        private List<Figure> figuresOfB(String... lines) {
            return hanging().judge(lines).get(0).decisive().orElseThrow().figures();
        }

        @Test
        void saysWhatOfThatRowItHangsOn() {
            assertThat(figuresOfB("b nick 1 tip 0.5 ± 0.1", "a nick 1 tip 2 ± 0.1"))
                    .singleElement()
                    .satisfies(figure -> {
                        assertThat(figure.what()).isEqualTo(new Figure.Counted.LimitsOf("a"));
                        assertThat(figure.value()).isEqualTo(BEYOND);
                        assertThat(figure.verdict()).isEqualTo(BEYOND);
                    });
        }

        @Test
        void saysWhetherThatRowWasNotSeenOrNotDecided() {
            LimitsUnderTest unseen = new LimitsUnderTest()
                    .rule("a", "a", "", "", limits.step("length 1"))
                    .rule("b", "b", "", "", false, List.of("a"), limits.step("length 1"));
            assertThat(hangsOn(unseen, "b nick 1 tip 0.5 ± 0.1", "a nick 1 tip 0.2 ± 0.1"))
                    .isEqualTo(Figure.Value.Without.NOT_ALL_SEEN);
            assertThat(hangsOn(unseen, "b nick 1 tip 0.5 ± 0.1", "a nick 1 tip 1 ± 0.1"))
                    .isEqualTo(CLOSE);
            assertThat(hangsOn(unseen, "b nick 1 tip 0.5 ± 0.1", "view va", "round 1", "a nick 1 tip 0.2 ± 0.1"))
                    .isEqualTo(WITHIN);
        }

        private static Object hangsOn(LimitsUnderTest limits, String... lines) {
            return limits.judge(lines).get(0).decisive().orElseThrow().figures().stream()
                    .filter(figure -> figure.what().equals(new Figure.Counted.LimitsOf("a")))
                    .findFirst()
                    .orElseThrow()
                    .value();
        }

        @Test
        void mayNotHangOnItself() {
            assertThatThrownBy(() -> new LimitsUnderTest()
                            .rule("x", "a", "", "", false, List.of("b"))
                            .rule("y", "b", "", "", false, List.of("a"))
                            .built())
                    .hasMessageContaining("hangs on itself");
        }
    }

    @Nested
    class TheOtherFace {

        private LimitsUnderTest both() {
            return limits.rule("n", "a", "nick", "", true, List.of(), limits.step("length 1"));
        }

        @Test
        void isAskedForUntilItIsSeen() {
            assertThat(both().verdicts("a nick 3 tpl 0.5 ± 0.1")).containsExactly(OTHER_FACE);
            assertThat(both().verdicts("view va", "watch suction", "round 1", "a nick 3 tpl 0.5 ± 0.1"))
                    .containsExactly(WITHIN);
            assertThat(both().verdicts("view va", "watch pressure", "round 1", "a nick 3 tpl 0.5 ± 0.1"))
                    .containsExactly(OTHER_FACE);
        }

        /** The finding is on the pressure side, so it is the suction side that is to be looked at, and the other way round. */
        @ParameterizedTest
        @CsvSource({"tpl, suction", "tsl, pressure"})
        void isToldByItsNameWithTheFiguresOfTheRule(String place, String side) {
            Ruling ruling = both().judge("a nick 3 " + place + " 0.5 ± 0.1")
                    .get(0)
                    .decisive()
                    .orElseThrow();
            assertThat(ruling.figures())
                    .extracting(Figure::what)
                    .containsExactly(Dimension.LENGTH, new Figure.Counted.Side(ZonePhrase.named(side)));
            assertThat(ruling.figures().get(1).value()).isEqualTo(Figure.Value.Without.NOT_SEEN_HERE);
            assertThat(ruling.figures().get(1).limit()).isEqualTo(Figure.Allowed.Whole.BOTH_FACES);
            assertThat(ruling.figures().get(1).verdict()).isEqualTo(OTHER_FACE);
        }

        @Test
        void changesNothingOnWhatIsBeyondOrLiesOnBoth() {
            assertThat(both().verdicts("a nick 3 tpl 5 ± 0.1", "a nick 3 tip 0.5 ± 0.1"))
                    .containsExactly(BEYOND, WITHIN);
        }
    }

    @Nested
    class DistanceBetweenFindings {

        private List<Verdict> apart(Distances distances) {
            everyblade.core.Job job = new everyblade.core.Job(LimitsUnderTest.ENGINE)
                    .enter("a nick 3 tpl", "a nick 3 root", "a nick 4 tip");
            return Judging.of(
                            limits.rule("n", "a", "nick", "", limits.step("apart 5"))
                                    .built(),
                            LimitsUnderTest.ENGINE.zonings(),
                            Findings.of(job.fold()),
                            Looked.in(job.coverage()),
                            distances)
                    .stream()
                    .map(Judgement::verdict)
                    .toList();
        }

        private Distances span(double least, double most) {
            return (row, one, other) ->
                    java.util.Optional.of(new Distances.Span(Length.ofMillimetres(least), Length.ofMillimetres(most)));
        }

        @Test
        void isJudgedByWhatTheZonesAllow() {
            assertThat(apart(span(5, 40))).containsExactly(WITHIN, WITHIN, WITHIN);
            assertThat(apart(span(0, 40))).containsExactly(CLOSE, CLOSE, WITHIN);
            assertThat(apart(span(0, 4.9))).containsExactly(BEYOND, BEYOND, WITHIN);
        }

        @Test
        void isToBeMeasuredWhereNoShapeIsKnown() {
            assertThat(apart(Distances.UNKNOWN)).containsExactly(CLOSE, CLOSE, WITHIN);
        }
    }
}
