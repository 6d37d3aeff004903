package everyblade.picture.rendered;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.PixelLine;
import everyblade.core.finding.measure.Plane;
import everyblade.core.finding.measure.TwoPoints;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.picture.rendered.Rendered.Hit;
import everyblade.spi.EngineModel;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lengths measured by two points in pictures rendered from the scope tips of the shipped engine models. */
class MeasuredInPicturesTest {

    private static final int MEASUREMENTS = 1000;
    private static final int SIZE = 300;
    /** Standard uncertainties that a careful person may state: pixels, mm, degrees. */
    private static final double POINTING = 1;

    private static final double DISTANCE = 0.4;
    private static final double TILT = 3;
    /** The known length is known to ± 0.2 mm. */
    private static final double KNOWN = 0.1;

    /** Two pixels on one face of one airfoil, whose surface between them is nearly flat. */
    private record Pair(PixelLine line, Hit one, Hit other) {

        double length() {
            return one.distanceTo(other);
        }
    }

    private static List<Rendered> pictures(SplittableRandom random) throws Exception {
        List<Rendered> pictures = new ArrayList<>();
        for (String model : List.of("larkspur-4", "corncrake-12", "tansy-a1")) {
            Path file = Path.of("..", "..", "engine-models", model, EngineJsonReader.FILE);
            EngineModel read = ((Reading.Read) EngineJsonReader.read(file)).model();
            for (View view : read.views()) {
                Rendered.of(read, view, 360 * random.nextDouble(), SIZE).ifPresent(pictures::add);
            }
        }
        return pictures;
    }

    private static Optional<Pair> pair(Rendered picture, SplittableRandom random, double least, double most) {
        int x1 = random.nextInt(SIZE);
        int y1 = random.nextInt(SIZE);
        double far = least + (most - least) * random.nextDouble();
        double way = 2 * Math.PI * random.nextDouble();
        int x2 = (int) Math.round(x1 + far * Math.cos(way));
        int y2 = (int) Math.round(y1 + far * Math.sin(way));
        Optional<Hit> one = picture.at(x1, y1);
        Optional<Hit> other = picture.at(x2, y2);
        boolean sameFace = one.isPresent()
                && other.isPresent()
                && one.get().airfoil() == other.get().airfoil()
                && dot(one.get().normal(), other.get().normal()) > Math.cos(Math.toRadians(15));
        return sameFace
                ? Optional.of(new Pair(new PixelLine(x1, y1, x2, y2), one.get(), other.get()))
                : Optional.empty();
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** How the middle of a pair is seen, as the model and the pose tell it: off by as much as stated. */
    private static Plane seen(Rendered picture, Pair pair, SplittableRandom random) {
        double[] n = new double[3];
        for (int i = 0; i < 3; i++) {
            n[i] = (pair.one().normal()[i] + pair.other().normal()[i]) / 2;
        }
        double tilt = Math.toRadians(TILT);
        double a = tilt * random.nextGaussian();
        double b = tilt * random.nextGaussian();
        double towards = -n[2];
        return new Plane(
                picture.camera(),
                n[0] + a * towards,
                n[1] + b * towards,
                towards - a * n[0] - b * n[1],
                (pair.one().z() + pair.other().z()) / 2 + DISTANCE * random.nextGaussian(),
                DISTANCE,
                TILT);
    }

    /** Where a hand sets the points. */
    private static PixelLine set(PixelLine line, SplittableRandom random) {
        return new PixelLine(
                line.x1() + POINTING * random.nextGaussian(),
                line.y1() + POINTING * random.nextGaussian(),
                line.x2() + POINTING * random.nextGaussian(),
                line.y2() + POINTING * random.nextGaussian());
    }

    @Test
    void areWithinTheirStatedUncertaintyNineteenTimesInTwenty() throws Exception {
        SplittableRandom random = new SplittableRandom(20260517);
        List<Rendered> pictures = pictures(random);
        int within = 0;
        int measured = 0;
        while (measured < MEASUREMENTS) {
            Rendered picture = pictures.get(random.nextInt(pictures.size()));
            Optional<Pair> line = pair(picture, random, 15, 60);
            Optional<Pair> known = pair(picture, random, 30, 120);
            if (line.isEmpty()
                    || known.isEmpty()
                    || line.get().one().airfoil() != known.get().one().airfoil()) {
                continue;
            }
            Plane seen = seen(picture, line.get(), random);
            Plane knownSeen = seen(picture, known.get(), random);
            if (seen.incidence() > 60 || knownSeen.incidence() > 60) {
                continue; // a person is warned and looks more squarely
            }
            TwoPoints.Result result = TwoPoints.measure(
                    set(line.get().line(), random),
                    seen,
                    new TwoPoints.Known(
                            set(known.get().line(), random),
                            new Measured(
                                    Length.ofMillimetres(known.get().length() + KNOWN * random.nextGaussian()),
                                    Optional.of(Length.ofMillimetres(2 * KNOWN))),
                            knownSeen),
                    POINTING);
            double error =
                    Math.abs(result.length().value().millimetres() - line.get().length());
            double stated = result.length().plusMinus().orElseThrow().millimetres();
            within += error <= stated ? 1 : 0;
            measured++;
        }
        assertThat(pictures).hasSizeGreaterThan(10);
        assertThat(within).isGreaterThanOrEqualTo(MEASUREMENTS * 95 / 100);
    }
}
