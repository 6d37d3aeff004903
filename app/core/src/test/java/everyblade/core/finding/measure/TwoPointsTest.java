package everyblade.core.finding.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.English;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.Plane.Camera;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

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
