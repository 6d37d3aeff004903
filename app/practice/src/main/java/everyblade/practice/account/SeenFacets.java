package everyblade.practice.account;

import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * What a whole drill had in sight.
 *
 * @param harms how each thing of the truth was in sight, in its order
 * @param facets of each airfoil of each row, by row: those that were properly in sight at some time
 * @param seconds for which each airfoil filled a good part of the picture, by row
 * @param turning speeds of the rotors while they were turned
 */
public record SeenFacets(
        List<TargetSighting> harms, Map<String, List<BitSet>> facets, Map<String, double[]> seconds, Turning turning) {

    /**
     * How fast rotors were turned.
     *
     * @param degrees of shaft in all
     * @param seconds in which
     * @param fastest degrees a second
     */
    public record Turning(double degrees, double seconds, double fastest) {

        /** Degrees a second on the average; 0 if nothing was turned. */
        public double mean() {
            return seconds == 0 ? 0 : degrees / seconds;
        }
    }
}
