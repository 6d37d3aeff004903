package everyblade.core.finding.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.English;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.Plane.Camera;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoPointsTest {

    private static final Camera CAMERA = new Camera(90, 400, 200, 200);

    private static Measured known(String value, String plusMinus) {
        return new Measured(new Length(new BigDecimal(value)), Optional.of(new Length(new BigDecimal(plusMinus))));
    }

    private static PixelLine line(double x1, double y1, double x2, double y2) {
        return new PixelLine(x1, y1, x2, y2);
    }

    private static double mm(TwoPoints.Result result) {
        return result.length().value().millimetres();
    }

    private static double plusMinus(TwoPoints.Result result) {
        return result.length().plusMinus().orElseThrow().millimetres();
    }

    @Nested
    class SquareOnAtOneDistance {

        private final Slant square = new Slant(0, 20, 0);

        private TwoPoints.Result measured(double pointing, String knownPlusMinus) {
            return TwoPoints.measure(
                    line(0, 0, 30, 40),
                    square,
                    new TwoPoints.Known(line(0, 100, 200, 100), known("10", knownPlusMinus), square),
                    pointing);
        }

        @Test
        void lengthsAreAsTheirPixels() {
            assertThat(mm(measured(1, "0"))).isEqualTo(2.5, within(1e-6));
        }

        /** u/L = √((0.1/10)² + 2 (1/50)² + 2 (1/200)²) = 0.030822; U = 2 u; computed. */
        @Test
        void theSquaresOfRelativeUncertaintiesAddUp() {
            assertThat(plusMinus(measured(1, "0.2"))).isEqualTo(2 * 2.5 * 0.0308221, within(1e-5));
        }

        @Test
        void theLargestSourceIsNamedFirst() {
            assertThat(measured(1, "0.2").budget().keySet()).startsWith(Source.POINTING_AT_LINE);
            assertThat(measured(0.01, "0.2").budget().keySet()).startsWith(Source.KNOWN_LENGTH);
        }

        @Test
        void nothingIsWarnedOf() {
            assertThat(measured(1, "0.2").warnings()).isEmpty();
        }
    }

    @Nested
    class Slanting {

        @Test
        void isWarnedOfWithHowMuchShorterALineMayLook() {
            TwoPoints.Result result = TwoPoints.measure(
                    line(0, 0, 50, 0),
                    new Slant(60, 20, 0),
                    new TwoPoints.Known(line(0, 0, 50, 0), known("5", "0"), new Slant(0, 20, 0)),
                    0);

            assertThat(English.say(result.warnings()))
                    .containsExactly(
                            "the line is seen 60° from square, so along the slant it looks up to 2.0 times shorter than it is");
            // Between 5 and 10 mm, every shortening as likely: 5 / 0.75, u = 0.25 / √3 / 0.75 of it.
            assertThat(mm(result)).isEqualTo(5 / 0.75, within(1e-6));
            assertThat(plusMinus(result)).isEqualTo(2 * 5 / 0.75 * 0.25 / Math.sqrt(3) / 0.75, within(1e-5));
        }

        @Test
        void tooMuchOfItAsksForAnotherLook() {
            assertThat(TwoPoints.measure(
                                    line(0, 0, 50, 0),
                                    new Slant(75, 20, 0),
                                    new TwoPoints.Known(line(0, 0, 50, 0), known("5", "0"), new Slant(75, 20, 0)),
                                    0)
                            .warnings())
                    .hasSize(2)
                    .allSatisfy(warning -> assertThat(English.say(warning)).contains("more squarely"));
        }

        /** A plane that runs away to the right at 45°, seen at its middle: along it lengths are √2 of what they look. */
        @Test
        void isTakenOutWhereThePlaneIsKnown() {
            double half = Math.sqrt(0.5);
            Plane slanting = new Plane(CAMERA, half, 0, half, 20, 0, 0);
            Plane square = new Plane(CAMERA, 0, 0, 1, 20, 0, 0);

            assertThat(slanting.incidence()).isEqualTo(45, within(1e-9));
            assertThat(slanting.extension(line(199, 200, 201, 200)).length())
                    .isEqualTo(
                            Math.sqrt(2)
                                    * square.extension(line(199, 200, 201, 200)).length(),
                            within(1e-2));
            assertThat(slanting.extension(line(200, 199, 200, 201)).length())
                    .isEqualTo(square.extension(line(200, 199, 200, 201)).length(), within(1e-9));
        }

        /** Points at (−1, 0, 10) and (1, 0, 12) of the plane z = 11 + x: a cone of 90° and 400 pixels have f = 200. */
        @Test
        void carriesBothPointsAlongTheirLinesOfSight() {
            double half = Math.sqrt(0.5);
            PixelLine line = line(200 - 200 / 10.0, 200, 200 + 200 / 12.0, 200);
            double middle = (line.x1() + line.x2()) / 2;
            double depth = 11 / (1 - (middle - 200) / 200);
            Plane plane = new Plane(CAMERA, half, 0, half, depth, 0, 0);

            double unit = new Plane(CAMERA, 0, 0, 1, 200, 0, 0)
                            .extension(line(0, 0, 1, 0))
                            .length()
                    / 1;
            assertThat(plane.extension(line).length() / CAMERA.scale()).isEqualTo(Math.sqrt(8), within(1e-9));
            assertThat(unit).isEqualTo(200, within(1e-9));
        }
    }

    /** Everything else square on, at one distance, and a known length that is exact. */
    @Nested
    class WhatIsWarnedOf {

        private final PixelLine line = line(0, 0, 100, 0);

        private List<Warning> warnings(PixelLine of, Seen seen, PixelLine known, Seen knownSeen, double pointing) {
            return TwoPoints.measure(of, seen, new TwoPoints.Known(known, known("5", "0"), knownSeen), pointing)
                    .warnings();
        }

        @ParameterizedTest
        @CsvSource({"5, 100, false", "4.99, 100, true", "100, 5, false", "100, 4.99, true"})
        void isPointsThatAreFewerThanFiveUncertaintiesApart(double length, double knownLength, boolean warned) {
            Slant square = new Slant(0, 20, 0);
            List<Warning> warnings = warnings(line(0, 0, length, 0), square, line(0, 9, knownLength, 9), square, 1);
            assertThat(warnings).isEqualTo(warned ? List.of(Warning.Choice.POINTS_TOO_CLOSE) : List.of());
        }

        @ParameterizedTest
        @CsvSource({"20, 30, false", "20, 30.1, true", "30, 20, false", "30.1, 20, true", "20, 20, false"})
        void isAKnownLengthHalfAsFarAgainOrMore(double distance, double knownDistance, boolean warned) {
            List<Warning> warnings = warnings(line, new Slant(0, distance, 0), line, new Slant(0, knownDistance, 0), 1);
            assertThat(warnings).isEqualTo(warned ? List.of(Warning.Choice.OTHER_DISTANCE) : List.of());
        }

        @ParameterizedTest
        @CsvSource({"29.9, false, false", "30, true, false", "60, true, false", "60.1, true, true"})
        void isASlantOfThirtyDegreesAndGrazingBeyondSixty(double degrees, boolean warned, boolean grazing) {
            double times = 1 / Math.cos(Math.toRadians(degrees));
            Slant slanted = new Slant(degrees, 20, 0);
            Slant square = new Slant(0, 20, 0);
            for (Warning.Line which : Warning.Line.values()) {
                boolean known = which == Warning.Line.KNOWN;
                assertThat(warnings(line, known ? square : slanted, line, known ? slanted : square, 1))
                        .isEqualTo(warned ? List.of(new Warning.Slanted(which, degrees, times, grazing)) : List.of());
            }
        }
    }

    /** Shortening between 1 and cos 60° = 0.5, every one as likely: a mean of 0.75, and 0.25 / √3 about it. */
    @Test
    void eachSourceOfUncertaintyIsToldByItself() {
        TwoPoints.Result result = TwoPoints.measure(
                line(0, 0, 30, 40),
                new Slant(60, 20, 0.4),
                new TwoPoints.Known(line(0, 0, 200, 0), known("10", "0.2"), new Slant(0, 20, 0.6)),
                1);

        assertThat(result.budget().get(Source.POINTING_AT_LINE)).isEqualTo(Math.sqrt(2) / 50, within(1e-12));
        assertThat(result.budget().get(Source.POINTING_AT_KNOWN)).isEqualTo(Math.sqrt(2) / 200, within(1e-12));
        assertThat(result.budget().get(Source.KNOWN_LENGTH)).isEqualTo(0.01, within(1e-12));
        assertThat(result.budget().get(Source.DISTANCE_OF_LINE)).isEqualTo(0.02, within(1e-12));
        assertThat(result.budget().get(Source.DISTANCE_OF_KNOWN)).isEqualTo(0.03, within(1e-12));
        assertThat(result.budget().get(Source.SLANT_OF_LINE)).isEqualTo(0.25 / Math.sqrt(3) / 0.75, within(1e-12));
        assertThat(result.budget().get(Source.SLANT_OF_KNOWN)).isZero();
        assertThat(List.copyOf(result.budget().values())).isSortedAccordingTo(Comparator.reverseOrder());
    }

    /** Half the picture is tan 30° off the axis. */
    @Test
    void aNarrowerPictureHasMorePixelsForTheSameAngle() {
        assertThat(new Camera(60, 400, 200, 200).scale()).isEqualTo(200 * Math.sqrt(3), within(1e-9));
        assertThat(CAMERA.scale()).isEqualTo(200, within(1e-9));
    }

    @Test
    void aLineTwiceAsFarIsTwiceAsLong() {
        TwoPoints.Result result = TwoPoints.measure(
                line(0, 0, 100, 0),
                new Slant(0, 20, 0),
                new TwoPoints.Known(line(0, 0, 100, 0), known("5", "0"), new Slant(0, 10, 0)),
                0);
        assertThat(mm(result)).isEqualTo(10, within(1e-9));
    }

    /** At 45° a length along the slope is 1 / cos of what it looks: a degree more of slope makes it tan 45° · 1° longer. */
    @Test
    void aTiltCountsAlongTheSlopeAndNotAcrossIt() {
        double half = Math.sqrt(0.5);
        double degree = Math.toRadians(1);
        Plane right = new Plane(CAMERA, half, 0, half, 20, 0.5, 1);
        Plane down = new Plane(CAMERA, 0, half, half, 20, 0.5, 1);
        PixelLine level = line(199, 200, 201, 200);
        PixelLine upright = line(200, 199, 200, 201);

        assertThat(right.extension(level).ofSlant()).isEqualTo(degree, within(0.03 * degree));
        assertThat(down.extension(upright).ofSlant()).isEqualTo(degree, within(0.03 * degree));
        assertThat(right.extension(upright).ofSlant()).isLessThan(0.02 * degree);
        assertThat(down.extension(level).ofSlant()).isLessThan(0.02 * degree);
        assertThat(right.extension(level).ofDistance()).isEqualTo(0.025, within(1e-12));
    }

    /** Points at (0, −1, 10) and (0, 1, 12) of the plane z = 11 + y, and the same a little beside the middle. */
    @Test
    void aSlopeDownwardsIsCarriedAsOneToTheRight() {
        double half = Math.sqrt(0.5);
        for (double beside : new double[] {0, 3}) {
            PixelLine line = line(200 + 200 * beside / 10, 180, 200 + 200 * beside / 12, 200 + 200 / 12.0);
            double y = ((line.y1() + line.y2()) / 2 - 200) / 200;
            Plane plane = new Plane(CAMERA, 0, half, half, 11 / (1 - y), 0, 0);
            assertThat(plane.extension(line).length() / CAMERA.scale()).isEqualTo(Math.sqrt(8), within(1e-9));
        }
    }

    @Test
    void aPlaceBehindTheScopeTipOrEdgeOnIsRefused() {
        for (ThrowingCallable wrong : List.<ThrowingCallable>of(
                () -> new Slant(90, 20, 0),
                () -> new Slant(-1, 20, 0),
                () -> new Slant(0, 0, 0),
                () -> new Slant(0, 20, -0.1),
                () -> new Plane(CAMERA, 0, 0, 1, 0, 0, 0),
                () -> new Plane(CAMERA, 0, 0, 1, 20, -0.1, 0),
                () -> new Plane(CAMERA, 0, 0, 1, 20, 0, -0.1))) {
            assertThatThrownBy(wrong).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(new Plane(CAMERA, 0, 0, 1, 20, 0, 0).incidence()).isZero();
        assertThat(new Plane(CAMERA, 2, 0, 2, 20, 0, 0).incidence())
                .as("whatever the length of the normal")
                .isEqualTo(45, within(1e-9));
        assertThat(new Plane(CAMERA, 0.6, 0, 0.8, 20, 0, 0).incidence())
                .isEqualTo(Math.toDegrees(Math.acos(0.8)), within(1e-9));
    }

    /** The uncertainty by first order against ten thousand worlds in which everything is off as it may be. */
    @Test
    void agreesWithTrialsOfEverythingThatMayBeOff() {
        SplittableRandom random = new SplittableRandom(20260516);
        PixelLine line = line(150, 180, 210, 230);
        PixelLine other = line(100, 300, 320, 260);
        double half = Math.sqrt(0.5);
        TwoPoints.Result stated = TwoPoints.measure(
                line,
                new Plane(CAMERA, half, 0, half, 18, 0.5, 1),
                new TwoPoints.Known(other, known("12", "0.4"), new Plane(CAMERA, 0.2, 0.1, 0.97, 20, 0.4, 1)),
                1.2);
        double squares = 0;
        int worlds = 10_000;
        for (int i = 0; i < worlds; i++) {
            double a = Math.toRadians(random.nextGaussian());
            double b = Math.toRadians(random.nextGaussian());
            double c = Math.toRadians(random.nextGaussian());
            double d = Math.toRadians(random.nextGaussian());
            TwoPoints.Result one = TwoPoints.measure(
                    off(line, 1.2, random),
                    new Plane(
                            CAMERA, half + a * half, b * half, half - a * half, 18 + 0.5 * random.nextGaussian(), 0, 0),
                    new TwoPoints.Known(
                            off(other, 1.2, random),
                            known(Double.toString(12 + 0.2 * random.nextGaussian()), "0"),
                            new Plane(
                                    CAMERA,
                                    0.2 + c * 0.97,
                                    0.1 + d * 0.97,
                                    0.97 - 0.2 * c - 0.1 * d,
                                    20 + 0.4 * random.nextGaussian(),
                                    0,
                                    0)),
                    1.2);
            squares += Math.pow(mm(one) - mm(stated), 2);
        }
        assertThat(2 * Math.sqrt(squares / worlds)).isEqualTo(plusMinus(stated), within(0.03 * plusMinus(stated)));
    }

    private static PixelLine off(PixelLine line, double u, SplittableRandom random) {
        return line(
                line.x1() + u * random.nextGaussian(),
                line.y1() + u * random.nextGaussian(),
                line.x2() + u * random.nextGaussian(),
                line.y2() + u * random.nextGaussian());
    }

    @Test
    void pointsThatAreOneAreNoLine() {
        assertThatThrownBy(() -> line(3, 4, 3, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> line(3, 4, Double.NaN, 4)).isInstanceOf(IllegalArgumentException.class);
    }
}
