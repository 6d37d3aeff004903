package everyblade.practice.harm;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import java.util.List;

/**
 * Something on one airfoil.
 *
 * @param kind of it
 * @param row id of the row
 * @param airfoil its number, from 1
 * @param zones names of all zones that it touches, the one that it lies in first
 * @param face of the mesh that it lies on
 * @param size its greatest extent, mm; of a nick its depth
 * @param at its middle; of what lies at an edge, the place on the edge
 * @param normal out of the metal there
 * @param along of unit length: along the edge, or across the span on a face
 * @param into of unit length: from the edge into the airfoil, square to {@code along}
 * @param seed of its irregularities
 */
public record Harm(
        HarmKind kind,
        String row,
        int airfoil,
        List<String> zones,
        int face,
        double size,
        Vector at,
        Vector normal,
        Vector along,
        Vector into,
        int seed) {

    public Harm {
        zones = List.copyOf(zones);
    }

    /** The zones that it touches, as the zoning of its row numbers them. */
    public ZoneSet zones(Zoning zoning) {
        long bits = 0;
        for (String zone : zones) {
            bits |= 1L << zoning.names().indexOf(zone);
        }
        return new ZoneSet(bits);
    }

    /** Whether metal is gone there. */
    public boolean isCut() {
        return kind == HarmKind.NICK || kind == HarmKind.MISSING;
    }

    /** How far from its place it reaches at most, mm. */
    public double reach() {
        return switch (kind) {
            case NICK -> 1.4 * size + 0.3;
            case CRACK -> size + 0.3;
            case MISSING -> 1.3 * size;
            case RUB, DEPOSIT -> 0.8 * size;
            case DENT, BURN, COATING, MARK, GLINT -> 0.65 * size;
        };
    }
}
