package everyblade.picture;

import everyblade.core.turning.Leg;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * What has passed the scope tip since it was placed where it is, watched, as arcs of the row as it stands now: degrees of clock,
 * from where the scope tip looks.
 */
record SweptArc(double from, double to) {

    private static final double TURN = 360;
    private static final double PIECE = 3;
    /** Half of what is drawn for a look at rest, degrees. */
    private static final double AT_REST = 1.5;

    /** In the order in which they were watched; those that join are one. */
    static List<SweptArc> of(Situation now, Seat seat) {
        SmoothedTrack placing = now.placing(seat.row());
        int here = now.stop(seat.row());
        List<SweptArc> arcs = new ArrayList<>();
        for (Leg leg : now.legsOf(seat.row())) {
            if (leg.placement() != seat.placement()) {
                continue;
            }
            double from = placing.counted(leg.from(), here).degrees();
            double to = placing.counted(leg.to(), here).degrees();
            SweptArc arc = from == to ? new SweptArc(from - AT_REST, to + AT_REST) : new SweptArc(from, to);
            SweptArc last = arcs.isEmpty() ? null : arcs.get(arcs.size() - 1);
            if (last != null && last.to == arc.from) {
                arcs.set(arcs.size() - 1, new SweptArc(last.from, arc.to));
            } else {
                arcs.add(arc);
            }
        }
        return List.copyOf(arcs);
    }

    /** Drawn about a clock angle. */
    Item drawn(Polar polar, double clock, double radius, double width) {
        double way = Math.max(-TURN, Math.min(TURN, to - from));
        int pieces = Math.max(2, (int) Math.ceil(Math.abs(way) / PIECE));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            points.add(polar.at(clock + to - way * i / pieces, radius));
        }
        return Item.of(new Strokes(List.of(points)), Style.lined(Ink.SEEN, width));
    }
}
