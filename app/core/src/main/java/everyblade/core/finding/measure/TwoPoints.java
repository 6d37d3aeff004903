package everyblade.core.finding.measure;

import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.Warning.Choice;
import everyblade.core.finding.measure.Warning.Line;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Measures a length in a picture by two points, against a known length by two others.
 *
 * <p>Model: L = K · p/q, with K the known length and p and q what the line and the known length extend over by where
 * and how slantwise they lie. All that enters is taken as independent, so the squares of the relative standard
 * uncertainties add up (JCGM 100:2008, 5.1.6).
 */
public final class TwoPoints {

    private static final double COVERAGE_FACTOR = 2;
    /** From here on a slant is worth a warning; half of what counts as grazing. */
    private static final double SLANTED = 30;

    private static final double GRAZING = 60;
    /** Closer than so many standard uncertainties of pointing, first order no longer holds. */
    private static final double LEAST_POINTINGS = 5;

    private TwoPoints() {}

    /**
     * A known length in the picture.
     *
     * @param line where it is
     * @param length how long it is, with its uncertainty
     * @param seen how
     */
    public record Known(PixelLine line, Measured length, Seen seen) {}

    /**
     * A length that was measured.
     *
     * @param length with its expanded uncertainty (k = 2)
     * @param budget relative standard uncertainty by source, the largest first
     * @param warnings why it may be worse than that
     */
    public record Result(Measured length, Map<Source, Double> budget, List<Warning> warnings) {

        public Result {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Measures a line.
     *
     * @param line to measure
     * @param seen how
     * @param known length in the same picture
     * @param pointing standard uncertainty of each coordinate of each point, pixels
     */
    public static Result measure(PixelLine line, Seen seen, Known known, double pointing) {
        Seen.Extension extension = seen.extension(line);
        Seen.Extension knownExtension = known.seen().extension(known.line());
        double value = known.length().value().millimetres() * extension.length() / knownExtension.length();
        Map<Source, Double> sources = new LinkedHashMap<>();
        // Of each end only what lies along the line counts to first order, so of a line twice the square of one.
        sources.put(Source.POINTING_AT_LINE, Math.sqrt(2) * pointing / line.length());
        sources.put(
                Source.POINTING_AT_KNOWN, Math.sqrt(2) * pointing / known.line().length());
        sources.put(
                Source.KNOWN_LENGTH,
                known.length().standardUncertainty() / known.length().value().millimetres());
        sources.put(Source.DISTANCE_OF_LINE, extension.ofDistance());
        sources.put(Source.DISTANCE_OF_KNOWN, knownExtension.ofDistance());
        sources.put(Source.SLANT_OF_LINE, extension.ofSlant());
        sources.put(Source.SLANT_OF_KNOWN, knownExtension.ofSlant());
        double relative =
                Math.sqrt(sources.values().stream().mapToDouble(u -> u * u).sum());
        Length plusMinus = Length.ofMillimetres(COVERAGE_FACTOR * relative * value);
        return new Result(
                new Measured(Length.ofMillimetres(value), Optional.of(plusMinus)),
                sorted(sources),
                warnings(line, seen, known, pointing));
    }

    private static Map<Source, Double> sorted(Map<Source, Double> sources) {
        Map<Source, Double> sorted = new LinkedHashMap<>();
        sources.entrySet().stream()
                .sorted(Map.Entry.<Source, Double>comparingByValue().reversed())
                .forEach(source -> sorted.put(source.getKey(), source.getValue()));
        return sorted;
    }

    private static List<Warning> warnings(PixelLine line, Seen seen, Known known, double pointing) {
        List<Warning> warnings = new ArrayList<>();
        slanted(Line.MEASURED, seen).ifPresent(warnings::add);
        slanted(Line.KNOWN, known.seen()).ifPresent(warnings::add);
        if (Math.min(line.length(), known.line().length()) < LEAST_POINTINGS * pointing) {
            warnings.add(Choice.POINTS_TOO_CLOSE);
        }
        if (known.seen().distance() > 1.5 * seen.distance()
                || seen.distance() > 1.5 * known.seen().distance()) {
            warnings.add(Choice.OTHER_DISTANCE);
        }
        return warnings;
    }

    private static Optional<Warning> slanted(Line line, Seen seen) {
        if (seen.incidence() < SLANTED) {
            return Optional.empty();
        }
        return Optional.of(new Warning.Slanted(
                line, seen.incidence(), 1 / Math.cos(Math.toRadians(seen.incidence())), seen.incidence() > GRAZING));
    }
}
