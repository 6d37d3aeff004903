package everyblade.session.photo;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.Extent;
import everyblade.core.finding.measure.PixelLine;
import everyblade.core.finding.measure.Slant;
import everyblade.core.finding.measure.TwoPoints;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
 * @param warnings one line each
 */
public record PictureSize(
        Measured size,
        Map<String, Double> budget,
        Optional<Slant> seen,
        Optional<Length> chord,
        Optional<Length> span,
        List<String> warnings) {

    /** How exactly a hand sets a point, standard uncertainty in picture elements; common practice, no source. */
    public static final double POINTING = 1;

    private static final Slant SQUARE = new Slant(0, 1, 0);
    private static final String NOT_KNOWN =
            "the engine model does not tell how this was seen: the size holds only if it and the known length lie square to"
                    + " the line of sight and at the same distance";

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
        public List<String> extents() {
            List<String> extents = new ArrayList<>();
            chord.ifPresent(whole -> extents.add("chord here " + whole.text(LengthUnit.MM, 1)));
            span.ifPresent(whole -> extents.add("span " + whole.text(LengthUnit.MM, 1)));
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
        List<String> warnings = new ArrayList<>(result.warnings());
        if (surface.seen().isEmpty()) {
            warnings.add(NOT_KNOWN);
        }
        if (length.plusMinus().isEmpty()) {
            warnings.add("nobody said how exactly the known length is known, so it is taken as exact");
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
    public static String seenText(Slant seen) {
        return String.format(
                Locale.ROOT,
                "seen up to about %.0f° from square, from about %.0f mm",
                seen.incidence(),
                seen.distance());
    }

    /** The size as shares of chord and span, as far as these are known; such as {@code 3.8 % of the chord}. */
    public List<String> shares() {
        List<String> shares = new ArrayList<>();
        chord.ifPresent(whole -> shares.add(share(whole) + " of the chord (" + whole.text(LengthUnit.MM, 1) + ")"));
        span.ifPresent(whole -> shares.add(share(whole) + " of the span (" + whole.text(LengthUnit.MM, 1) + ")"));
        return shares;
    }

    private String share(Length whole) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * size.value().millimetres() / whole.millimetres());
    }
}
