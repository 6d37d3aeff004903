package everyblade.core.coverage;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.sight.PoseFamily;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Scene;
import everyblade.core.sight.SightArcs;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What stations show of one row whose angles are exact, worked out the slow way: for each airfoil and facet the poses are
 * listed that may have been the true one, and struck out as soon as one of them shows it.
 */
final class SightOracle {

    private static final long TURN = Circle.STANDARD.ticks();
    private static final long MARGINAL = Circle.TICKS_PER_DEGREE / 5;

    private final Scene scene;
    private final ScopeTip tip;
    private final Map<String, List<SightArcs>> families = new HashMap<>();
    private final int count;
    /** By airfoil and facet: poses of the placement under way that have not shown it. */
    private final boolean[][][] missing;

    private final boolean[][] sure;
    private final boolean[][] maybe;

    SightOracle(Scene scene, ScopeTip tip, int count) {
        this.scene = scene;
        this.tip = tip;
        this.count = count;
        int facets = scene.facets().count();
        missing = new boolean[count][facets][];
        sure = new boolean[count][facets];
        maybe = new boolean[count][facets];
        seated();
    }

    /** A new placement. */
    void seated() {
        for (boolean[][] airfoil : missing) {
            for (int facet = 0; facet < airfoil.length; facet++) {
                airfoil[facet] = new boolean[PoseFamily.SIZE];
                java.util.Arrays.fill(airfoil[facet], true);
            }
        }
    }

    private List<SightArcs> family(Station station) {
        return families.computeIfAbsent(
                station.id(),
                id -> SightArcs.compute(
                        scene, PoseFamily.of(Pose.of(station, tip), station.within()), Criteria.USUAL, Progress.NONE));
    }

    /** Watched while airfoil 1 ran from one tick to another, both included; the scope tip held. */
    void hold(Station station, long from, long to, List<Integer> zones) {
        for (int n = 0; n < count; n++) {
            for (int facet = 0; facet < scene.facets().count(); facet++) {
                if (!zones.contains(scene.row().airfoil().zone(facet))) {
                    continue;
                }
                boolean none = true;
                for (int pose = 0; pose < PoseFamily.SIZE; pose++) {
                    missing[n][facet][pose] &= !shows(station, pose, facet, n, from, to);
                    none &= !missing[n][facet][pose];
                    maybe[n][facet] |= !missing[n][facet][pose];
                }
                sure[n][facet] |= none;
            }
        }
    }

    /** The scope tip was moved through stations: at rest any of them shows, turning all of them must. */
    void through(List<Station> stations, long from, long to, List<Integer> zones) {
        for (int n = 0; n < count; n++) {
            for (int facet = 0; facet < scene.facets().count(); facet++) {
                if (!zones.contains(scene.row().airfoil().zone(facet))) {
                    continue;
                }
                List<Boolean> surely = new ArrayList<>();
                for (Station station : stations) {
                    boolean every = true;
                    for (int pose = 0; pose < PoseFamily.SIZE; pose++) {
                        boolean shows = shows(station, pose, facet, n, from, to);
                        every &= shows;
                        maybe[n][facet] |= shows;
                    }
                    surely.add(every);
                }
                sure[n][facet] |= from == to ? surely.contains(true) : !surely.contains(false);
            }
        }
    }

    private boolean shows(Station station, int pose, int facet, int n, long from, long to) {
        List<SightArcs> family = family(station);
        ArcSet arcs = family.get(family.size() == 1 ? 0 : pose).arcs(facet);
        long offset = TURN / count * n;
        for (Arc arc : arcs.arcs()) {
            if (arc.length() < MARGINAL) {
                continue;
            }
            for (long turn = -4 * TURN; turn <= 4 * TURN; turn += TURN) {
                long first = arc.start() + turn;
                if (first <= to + offset && first + arc.length() - 1 >= from + offset) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The state of a cell whose reach is told; by areas. */
    State state(int n, int zone, boolean[] reach) {
        double own = 0;
        double reached = 0;
        double surely = 0;
        double perhaps = 0;
        for (int facet = 0; facet < scene.facets().count(); facet++) {
            if (scene.row().airfoil().zone(facet) == zone) {
                double area = scene.facets().area(facet);
                own += area;
                reached += reach[facet] ? area : 0;
                surely += sure[n - 1][facet] ? area : 0;
                perhaps += maybe[n - 1][facet] ? area : 0;
            }
        }
        double slack = 1e-9 * own;
        boolean within = reached >= 0.05 * own - slack;
        if (surely >= 0.95 * own - slack) {
            return State.SEEN;
        }
        if (within && surely >= 0.95 * reached - slack) {
            return State.PART;
        }
        return perhaps >= 0.95 * own - slack || within && perhaps >= 0.95 * reached - slack
                ? State.MAYBE
                : State.UNSEEN;
    }

    boolean[] reach(List<Station> stations) {
        boolean[] reach = new boolean[scene.facets().count()];
        for (Station station : stations) {
            for (int facet = 0; facet < reach.length; facet++) {
                int at = facet;
                reach[facet] |= family(station).stream()
                        .allMatch(pose -> pose.arcs(at).arcs().stream().anyMatch(arc -> arc.length() >= MARGINAL));
            }
        }
        return reach;
    }
}
