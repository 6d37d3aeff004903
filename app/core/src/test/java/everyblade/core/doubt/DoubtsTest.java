package everyblade.core.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.doubt.Doubt.Kind;
import everyblade.core.entry.Settings;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person is asked about once, and why. */
class DoubtsTest {

    private static final Ratio GEARED = new Ratio(29, 77);

    private static Engines engines() {
        return new Engines()
                .row("c1", RowKind.ROTOR, 40, Direction.CW, 2, List.of(), false, 0)
                .row("s1", RowKind.STATOR, 30, Direction.CW, 2, List.of(), false, 0)
                .port("p1")
                .viewThrough("p1", "v", "c1")
                .view("vs", "s1", 0, 4);
    }

    private final Engine engine = engines().pad("pad", GEARED, 0, 0, 0).built();

    /** The doubts about the last line. */
    private static List<Doubt> about(Engine engine, String... lines) {
        Job job = new Job(engine).enter(Arrays.copyOf(lines, lines.length - 1));
        Fold before = job.fold();
        Fold after = job.enter(lines[lines.length - 1]).fold();
        return Doubts.about(
                before,
                after.entries().get(after.entries().size() - 1),
                after,
                () -> Coverage.of(before.situation(), Settings.of(Map.of())));
    }

    /** The doubts about the last line, counting begun. */
    private List<Doubt> counting(String... lines) {
        String[] all = new String[lines.length + 3];
        all[0] = "open p1";
        all[1] = "view v";
        all[2] = "datum c1 1";
        System.arraycopy(lines, 0, all, 3, lines.length);
        return about(engine, all);
    }

    private void assertAsked(List<Doubt> doubts, Kind kind, Object... values) {
        assertThat(doubts).singleElement().satisfies(doubt -> {
            assertThat(doubt.kind()).isEqualTo(kind);
            assertThat(doubt.values()).containsExactly(values);
        });
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    @Nested
    class TurnsOfTheTool {

        @Test
        void areAskedAboutTheFirstTimeAndWhereTheyGoFar() {
            double shaft = 7 * 360 * 29 / 77.0;
            assertThat(counting("turn on 7 tool")).singleElement().satisfies(doubt -> {
                assertThat(doubt.kind()).isEqualTo(Kind.TOOL);
                assertThat((double) doubt.values().get(1)).isCloseTo(shaft, offset(1e-9));
            });
            assertThat(counting("skip on 2 tool")).extracting(Doubt::kind).containsExactly(Kind.TOOL);
            assertThat(counting("turn on 2 tool", "turn on 2 tool")).isEmpty();
            assertThat(counting("turn on 2 tool", "turn on 3 tool"))
                    .extracting(Doubt::kind)
                    .containsExactly(Kind.TOOL);
            assertThat(counting("turn on 2 tool", "void 4 because degrees", "turn on 2 tool"))
                    .extracting(Doubt::kind)
                    .containsExactly(Kind.TOOL);
        }

        @Test
        void areNotWhatDegreesOfItAre() {
            assertThat(counting("turn on 100 tooldeg")).isEmpty();
        }
    }

    /** Number theory: a step of s on N reaches N / gcd(N, s). */
    @Nested
    class AStepThatSharesAFactor {

        @Test
        void isAskedAboutWithTheBladesThatItNeverReaches() {
            BitSet missed = new BitSet();
            IntStream.range(0, 40).filter(i -> i % 4 != 0).forEach(missed::set);
            assertAsked(counting("skip on 4 blades"), Kind.STEP, 4L, 40, missed);
            assertAsked(counting("skip on 36"), Kind.STEP, 4L, 40, missed);
        }

        /** Turned clockwise by one, blade 40 stands there, and from it every fourth does. */
        @Test
        void startsFromTheBladeThatIsAtTheReference() {
            BitSet missed = new BitSet();
            IntStream.rangeClosed(1, 40).filter(n -> n % 4 != 0).forEach(n -> missed.set(n - 1));
            assertAsked(counting("skip on 1 blades", "skip on 4 blades"), Kind.STEP, 4L, 40, missed);
        }

        @ParameterizedTest
        @ValueSource(strings = {"skip on 3 blades", "skip on 1 blades", "skip on 40 blades", "turn on 36"})
        void isFineWhereItReachesEveryBlade(String line) {
            assertThat(counting(line)).isEmpty();
        }
    }

    @Test
    void moreThanThreeTurnsInOneMoveAreAskedAboutSinceADigitMayHaveSlippedIn() {
        assertThat(counting("turn on 1080")).isEmpty();
        assertAsked(counting("turn on 3600"), Kind.FAR, 10L);
        assertAsked(counting("skip back 1440"), Kind.FAR, 4L);
    }

    @Nested
    class APlusAgainstTheNormalDirection {

        private final Engine turnsLeft = engines().normal(Direction.CCW).built();

        @Test
        void isAskedAbout() {
            assertAsked(about(turnsLeft, "open p1", "view v", "turn 38"), Kind.AGAINST, "38");
            assertAsked(about(turnsLeft, "open p1", "view v", "skip 3 blades"), Kind.AGAINST, "3 blades");
        }

        @ParameterizedTest
        @ValueSource(strings = {"turn on 38", "turn back 38", "turn -38", "turn to 38", "turn 0"})
        void isNotWhatSaysItsSense(String line) {
            assertThat(about(turnsLeft, "open p1", "view v", line)).isEmpty();
        }

        /** Whoever has only drawn whole turns and is to draw a little for a seam is not asked; whoever loses a digit is. */
        @ParameterizedTest
        @CsvSource({"9, false", "-8, false", "45, false", "3.6, true", "36, true", "36.5, true", "3650, true"})
        void afterWholeTurnsOnlyALostDigitIsAskedAbout(String degrees, boolean asked) {
            List<Doubt> doubts = about(
                    engine,
                    "view vs",
                    "datum s1 1",
                    "draw 361",
                    "draw -364",
                    "draw 363",
                    "draw -367",
                    "draw " + degrees);
            assertThat(doubts).extracting(Doubt::kind).isEqualTo(asked ? List.of(Kind.OFF_BY_TEN) : List.of());
        }

        @Test
        void isNoneWhereTheShaftTurnsClockwiseOrTheScopeTipIsDrawn() {
            assertThat(counting("turn 38")).isEmpty();
            assertThat(about(turnsLeft, "view vs", "datum s1 1", "draw 38")).isEmpty();
        }
    }

    @Nested
    class APlusMinusBehindBlades {

        @ParameterizedTest
        @ValueSource(
                strings = {"here 1 ± 1", "round 1 +- 1", "turn on 3 blades ± 1", "skip on 3 blades ±1", "datum c1 1 ± 1"
                })
        void isAskedForItsUnit(String line) {
            assertAsked(counting(line), Kind.UNIT, number("1"), 9.0);
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "here 1 ± 1 deg",
                    "round 1 ± 1°",
                    "turn on 3 blades ±1deg",
                    "here 1",
                    "here 1 ± 0",
                    "turn on 38 ± 1",
                    "datum c1 1 at 0 ± 1"
                })
        void isClearWithItsUnitOrBehindDegrees(String line) {
            assertThat(counting(line)).isEmpty();
        }
    }

