package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.spi.ChordBand;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What makes a facet count as properly in sight, besides that it is in the cone and not hidden: the line of sight stands
 * at least so far from grazing the surface, 30.0° itself passes; and pixels are fine enough on it.
 *
 * @param grazing least angle between line of sight and surface, 0° to 90°
 * @param banded the same where a chord band has its own
 * @param detail smallest thing to be found, mm: three pixels' footprint on the tilted surface may not be larger; empty
 *     if no view is too coarse
 */
public record Criteria(Turn grazing, Map<ChordBand, Turn> banded, OptionalDouble detail) {

    /** At least 30° everywhere (ISO 17637:2003 clause 2; ASME BPVC Section V Article 9, T-952), no detail asked. */
    public static final Criteria USUAL = new Criteria(Turn.ofDegrees(30), Map.of(), OptionalDouble.empty());

    public Criteria {
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
        return new Criteria(grazing, banded, OptionalDouble.of(millimetres));
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
