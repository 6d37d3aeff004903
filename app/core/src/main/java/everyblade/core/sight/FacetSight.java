package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.sight.Surroundings.Way;
import everyblade.core.surface.Facets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Finds the sight arcs of facets from one pose, one by one: first the angles at which criteria allow it, then without those
 * at which walls, then airfoils hide. Angles α are the scope tip's clock seen from the airfoil standing at clock 0. One thread's;
 * used again and again.
 */
final class FacetSight {

    /** Narrow pieces make slender fans, which meet fewer boxes, but more fans; tried from 6° to 60°. */
    private static final double WIDEST_PIECE = Math.toRadians(20);

    private static final double TURN = 2 * Math.PI;
    private static final Circle CIRCLE = Circle.STANDARD;
    private static final long LEAST_ARC = CIRCLE.ticks() / 36_000;

    private final Scene scene;
    private final Pose pose;
    private final Criteria criteria;
    private final double stand;
    private final CriteriaCut cut;
    private final Openings allowed = new Openings();
    private final List<Way> ways;
    private final List<Openings> lit;
    private final Revolved swept;
    private final Openings touched = new Openings();
    private final Openings open = new Openings();
    private final Openings rest = new Openings();
    private final Fan fan = new Fan();
    private final Fan still = new Fan();
    private final Fan turned = new Fan();

    /**
     * From one pose.
     *
     * @param ways in which rows may stand round the airfoil, at least one
     * @param swept all that those rows may hide
     */
    FacetSight(Scene scene, Pose pose, Criteria criteria, List<Way> ways, Revolved swept) {
        this.scene = scene;
        this.pose = pose;
        this.criteria = criteria;
        this.ways = ways;
        this.lit = ways.stream().map(way -> new Openings()).toList();
        this.swept = swept;
        this.stand = CriteriaCut.radians(pose.clock());
        this.cut = new CriteriaCut(pose, criteria);
    }

    /**
     * The clock angles of the airfoil at which a facet is in sight, arcs under 0.01° left out, for each way in turn.
     *
     * @param left where the share of the turn goes that is left after each hindrance but the last
     */
    List<ArcSet> arcs(int facet, double[] left) {
        Facets facets = scene.facets();
        int zone = scene.row().airfoil().zone(facet);
        cut.find(facets, facet, criteria.grazing(scene.zoning(), zone), allowed, left);
        if (allowed.isEmpty()) {
            return Collections.nCopies(ways.size(), ArcSet.empty(CIRCLE));
        }
        double y = facets.centroid(facet, 1);
        double z = facets.centroid(facet, 2);
        double clock = Math.atan2(y, z);
        double x = facets.centroid(facet, 0);
        double r = Math.hypot(y, z);
        scene.revolved().shade(x, r, clock, pose.x(), pose.r(), allowed);
        touched.set(allowed);
        swept.shade(x, r, clock, pose.x(), pose.r(), touched);
        // Where those rows are out of the way, however they stand, one way tells all.
        boolean near = touched.length() < allowed.length();
        lit.forEach(Openings::clear);
        for (int i = 0; i < allowed.count(); i++) {
            double from = allowed.from(i);
            double width = allowed.to(i) - from;
            int pieces = (int) Math.ceil(width / WIDEST_PIECE);
            for (int k = 0; k < pieces; k++) {
                piece(facet, clock, from + width * k / pieces, from + width * (k + 1) / pieces, near);
            }
        }
        if (!near) {
            return Collections.nCopies(ways.size(), onCircle(lit.get(0)));
        }
        return lit.stream().map(this::onCircle).toList();
    }

    /** Adds what is lit of a piece of the scope tip's circle: in each way if those rows are near, else in the first. */
    private void piece(int facet, double clock, double from, double to, boolean near) {
        Facets facets = scene.facets();
        double x = facets.centroid(facet, 0);
        double y = facets.centroid(facet, 1);
        double z = facets.centroid(facet, 2);
        open.set(0, 1);
        fan.aim(x, y, z, pose.x(), pose.r(), from, to);
        for (int i = 0; i < scene.turning().size() && !open.isEmpty(); i++) {
            scene.turning().get(i).shade(fan, turned, clock, from, to, open, i == 0 ? facet : -1);
        }
        double r = Math.hypot(y, z);
        double start = stand + clock - from;
        double end = stand + clock - to;
        standing(scene.fixed(), x, r, start, end, open);
        double tangent = Math.tan((to - from) / 4);
        for (int way = 0; way < (near ? ways.size() : 1) && !open.isEmpty(); way++) {
            rest.set(open);
            if (near) {
                for (RingShade ring : ways.get(way).turning()) {
                    ring.shade(fan, turned, clock, from, to, rest, -1);
                }
                standing(ways.get(way).fixed(), x, r, start, end, rest);
            }
            for (int i = 0; i < rest.count(); i++) {
                lit.get(way).append(angle(from, to, tangent, rest.from(i)), angle(from, to, tangent, rest.to(i)));
            }
        }
    }

    /** Seen from where the scope tip stands still, it is the facet that runs on a circle. */
    private void standing(List<RingShade> rings, double x, double r, double start, double end, Openings light) {
        if (rings.isEmpty() || light.isEmpty()) {
            return;
        }
        still.aim(pose.x(), pose.r() * Math.sin(stand), pose.r() * Math.cos(stand), x, r, start, end);
        for (int i = 0; i < rings.size() && !light.isEmpty(); i++) {
            rings.get(i).shade(still, turned, stand, start, end, light, -1);
        }
    }

    private static double angle(double from, double to, double tangent, double s) {
        return s == 0 ? from : s == 1 ? to : (from + to) / 2 + 2 * Math.atan(tangent * (2 * s - 1));
    }

    private ArcSet onCircle(Openings lit) {
        List<Arc> arcs = new ArrayList<>();
        for (int i = 0; i < lit.count(); i++) {
            long end = ticks(lit.from(i));
            long start = ticks(lit.to(i));
            arcs.add(new Arc(CIRCLE, start, end - start));
        }
        ArcSet all = ArcSet.of(CIRCLE, arcs);
        return ArcSet.of(
                CIRCLE,
                all.arcs().stream().filter(arc -> arc.length() >= LEAST_ARC).toList());
    }

    /** Where the airfoil stands when the scope tip's clock seen from it is this. */
    private long ticks(double angle) {
        return pose.clock().floorTicks() - Math.round(angle / TURN * CIRCLE.ticks());
    }
}
