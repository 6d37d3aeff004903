package everyblade.core.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * What rows of other rings leave of the sight arcs that a row has among its own ring and the walls alone.
 *
 * @param rows those that stand between
 * @param left of each facet, the clock angles at which it is in sight of whichever airfoil, wherever those rows may stand
 */
public record InTheWay(List<Row> rows, List<ArcSet> left) {

    /**
     * From one pose.
     *
     * @param ring the scene of the row's ring
     * @param alone the sight arcs in it
     * @param radius of the scope tip, mm
     * @throws UnusableShape if a shape of a row between gives no surface
     */
    public static InTheWay of(
            ViewScene engine, Scene ring, SightArcs alone, Row row, Pose pose, double radius, Criteria criteria)
            throws UnusableShape {
        List<Row> rows = engine.between(ring, row, pose, 0);
        ViewScene.Setting setting = engine.setting(ring, row, pose, 0, radius);
        Surroundings others = setting.others();
        List<SightArcs> ways = SightArcs.compute(
                        setting.scene(), List.of(pose), others::ways, others.swept(), criteria, Progress.NONE)
                .get(0);
        List<ArcSet> left = new ArrayList<>();
        for (int facet = 0; facet < alone.facetCount(); facet++) {
            ArcSet every = alone.arcs(facet);
            for (int way = 0; way < ways.size() && !every.isEmpty(); way++) {
                every = every.intersection(ways.get(way).arcs(facet));
            }
            left.add(every);
        }
        return new InTheWay(rows, List.copyOf(left));
    }
}
