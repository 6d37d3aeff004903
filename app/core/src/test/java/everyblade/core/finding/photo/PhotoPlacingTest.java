package everyblade.core.finding.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoPlacingTest {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** Entries, each with the second at which it was made, such as {@code 60 turn 90 in 30s}. */
    private static Fold fold(Engine engine, List<String> lines) {
        Fold fold = Fold.start(engine);
        for (String line : lines) {
            String[] parts = line.split(" ", 2);
            Instant at = START.plusMillis(Math.round(1000 * Double.parseDouble(parts[0])));
            try {
                int number = fold.entries().size() + 1;
                fold = fold.with(new Logged(number, at, "Test", false, parts[1], EntryParser.parse(parts[1])));
            } catch (Refusal refusal) {
                throw new AssertionError(line + ": " + English.say(refusal));
            }
        }
        return fold;
    }

    /** 36 blades of 10° each. */
    private static PhotoPlace at(double second, String... lines) {
        return PhotoPlacing.of(fold(Engines.of(36, 2), List.of(lines))).at(START.plusMillis(Math.round(1000 * second)));
    }

    @Nested
    class APicture {

        private final String[] job = {"10 view v", "20 datum c1 1", "60 turn 90 in 20s", "100 skip 40", "150 look"};

        @Test
        void takenAtRestShowsTheBladeAtTheReference() {
            PhotoPlace place = at(70, "10 view v", "20 datum c1 1", "60 turn 90", "300 note lunch");

            // Clockwise turning brings lower numbers to the reference: blade 1 went on by nine pitches.
            assertThat(English.say(place.likely())).isEqualTo("about blade 28");
            assertThat(place.shaftAngle().orElseThrow()).isEqualTo(90, within(1e-6));
            assertThat(place.moving()).isFalse();
            assertThat(place.entry()).isEqualTo(3);
        }

        @Test
        void takenBeforeATurnOfStatedLengthBeganShowsWhereItBegan() {
            assertThat(at(35, job).airfoil()).contains(1);
        }

        @Test
        void takenWithinATurnIsPlacedAsIfItWereEven() {
            PhotoPlace place = at(50, job);

            assertThat(place.shaftAngle().orElseThrow()).isEqualTo(45, within(1e-6));
            assertThat(place.moving()).isTrue();
            assertThat(place.plusMinus()).isEqualTo(0.2 * 90, within(1e-6));
            assertThat(place.airfoilsOff()).isEqualTo(2);
        }

        @Test
        void takenBeforeAnythingWasInViewIsOfNothing() {
            assertThat(at(5, job).view()).isEmpty();
            assertThat(at(15, "10 view v", "60 turn 90").airfoil()).isEmpty();
            assertThat(at(15, job).view().orElseThrow().id()).isEqualTo("v");
        }

        @Test
        void isMendedByALaterIdentification() {
            List<String> lines =
                    List.of("10 view v", "20 datum c1 1", "60 turn 92 ± 5", "100 turn 4 ± 5 in 5s", "150 here 28 ± 0");
            PhotoPlace place = PhotoPlacing.of(fold(Engines.of(36, 2), lines)).at(START.plusSeconds(70));

            assertThat(place.shaftAngle().orElseThrow()).isEqualTo(89, within(0.1));
            assertThat(place.airfoil()).contains(28);
        }

        @Test
        void leavesOutWhatIsVoid() {
            assertThat(at(70, "10 view v", "20 datum c1 1", "60 turn 90", "80 void 3 because no")
                            .airfoil())
                    .contains(1);
        }

        /** Turned back, what the pad takes up is not known yet: blade 1 stands 4° clockwise of the reference, or up to 10°. */
        @Test
        void takenAfterABacklashMayShowTheNextBladeOnThatSideOnly() {
            Engine engine = new Engines()
                    .rotor("c1", 36)
                    .view("v", "c1", 0, 2)
                    .pad("pad", Ratio.ONE, 0, 6, 0)
                    .built();
            PhotoPlace place = PhotoPlacing.of(
                            fold(engine, List.of("10 view v", "20 datum c1 1", "60 turn 94", "90 turn back 90")))
                    .at(START.plusSeconds(95));

            assertThat(place.airfoil()).contains(1);
            assertThat(place.plusMinus()).isEqualTo(6, within(1e-6));
            assertThat(place.airfoilsOff()).isEqualTo(1);
        }

        /** The same the other way round: blade 1 stands 4° short of the reference, or up to 10°. */
        @Test
        void takenAfterABacklashTheOtherWayMayShowTheOneOnTheOtherSideOnly() {
            Engine engine = new Engines()
                    .rotor("c1", 36)
                    .view("v", "c1", 0, 2)
                    .pad("pad", Ratio.ONE, 0, 6, 0)
                    .built();
            PhotoPlacing placing = PhotoPlacing.of(fold(
                    engine,
                    List.of("10 view v", "20 datum c1 1", "60 turn -94", "90 turn on 90", "140 turn on 90 in 40s")));

            assertThat(placing.at(START.plusSeconds(95)).airfoil()).contains(1);
            assertThat(placing.at(START.plusSeconds(95)).airfoilsOff()).isEqualTo(1);
            assertThat(placing.at(START.plusSeconds(120)).plusMinus())
                    .as("in the middle of the next turn")
                    .isEqualTo(6 + 18, within(1e-6));
        }

        @Test
        void takenBeforeATurnThatIsVoidIsAtRest() {
            PhotoPlace place = at(40, "10 view v", "20 datum c1 1", "60 turn 90", "80 void 3 because no");
            assertThat(place.moving()).isFalse();
            assertThat(place.entry()).isEqualTo(2);
            assertThat(at(15, "10 view v", "60 turn 90 in 20s").moving()).isFalse();
        }

        @Test
        void saysThatTheCountWasLost() {
            PhotoPlace place =
                    at(70, "10 view v", "20 datum c1 1", "60 turn 90 ± 1", "100 turn 90 ± 1", "150 here 3 ± 1");

            assertThat(place.lost()).isTrue();
            assertThat(English.say(place.likely())).endsWith("the count was lost");
        }

        @Test
        void takenAfterTheViewWasChangedIsThroughTheLaterOne() {
            Engine engine = new Engines()
                    .rotor("c1", 36)
                    .stator("s1", 24)
                    .view("v", "c1", 0, 2)
                    .view("w", "s1", 0, 2)
                    .built();
            PhotoPlacing placing =
                    PhotoPlacing.of(fold(engine, List.of("10 view v", "20 datum c1 1", "30 view w", "40 note on")));
            assertThat(placing.at(START.plusSeconds(29)).view().orElseThrow().id())
                    .isEqualTo("v");
            assertThat(placing.at(START.plusSeconds(30)).view().orElseThrow().id())
                    .isEqualTo("w");
            assertThat(placing.at(START.plusSeconds(30)).entry()).isEqualTo(3);
            assertThat(placing.at(START.plusSeconds(90)).row().orElseThrow().id())
                    .isEqualTo("s1");
        }

        /** A quarter of the way; 0.2 · 90° · 2 √(¼ · ¾). */
        @ParameterizedTest
        @CsvSource({"40, 0, 0", "45, 22.5, 15.588457", "50, 45, 18", "55, 67.5, 15.588457"})
        void isLessSureTheNearerToTheMiddleOfATurn(double second, double angle, double plusMinus) {
            PhotoPlace place = at(second, job);
            assertThat(place.shaftAngle().orElseThrow()).isEqualTo(angle, within(1e-6));
            assertThat(place.plusMinus()).isEqualTo(plusMinus, within(1e-6));
            assertThat(place.moving()).isEqualTo(second > 40);
        }

        @Test
        void takenWhileNothingWasIdentifiedHasAnAngleAndNoBlade() {
            PhotoPlace place = at(35, "10 view v", "60 turn 90");
            assertThat(place.shaftAngle().orElseThrow()).isEqualTo(45, within(1e-6));
            assertThat(place.plusMinus()).isEqualTo(18, within(1e-6));
            assertThat(place.moving()).isTrue();
            assertThat(place.airfoil()).isEmpty();
            assertThat(place.airfoilsOff()).isZero();
            assertThat(place.likely()).isEqualTo(Likely.Nothing.COUNTED);
            assertThat(place.agreesWith(17)).isTrue();
        }

        /** It cannot have begun before the entry before it. */
        @Test
        void takenInATurnThatIsSaidToHaveTakenLongerThanThereWasTimeIsPlacedInWhatThereWas() {
            assertThat(at(22.5, "10 view v", "20 datum c1 1", "25 turn 90 in 60s")
                            .shaftAngle()
                            .orElseThrow())
                    .isEqualTo(45, within(1e-6));
        }

        /** Ten turns, uneven by two at their middle. */
        @Test
        void mayShowNoMoreThanAnyBladeOfTheRow() {
            PhotoPlace place = at(40, "10 view v", "20 datum c1 1", "60 turn 3600 in 40s");
            assertThat(place.plusMinus()).isEqualTo(720, within(1e-6));
            assertThat(place.airfoilsOff()).isEqualTo(18);
            assertThat(place.agreesWith(19)).isTrue();
        }

        /** 20 blades of 18°, numbered counter-clockwise, seen at 90°; turning clockwise brings higher numbers there. */
        @Test
        void isOfTheBladeAtTheReferenceWhicheverWayTheyAreNumbered() {
            Engine engine = new Engines()
                    .row("r", RowKind.ROTOR, 20, Direction.CCW, 1, List.of(), false, 0)
                    .view("v", "r", 90, 2)
                    .built();
            PhotoPlacing placing = PhotoPlacing.of(
                    fold(engine, List.of("10 view v", "20 datum r 3", "29 note on", "30 skip 54", "40 note on")));
            assertThat(placing.at(START.plusSeconds(25)).airfoil()).contains(3);
            assertThat(placing.at(START.plusSeconds(35)).airfoil()).contains(6);
        }

        /** 10° and 1.5° of lean: 11.5° is one pitch and a bit, so one blade off either way. */
        @Test
        void isAsUnsureAsTheIdentificationAndTheLeanOfTheBlades() {
            Engine engine = new Engines()
                    .row("r", RowKind.ROTOR, 36, Direction.CW, 1, List.of(), false, 1.5)
                    .view("v", "r", 0, 2)
                    .built();
            PhotoPlace place = PhotoPlacing.of(fold(engine, List.of("10 view v", "20 datum r 1 ± 10")))
                    .at(START.plusSeconds(25));
            assertThat(place.plusMinus()).isEqualTo(11.5, within(1e-6));
            assertThat(place.airfoilsOff()).isEqualTo(1);
        }

        @Test
        void agreesOverTheSeamOfTheRow() {
            PhotoPlace place = at(25, "10 view v", "20 datum c1 1 ± 20");
            assertThat(place.airfoilsOff()).isEqualTo(2);
            assertThat(place.agreesWith(35)).isTrue();
            assertThat(place.agreesWith(3)).isTrue();
            assertThat(place.agreesWith(34)).isFalse();
            assertThat(place.agreesWith(4)).isFalse();
        }

        /** The loss lies in the turn that was going on, at whose beginning blade 1 surely stood. */
        @Test
        void takenWithinTheTurnInWhichTheCountWasLostMayBeOfAnyBlade() {
            PhotoPlace place = at(30, "10 view v", "20 datum c1 1 ± 0", "60 turn 90 ± 1", "70 here 3 ± 0");
            assertThat(place.lost()).isTrue();
            assertThat(place.agreesWith(20)).isTrue();
            assertThat(at(15, "10 view v", "20 datum c1 1 ± 0", "60 turn 90 ± 1", "70 here 3 ± 0")
                            .lost())
                    .isFalse();
        }

        @Test
        void agreesWithAPersonsWordWithinWhatItMayBeOff() {
            PhotoPlace place = at(50, job);

            int likely = place.airfoil().orElseThrow();
            assertThat(place.agreesWith(likely + 2)).isTrue();
            assertThat(place.agreesWith(likely - 2)).isTrue();
            assertThat(place.agreesWith(likely + 3)).isFalse();
        }
    }

    @Nested
    class TheCamerasClock {

        private static CameraClock clock(String... lines) {
            return CameraClock.of(fold(Engines.of(36, 2), List.of(lines)));
        }

        @Test
        void isUtcUnlessSaid() {
            assertThat(clock().taken("2026-03-01T08:01:10")).contains(START.plusSeconds(70));
            assertThat(clock("1 fact \"camera clock\" wrong").taken("2026-03-01T08:01:10"))
                    .contains(START.plusSeconds(70));
        }

        @Test
        void isNotAheadByWhatIsVoid() {
            assertThat(clock("1 fact \"camera clock\" +02:00", "2 void 1 because of another camera")
                            .taken("2026-03-01T08:01:10"))
                    .contains(START.plusSeconds(70));
        }

        @Test
        void isAheadByWhatTheLastFactSays() {
            assertThat(clock("1 fact \"camera clock\" +01:00", "2 fact \"Camera Clock\" +02:00:05")
                            .taken("2026-03-01T10:01:15"))
                    .contains(START.plusSeconds(70));
        }

        @Test
        void givesWayToADifferenceThatTheCameraWrote() {
            assertThat(clock("1 fact \"camera clock\" +02:00").taken("2026-03-01T09:01:10+01:00"))
                    .contains(START.plusSeconds(70));
            assertThat(clock().taken("yesterday")).isEmpty();
        }
    }

    /**
     * Two hundred pictures over a job of 120 moves by a tool with play, the true rotor turning unevenly: how many are
     * given the right one of 36 blades.
     */
    @ParameterizedTest
    @CsvSource({"0, 185", "1, 180", "2, 170", "5, 150"})
    void mostOfTwoHundredPicturesAreGivenTheRightBladeAndNearlyAllWithinWhatIsStated(double play, int least) {
        SplittableRandom random = new SplittableRandom(20260518);
        Engine engine = new Engines()
                .rotor("c1", 36)
                .view("v", "c1", 0, 2)
                .pad("pad", Ratio.ONE, play, 0, 0)
                .built();
        List<String> lines = new ArrayList<>(List.of("0 view v", "1 datum c1 1"));
        List<double[]> truth = new ArrayList<>();
        double time = 1;
        double angle = 0;
        for (int move = 1; move <= 120; move++) {
            double begins = time + random.nextDouble(5, 60);
            double takes = random.nextDouble(5, 20);
            double amount = random.nextInt(1, 6) * 10;
            double turned = amount + play / 2 * random.nextGaussian();
            truth.add(new double[] {begins, takes, angle, turned});
            angle += turned;
            time = begins + takes;
            lines.add("%s turn %s in %ss".formatted(rounded(time), rounded(amount), rounded(takes)));
            if (move % 10 == 0) {
                time += 3;
                // The nearest blade is turned to the reference before it is called.
                double nearest = 10 * Math.rint(angle / 10);
                int blade = Math.floorMod((int) Math.round(-nearest / 10), 36) + 1;
                angle = nearest;
                lines.add("%s here %d ± %s".formatted(rounded(time), blade, rounded(Math.max(0.1, 3 * play))));
                truth.add(new double[] {time, 0.001, angle, 0});
            }
        }
        PhotoPlacing placing = PhotoPlacing.of(fold(engine, lines));
        int right = 0;
        int within = 0;
        int pictures = 200;
        for (int i = 0; i < pictures; i++) {
            double taken = random.nextDouble(2, time);
            int blade = Math.floorMod(Math.round(-angleAt(truth, taken) / 10), 36) + 1;
            PhotoPlace place = placing.at(START.plusMillis(Math.round(1000 * taken)));
            right += place.airfoil().orElseThrow() == blade ? 1 : 0;
            within += place.agreesWith(blade) ? 1 : 0;
        }
        assertThat(right).isGreaterThanOrEqualTo(least);
        assertThat(within).isGreaterThanOrEqualTo(pictures * 95 / 100);
    }

    /** A turn that begins slowly and ends slowly. */
    private static double angleAt(List<double[]> truth, double time) {
        double angle = 0;
        for (double[] move : truth) {
            double share = Math.max(0, Math.min(1, (time - move[0]) / move[1]));
            if (share > 0) {
                angle = move[2] + move[3] * (3 * share * share - 2 * share * share * share);
            }
        }
        return angle;
    }

    private static String rounded(double number) {
        return java.math.BigDecimal.valueOf(number)
                .setScale(3, java.math.RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