    @Nested
    class AskingForParts {

        private final Engine two = new Engines()
                .row("c1", RowKind.ROTOR, 40, Direction.CW, 2, List.of(), true, 0)
                .view("v", "c1", 0, 2)
                .built();

        @Test
        void isToldWithWhatIsNoLongerAskedFor() {
            assertThat(about(two, "ask c1 tip pressure")).singleElement().satisfies(doubt -> {
                assertThat(doubt.kind()).isEqualTo(Kind.ASKS_FOR);
                assertThat(doubt.asks()).isFalse();
                assertThat(doubt.values()).containsExactly(new ZoneSet(0b0100), new ZoneSet(0b1011));
            });
            assertThat(about(two, "ask c1 all")).isEmpty();
        }
    }

    @Test
    void aRunOverTheLastBladeIsAskedAbout() {
        BitSet run = new BitSet();
        run.set(0, 3);
        run.set(37, 40);
        assertAsked(
                counting("noaccess root 38-3 because blocked").stream()
                        .filter(doubt -> doubt.kind() == Kind.WRAPS)
                        .toList(),
                Kind.WRAPS,
                38,
                3,
                6,
                run);
        assertThat(about(engine, "c1 saw root 38-3 photo a.jpg"))
                .extracting(Doubt::kind)
                .containsExactly(Kind.WRAPS);
        assertThat(counting("noaccess root 3-5 because blocked"))
                .extracting(Doubt::kind)
                .doesNotContain(Kind.WRAPS);
    }

    @Nested
    class AnAcceptance {

        private static List<Doubt> about(String line) {
            Engine tipsOnly = new Engines()
                    .row("c1", RowKind.ROTOR, 4, Direction.CW, 2, List.of(), false, 0)
                    .view("v", "c1", 0, 10, "tip")
                    .built();
            return DoubtsTest.about(tipsOnly, "view v", "datum c1 1", line);
        }

        @Test
        void alwaysTellsTheRowAndHowManyCells() {
            BitSet all = new BitSet();
            all.set(0, 4);
            assertThat(about("noaccess root all because no view shows it"))
                    .singleElement()
                    .satisfies(told -> {
                        assertThat(told.asks()).isFalse();
                        assertThat(told.row().orElseThrow().id()).isEqualTo("c1");
                        assertThat(told.values()).containsExactly(4, all, 0);
                    });
            assertThat(about("noaccess unshown because no view shows it"))
                    .isEqualTo(about("noaccess root all because no view shows it"));
        }

