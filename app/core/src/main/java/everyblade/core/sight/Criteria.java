package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Settings;
import everyblade.core.entry.Zoning;
import everyblade.spi.ChordBand;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What makes a facet count as properly in sight, besides that it is in the cone and not hidden: the line of sight stands
 * at least so far from grazing the surface, 30.0° itself passes; and pixels are fine enough on it.
 *
 * @param grazing least angle between line of sight and surface, 0° to 90°
 * @param banded the same where a chord band has its own
 * @param detail smallest thing to be found, mm: the footprint of so many pixels on the tilted surface may not be larger;
 *     empty if no view is too coarse
 * @param pixels how many pixels must lie across a detail, at least one
 * @param proof width of the finest line seen on a test target for each mm of its distance: nothing finer is found,
 *     however many pixels there are; 0 if no target was looked at
 */
public record Criteria(Turn grazing, Map<ChordBand, Turn> banded, OptionalDouble detail, double pixels, double proof) {

    /** As many pixels across a detail as are asked for unless a job says otherwise. */
    private static final double USUAL_PIXELS = 3;

    private static final double ROUNDING = 1e-6;

    /** At least 30° everywhere (ISO 17637:2003 clause 2; ASME BPVC Section V Article 9, T-952), no detail asked. */
    public static final Criteria USUAL = new Criteria(Turn.ofDegrees(30), Map.of(), OptionalDouble.empty());

    /** With the usual number of pixels across a detail, and no test target. */
    public Criteria(Turn grazing, Map<ChordBand, Turn> banded, OptionalDouble detail) {
        this(grazing, banded, detail, USUAL_PIXELS, 0);
    }

    /** What the settings of a job ask for. */
    public static Criteria of(Settings settings) {
        Map<ChordBand, Turn> bands = new EnumMap<>(ChordBand.class);
        for (ChordBand band : ChordBand.values()) {
            settings.number("grazing-" + band.word()).ifPresent(angle -> bands.put(band, Turn.ofDegrees(angle)));
        }
        return new Criteria(
                Turn.ofDegrees(settings.number("grazing").orElseThrow()),
                bands,
                settings.number("detail"),
                settings.number("pixels").orElseThrow(),
                0);
    }

    public Criteria {
        if (!(pixels >= 1) || !(proof >= 0)) {
            throw new IllegalArgumentException("a detail covers at least a pixel, and a line on a target has a width");
        }
        banded = Map.copyOf(banded);
        banded.values().forEach(Criteria::check);
        check(grazing);
        if (detail.isPresent() && !(detail.getAsDouble() > 0)) {
            throw new IllegalArgumentException("a detail to be found has a size above 0 mm");
        }
    }

    private static void check(Turn angle) {
        if (angle.signum() < 0 || angle.compareTo(Turn.ofFraction(1, 4)) > 0) {
            throw new IllegalArgumentException("a line of sight stands from 0° to 90° from grazing, not " + angle);
        }
    }

    /** The same, for details down to this size, mm. */
    public Criteria withDetail(double millimetres) {
        return new Criteria(grazing, banded, OptionalDouble.of(millimetres), pixels, proof);
    }

    /** The same, however coarse a view is. */
    public Criteria withoutDetail() {
        return new Criteria(grazing, banded, OptionalDouble.empty(), pixels, proof);
    }

    /** The same on a day on which a line so wide for each mm of its distance was the finest seen. */
    Criteria withProof(double widthOverDistance) {
        return new Criteria(grazing, banded, detail, pixels, widthOverDistance);
    }

    /** The smallest thing found on a surface seen square on, for each mm of its distance from the scope tip. */
    double finest(Pose pose) {
        double across = 2 * Math.tan(CriteriaCut.radians(pose.cone()) / 2);
        return Math.max(pixels * across / pose.pixels(), proof);
    }

    /** All of it in one line, the same for equal criteria. */
    String written() {
        return grazing + " " + new TreeMap<>(banded) + " " + detail + " " + pixels + " " + proof;
    }

    /** Whether even the farthest and most slanted surface that else is in sight from there shows the detail. */
    boolean alwaysFine(Pose pose) {
        double slant = Stream.concat(Stream.of(grazing), banded.values().stream())
                .mapToDouble(angle -> Math.sin(Math.toRadians(angle.degrees())))
                .min()
                .orElseThrow();
        return detail.isEmpty() || finest(pose) * pose.far() * (1 + ROUNDING) <= detail.getAsDouble() * slant;
    }

    /** The least angle from grazing in a zone, by its index. */
    Turn grazing(Zoning zoning, int zone) {
        int bands = zoning.chords().size();
        if (bands == 0) {
            return grazing;
        }
        String word = zoning.chords().get(zone % bands);
        return banded.entrySet().stream()
                .filter(entry -> entry.getKey().word().equals(word))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(grazing);
    }
}
