package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.sight.Environment.Way;
import everyblade.core.surface.Facets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the sight arcs of facets from one pose, one by one: first the angles at which criteria allow it, then without those
 * at which walls, then airfoils hide. Angles α are the scope tip's clock seen from the airfoil standing at clock 0. One thread's;
 * used again and again.
 */
final class FacetSight {

    /** Narrow pieces make slender fans, which meet fewer boxes, but more fans; tried from 6° to 60°. */
    private static final double WIDEST_PIECE = Math.toRadians(20);

    private static final double TURN = 2 * Math.PI;

    /** What may be missing from an arc that is lit from end to end, radians. */
    private static final double WHOLE = 1e-9;

    private static final Circle CIRCLE = Circle.STANDARD;
    private static final long LEAST_ARC = CIRCLE.ticks() / 36_000;

    private final SightScene scene;
    private final Pose pose;
    private final double[] grazing;
    private final double stand;
    private final CriteriaCut cut;
    private final IntervalSet allowed = new IntervalSet();
    private final List<Way> ways;
    private final List<IntervalSet> lit;
    private final Revolved swept;
    private final IntervalSet touched = new IntervalSet();
    private final IntervalSet open = new IntervalSet();
    private final IntervalSet rest = new IntervalSet();
    private final RayBundle fan = new RayBundle();
    private final RayBundle still = new RayBundle();
    private final RayBundle turned = new RayBundle();

    /**
     * From one pose.
     *
     * @param ways in which rows may stand round the airfoil, at least one
     * @param swept all that those rows may hide
     */
    FacetSight(SightScene scene, Pose pose, Criteria criteria, List<Way> ways, Revolved swept) {
        this.scene = scene;
        this.pose = pose;
        this.grazing = IntStream.range(0, scene.zoning().size())
                .mapToDouble(zone -> CriteriaCut.share(criteria.grazing(scene.zoning(), zone)))
                .toArray();
        this.ways = ways;
        this.lit = ways.stream().map(way -> new IntervalSet()).toList();
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
        return arcs(scene.facets(), facet, facet, left);
    }

    /**
     * The same of a place on a facet.
     *
     * @param facets places of which it is one
     * @param place its index there
     * @param facet on which it lies, which never hides it
     * @param left as above; null if nobody asks
     */
    List<ArcSet> arcs(Facets facets, int place, int facet, double[] left) {
        cut.find(facets, place, grazing(facet), allowed, left);
        if (allowed.isEmpty()) {
            return Collections.nCopies(ways.size(), ArcSet.empty(CIRCLE));
        }
        if (!light(facets, place, facet, 0, ways.size())) {
            return Collections.nCopies(ways.size(), onCircle(lit.get(0)));
        }
        return lit.stream().map(this::onCircle).toList();
    }

    /**
     * Whether a place on a facet is in sight all along a short arc; that costs much less than all of its arcs.
     *
     * @param at middle of the arc, ticks
     * @param length ticks, less than 30°
     * @param way in which rows stand, by its number
     */
    Shown shows(Facets facets, int place, int facet, long at, long length, int way) {
        double middle = CriteriaCut.radians(pose.clock().minus(Turn.ofTicks(at)));
        double half = (double) length / CIRCLE.ticks() * TURN / 2;
        cut.findNear(middle - half, middle + half, facets, place, grazing(facet), allowed);
        Revolved.subtractTurned(middle + half, middle + TURN - half, allowed);
        boolean near = light(facets, place, facet, way, way + 1);
        return new Shown(lit.get(near ? way : 0).length() >= 2 * half - WHOLE, !near);
    }

    /**
     * Whether a place is in sight.
     *
     * @param shown in the way that was asked for
     * @param anyWay whether that holds in any
     */
    record Shown(boolean shown, boolean anyWay) {}

    private double grazing(int facet) {
        return grazing[scene.row().airfoil().zone(facet)];
    }

    /**
     * Finds, of the angles that criteria allow, those at which nothing hides the place, in some of the ways.
     *
     * @return whether that depends on the way; else the first tells of all
     */
    private boolean light(Facets facets, int place, int facet, int firstWay, int endWay) {
        double y = facets.centroid(place, 1);
        double z = facets.centroid(place, 2);
        double clock = Math.atan2(y, z);
        double x = facets.centroid(place, 0);
        double r = Math.hypot(y, z);
        scene.revolved().shade(x, r, clock, pose.x(), pose.r(), open, allowed);
        touched.set(allowed);
        swept.shade(x, r, clock, pose.x(), pose.r(), open, touched);
        // Where those rows are out of the way, however they stand, one way tells all.
        boolean near = touched.length() < allowed.length();
        lit.forEach(IntervalSet::clear);
        for (int i = 0; i < allowed.count(); i++) {
            double from = allowed.from(i);
            double width = allowed.to(i) - from;
            int pieces = (int) Math.ceil(width / WIDEST_PIECE);
            for (int k = 0; k < pieces; k++) {
                double start = from + width * k / pieces;
                double end = from + width * (k + 1) / pieces;
                fan.aim(x, y, z, pose.x(), pose.r(), start, end);
                piece(facet, x, r, clock, start, end, near ? firstWay : 0, near ? endWay : 1, near);
            }
        }
        return near;
    }

    /** Adds what is lit of a piece of the scope tip's circle in some of the ways. */
    private void piece(
            int facet,
            double x,
            double r,
            double clock,
            double from,
            double to,
            int firstWay,
            int endWay,
            boolean near) {
        open.set(0, 1);
        for (int i = 0; i < scene.turning().size() && !open.isEmpty(); i++) {
            scene.turning().get(i).shade(fan, turned, clock, from, to, open, i == 0 ? facet : -1);
        }
        double start = stand + clock - from;
        double end = stand + clock - to;
        standing(scene.fixed(), x, r, start, end, open);
        double tangent = Math.tan((to - from) / 4);
        for (int way = firstWay; way < endWay && !open.isEmpty(); way++) {
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
    private void standing(List<RingShade> rings, double x, double r, double start, double end, IntervalSet light) {
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

    private ArcSet onCircle(IntervalSet lit) {
        List<Arc> arcs = new ArrayList<>();
        for (int i = 0; i < lit.count(); i++) {
            long end = ticks(lit.from(i));
            long start = ticks(lit.to(i));
            arcs.add(new Arc(CIRCLE, start, end - start));
        }
        return ArcSet.of(CIRCLE, arcs).withoutShorter(LEAST_ARC);
    }

    /** Where the airfoil stands when the scope tip's clock seen from it is this. */
    private long ticks(double angle) {
        return pose.clock().floorTicks() - Math.round(angle / TURN * CIRCLE.ticks());
    }
}
