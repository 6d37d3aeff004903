package everyblade.core.gap;

import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.sight.StationSight;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What an airfoil must pass for a facet to be surely shown, from every pose and all of it that can be: clock angles from at
 * most {@code low} to at least {@code high}. Where {@code high} is the lower, it may stand anywhere between them.
 *
 * @param low ticks
 * @param high ticks, within a turn of {@code low}
 */
record Need(long low, long high) {

    /** Any of these will do; none if the station does not show the facet. */
    static List<Need> of(StationSight sight, int facet) {
        int[] shown = IntStream.range(0, sight.patches(facet))
                .filter(patch -> sight.reaches(0, facet, patch))
                .toArray();
        List<Need> needs = new ArrayList<>();
        if (shown.length > 0) {
            for (Arc arc : sight.arcs(0, 0, facet, shown[0]).arcs()) {
                needs.add(of(sight, facet, shown, arc));
            }
        }
        return needs;
    }

    private static Need of(StationSight sight, int facet, int[] patches, Arc nominal) {
        long low = nominal.length();
        long high = 0;
        for (int patch : patches) {
            for (int kind = 0; kind < sight.kinds(); kind++) {
                for (int pose = 0; pose < sight.poses(); pose++) {
                    long slack = sight.slack(kind, pose, facet, patch);
                    for (Arc arc : sight.arcs(kind, pose, facet, patch).arcs()) {
                        long start = Circle.STANDARD.apart(nominal.start(), arc.start());
                        if (start < nominal.length() && -start < arc.length()) {
                            low = Math.min(low, start + arc.length() - 1 - slack);
                            high = Math.max(high, start + slack);
                        }
                    }
                }
            }
        }
        return new Need(nominal.start() + low, nominal.start() + high);
    }
}
