package everyblade.picture.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Facets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What keeps each facet out of sight at one clock angle of its airfoil. Sight arcs are asked: first with every
 * criterion lifted, when only hiding is left, then with one more of them each time, in the order of {@link Hindrance}; what
 * is turned away is told as grazing whatever else keeps it out of sight.
 */
final class FacetJudge {

    private static final Turn WIDEST = Turn.ofDegrees(179.9);
    private static final double FARTHEST = 1e6;

    /** By kind of airfoil and facet, the sight arcs with the criteria up to and with this one. */
    private final Map<Hindrance, List<List<ArcSet>>> upTo = new EnumMap<>(Hindrance.class);

    private final Vantage vantage;
    private final List<List<ArcSet>> unhidden;

    FacetJudge(Vantage vantage) {
        this.vantage = vantage;
        Pose pose = vantage.pose();
        Criteria criteria = vantage.criteria();
        Criteria none = new Criteria(Turn.ZERO, Map.of(), OptionalDouble.empty());
        unhidden = arcs(vantage, seeing(pose, WIDEST, 0, FARTHEST), none);
        upTo.put(Hindrance.OUTSIDE_CONE, arcs(vantage, seeing(pose, pose.cone(), 0, FARTHEST), none));
        upTo.put(Hindrance.OUT_OF_RANGE, arcs(vantage, pose, none));
        upTo.put(Hindrance.GRAZING, arcs(vantage, pose, criteria.withoutDetail()));
        upTo.put(Hindrance.TOO_COARSE, arcs(vantage, pose, criteria));
    }

    private static Pose seeing(Pose pose, Turn cone, double near, double far) {
        return new Pose(pose.x(), pose.r(), pose.clock(), pose.forward(), pose.up(), cone, near, far, pose.pixels());
    }

    private static List<List<ArcSet>> arcs(Vantage vantage, Pose pose, Criteria criteria) {
        return vantage.setting().surely(pose, criteria);
    }

    /**
     * What keeps a facet out of sight; empty if it is in sight wherever rows may stand of which nobody knows where they are.
     *
     * @param airfoil counted from 0 by its number
     * @param clock where it stands
     */
    Optional<Hindrance> why(int airfoil, int facet, Turn clock) {
        long tick = clock.wrapped().floorTicks();
        int kind = vantage.setting().kind(airfoil + 1);
        if (upTo.get(Hindrance.TOO_COARSE).get(kind).get(facet).contains(tick)) {
            return Optional.empty();
        }
        if (!unhidden.get(kind).get(facet).contains(tick)) {
            return Optional.of(isTurnedAway(facet, clock) ? Hindrance.GRAZING : Hindrance.HIDDEN);
        }
        return upTo.entrySet().stream()
                .filter(criterion -> !criterion.getValue().get(kind).get(facet).contains(tick))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** Of a warped facet, which is turned away on the whole, a part may show. */
    private boolean isTurnedAway(int facet, Turn clock) {
        Facets facets = vantage.scene().facets();
        double stand = Math.toRadians(vantage.pose().clock().minus(clock).degrees());
        double y = vantage.pose().r() * StrictMath.sin(stand) - facets.centroid(facet, 1);
        double z = vantage.pose().r() * StrictMath.cos(stand) - facets.centroid(facet, 2);
        double x = vantage.pose().x() - facets.centroid(facet, 0);
        return x * facets.normal(facet, 0) + y * facets.normal(facet, 1) + z * facets.normal(facet, 2) < 0;
    }
}
