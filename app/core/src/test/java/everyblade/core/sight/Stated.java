package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Patches;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Row;
import everyblade.spi.Station.Tolerance;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A station of boxes, all that it shows, and what looks from each of its poses. */
final class Stated {

    final SightScene scene;
    final Grain grain;
    final Patches patches;
    final Standings standings;
    final StationSight sight;
    final List<List<SightArcs>> found;
    final FacetSight[] looks;
    final int facets;
    final String name;
    private final Map<List<Integer>, ArcSet> known = new HashMap<>();

    Stated(String name, Blocks blocks, Pose nominal, Tolerance within, Criteria criteria) {
        this.name = name;
        try {
            ViewScene engine = blocks.scene();
            Row row = engine.model().row("own").orElseThrow();
            Setting setting = Setting.of(engine, engine.ring(row).orElseThrow(), row, nominal, within.mm(), 2);
            scene = setting.scene();
            grain = engine.grain(row).orElseThrow();
            patches = grain.patches();
            facets = patches.facetCount();
            List<Pose> family = PoseFamily.of(nominal, within);
            standings = Standings.of(family, setting.others());
            found = SightArcs.compute(scene, standings, criteria, Progress.NONE);
            looks = standings.sights(scene, criteria);
            sight = StationSight.compute(setting, grain, family, criteria, Progress.NONE);
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    SightArcs arcs(int kind, int standing) {
        return found.get(standings.pose(standing)).get(standings.way(kind, standing));
    }

    /** All arcs of a place on a facet. */
    ArcSet own(int kind, int standing, Facets places, int place, int facet) {
        return looks[standings.pose(standing)].arcs(places, place, facet, null).get(standings.way(kind, standing));
    }

    /** What a standing shows of a facet's middle. */
    ArcSet facet(int kind, int standing, int facet) {
        return StationSight.counted(arcs(kind, standing).arcs(facet));
    }

    private boolean shows(int kind, int standing, int facet) {
        return !facet(kind, standing, facet).isEmpty();
    }

    /**
     * What a patch shows: nothing, if nothing is shown of its facet and those round it; as its facet does, if the patches
     * at the facet's corners all do, of which it asks only those at the rim if all round it is shown; nothing, if neither
     * these nor the facet's middle show anything; else what it shows itself.
     */
    ArcSet patch(int kind, int standing, int facet, int patch) {
        ArcSet ofFacet = facet(kind, standing, facet);
        long around = IntStream.of(grain.around()[facet])
                .filter(other -> shows(kind, standing, other))
                .count();
        if (ofFacet.isEmpty() && around == 0) {
            return ofFacet;
        }
        boolean all = !ofFacet.isEmpty() && around == grain.around()[facet].length;
        List<ArcSet> corners = IntStream.of(all ? grain.rim()[facet] : grain.corners()[facet])
                .mapToObj(corner -> itself(kind, standing, facet, corner, ofFacet))
                .toList();
        if (!ofFacet.isEmpty() && corners.stream().allMatch(ofFacet::equals)
                || ofFacet.isEmpty() && corners.stream().allMatch(ArcSet::isEmpty)) {
            return ofFacet;
        }
        return itself(kind, standing, facet, patch, ofFacet);
    }

    /** What its facet does, if it is in sight in the middle of one of its arcs; else its own arcs. */
    private ArcSet itself(int kind, int standing, int facet, int patch, ArcSet ofFacet) {
        return known.computeIfAbsent(List.of(kind, standing, facet, patch), place -> {
            ArcSet own = own(kind, standing, patches.facets(), patches.first(facet) + patch, facet);
            return ofFacet.arcs().stream().anyMatch(arc -> holdsMiddle(own, arc)) ? ofFacet : StationSight.counted(own);
        });
    }

    @Override
    public String toString() {
        return name;
    }

    static boolean holdsMiddle(ArcSet set, Arc arc) {
        ArcSet shown = set.intersection(middle(arc));
        return shown.measure() >= StationSight.LEAST_ARC - 2;
    }

    static ArcSet middle(Arc arc) {
        long start = arc.start() + arc.length() / 2 - StationSight.LEAST_ARC / 2;
        return ArcSet.of(new Arc(Circle.STANDARD, Circle.STANDARD.wrap(start), StationSight.LEAST_ARC));
    }
}