        @Test
        void ofWhatViewsCanShowIsAskedAbout() {
            assertThat(about("noaccess root and tip 2-3 because the order ends here"))
                    .filteredOn(Doubt::asks)
                    .singleElement()
                    .satisfies(asked -> {
                        assertThat(asked.kind()).isEqualTo(Kind.ACCEPTS_SHOWN);
                        assertThat(asked.values()).containsExactly(4, 2, "v");
                    });
        }

        @Test
        void withoutAWordWhyIsAskedAbout() {
            for (String reason : List.of("ok", "--", "n/a", "OK, fine", "passt")) {
                assertThat(about("noaccess root all because " + reason))
                        .filteredOn(Doubt::asks)
                        .as(reason)
                        .extracting(Doubt::kind)
                        .containsExactly(Kind.REASON);
            }
        }
    }

    @Nested
    class AFinding {

        @Test
        void longerThanAnyBladeIsAskedAbout() {
            assertAsked(counting("look", "nick 1 tip 800"), Kind.LONGER, 800.0, 300.0);
            assertThat(counting("look", "nick 1 tip 40 in"))
                    .extracting(Doubt::kind)
                    .containsExactly(Kind.LONGER);
            assertThat(counting("look", "nick 1 tip 12")).isEmpty();
        }

        @Test
        void onABladeThatWasNotInViewIsAskedAbout() {
            assertAsked(counting("turn on 36", "nick 7 tip"), Kind.NOT_IN_VIEW, 7, 37);
            assertThat(counting("nick 7 tip")).extracting(Doubt::kind).containsExactly(Kind.NOT_IN_VIEW);
            assertThat(counting("turn on 36", "turn on 36", "nick 39 tip"))
                    .extracting(Doubt::kind)
                    .containsExactly(Kind.NOT_IN_VIEW);
        }

        @ParameterizedTest
        @ValueSource(strings = {"nick 1 tip", "nick 37 tip", "nick 39 tip", "nick 40 tip"})
        void onABladeThatPassedWhileWatchingIsNot(String line) {
            assertThat(counting("turn on 36", line)).isEmpty();
        }

        @Test
        void onAnyBladeAfterAWholeTurnOrWithoutACountIsNot() {
            assertThat(counting("round 1", "nick 22 tip")).isEmpty();
            assertThat(about(engine, "open p1", "view v", "nick 22 tip")).isEmpty();
            assertThat(counting("slip", "nick 22 tip")).isEmpty();
        }

        @Test
        void inAnotherRowThatIsNamedIsWrittenUpFromElsewhere() {
            assertThat(counting("s1 nick 7 tip")).isEmpty();
        }

        @Test
        void onAVaneThatTheScopeTipWasDrawnPastIsNot() {
            String[] drawn = {"view vs", "datum s1 1", "draw 60", "nick 4 tip"};
            assertThat(about(engine, drawn)).isEmpty();
            drawn[3] = "nick 20 tip";
            assertThat(about(engine, drawn)).extracting(Doubt::kind).containsExactly(Kind.NOT_IN_VIEW);
        }
    }

    @Nested
    class GoingOnAfterABreak {

        @ParameterizedTest
        @ValueSource(strings = {"turn on 30", "look"})
        void isAskedAboutAsAfterASlip(String line) {
            assertAsked(counting("turn on 30", "pause", line), Kind.BREAK, 5, "pause");
            assertAsked(counting("pause", "takeover Bo", "note back", line), Kind.BREAK, 5, "takeover Bo");
        }

        @Test
        void isFineOnceTheRotorIsKnownOrWasHeld() {
            assertThat(counting("pause", "here 1", "turn on 30")).isEmpty();
            assertThat(counting("pause", "round 1")).isEmpty();
            assertThat(counting("pause held", "turn on 30")).isEmpty();
            assertThat(counting("pause", "turn on 30", "turn on 30")).isEmpty();
            assertThat(counting("pause", "void 4 because nobody left", "turn on 30"))
                    .isEmpty();
        }
    }

    @Nested
    class ThePortInUse {

        @Test
        void isAskedAboutWhenItIsShutWithTheScopeIn() {
            assertAsked(counting("shut p1 torqued"), Kind.SCOPE_IN, "p1", "v");
            assertThat(counting("out", "shut p1 torqued")).isEmpty();
            assertThat(counting("view vs", "shut p1 torqued")).isEmpty();
        }

        @Test
        void isAskedAboutWhenItIsWatchedThroughAfterItWasShut() {
            assertAsked(counting("shut p1 torqued", "turn on 30"), Kind.THROUGH_SHUT, "p1", 4);
            assertThat(counting("shut p1", "open p1", "turn on 30")).isEmpty();
            assertThat(counting("shut p1", "skip on 30")).isEmpty();
        }
    }

    @Test
    void anIdentificationAtWhichTheCountIsLostIsAskedAbout() {
        assertAsked(counting("turn on 36", "here 7"), Kind.LOST, 10L);
        assertThat(counting("turn on 36", "here 37")).isEmpty();
    }
}
