package everyblade.session.photo;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.ShownLength;
import everyblade.core.finding.measure.Extent;
import everyblade.core.finding.measure.PixelLine;
import everyblade.core.finding.measure.Slant;
import everyblade.core.finding.measure.Source;
import everyblade.core.finding.measure.TwoPoints;
import everyblade.fact.Fact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A size that was measured in a picture by two points, against a known length by two others.
 *
 * @param size with its expanded uncertainty (k = 2)
 * @param budget relative standard uncertainty by source, the largest first
 * @param seen how the place was seen, by the engine's geometry; empty where that does not tell
 * @param chord of the airfoil at the place, where it is known
 * @param span of the airfoil, where it is known
 * @param warnings why it may be worse than that
 */
public record PictureSize(
        Measured size,
        Map<Source, Double> budget,
        Optional<Slant> seen,
        Optional<Length> chord,
        Optional<Length> span,
        List<Fact> warnings) {

    /** How exactly a hand sets a point, standard uncertainty in picture elements; common practice, no source. */
    public static final double POINTING = 1;

    private static final Slant SQUARE = new Slant(0, 1, 0);

    public PictureSize {
        warnings = List.copyOf(warnings);
    }

    /**
     * What is known of a place before anything is measured in the picture: how it was seen, and how large the airfoil is.
     *
     * @param seen as {@link Sighting} tells
     * @param chord as {@link Extent} tells
     * @param span as {@link Extent} tells
     */
    public record Surface(Optional<Slant> seen, Optional<Length> chord, Optional<Length> span) {

        /** Nothing is known. */
        public static final Surface UNKNOWN = new Surface(Optional.empty(), Optional.empty(), Optional.empty());

        /** How large the airfoil is, as far as it is known; such as {@code chord here 43.2 mm}. */
        public List<Fact> extents() {
            List<Fact> extents = new ArrayList<>();
            chord.ifPresent(whole -> extents.add(new Said.Extent(Whole.CHORD, whole.shown(LengthUnit.MM, 1))));
            span.ifPresent(whole -> extents.add(new Said.Extent(Whole.SPAN, whole.shown(LengthUnit.MM, 1))));
            return extents;
        }

        /** Of what a picture shows. */
        public static Surface of(Album album, JobPhoto photo, Subject subject) {
            return new Surface(
                    Sighting.of(album, photo, subject),
                    Extent.chord(subject.row(), subject.zones()),
                    Extent.span(album.scene().model(), subject.row()));
        }
    }

    /**
     * Measures a line.
     *
     * @param line to measure, in picture elements of the upright picture
     * @param known where the known length is
     * @param length how long that is
     * @param surface on which both lie
     * @param pointing standard uncertainty of each coordinate of each point, picture elements
     */
    public static PictureSize of(PixelLine line, PixelLine known, Measured length, Surface surface, double pointing) {
        Slant seen = surface.seen().orElse(SQUARE);
        TwoPoints.Result result = TwoPoints.measure(line, seen, new TwoPoints.Known(known, length, seen), pointing);
        List<Fact> warnings = new ArrayList<>(result.warnings());
        if (surface.seen().isEmpty()) {
            warnings.add(Doubt.HOW_IT_WAS_SEEN);
        }
        if (length.plusMinus().isEmpty()) {
            warnings.add(Doubt.HOW_EXACT_THE_KNOWN_LENGTH_IS);
        }
        return new PictureSize(
                result.length(), result.budget(), surface.seen(), surface.chord(), surface.span(), warnings);
    }

    /** Such as {@code 1.42 ± 0.12 mm}: the uncertainty rounded up to two digits (JCGM 100:2008, 7.2.6), the size as far. */
    public String text() {
        BigDecimal plusMinus = size.plusMinus().orElseThrow().mm();
        int decimals = Math.max(0, 2 + plusMinus.scale() - plusMinus.precision());
        return size.value().mm().setScale(decimals, RoundingMode.HALF_EVEN).toPlainString() + " ± "
                + plusMinus.setScale(decimals, RoundingMode.UP).toPlainString() + " mm";
    }

    /** Such as {@code seen up to about 41° from square, from about 23 mm}. */
    public static Fact seen(Slant seen) {
        return new Said.Aslant(seen.incidence(), seen.distance());
    }

    /** The size as shares of chord and span, as far as these are known; such as {@code 3.8 % of the chord}. */
    public List<Fact> shares() {
        List<Fact> shares = new ArrayList<>();
        chord.ifPresent(whole -> shares.add(share(Whole.CHORD, whole)));
        span.ifPresent(whole -> shares.add(share(Whole.SPAN, whole)));
        return shares;
    }

    private Fact share(Whole of, Length whole) {
        return new Said.Share(
                100 * size.value().millimetres() / whole.millimetres(), of, whole.shown(LengthUnit.MM, 1));
    }

    /** What a length is held against. */
    public enum Whole {
        CHORD,
        SPAN
    }

    /** What is told of a size and of its place. */
    public sealed interface Said extends Fact {

        record Extent(Whole of, ShownLength length) implements Said {}

        /** @param percent of the whole */
        record Share(double percent, Whole of, ShownLength length) implements Said {}

        /**
         * How the place was seen.
         *
         * @param degrees from square, at most
         * @param distance mm
         */
        record Aslant(double degrees, double distance) implements Said {}
    }

    /** What nobody knows of how a size was taken. */
    public enum Doubt implements Fact {
        HOW_IT_WAS_SEEN,
        HOW_EXACT_THE_KNOWN_LENGTH_IS
    }
}
