package everyblade.core.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Row;
import java.util.List;
import java.util.stream.IntStream;

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
            ViewScene engine, SightScene ring, SightArcs alone, Row row, Pose pose, double radius, Criteria criteria)
            throws UnusableShape {
        Setting setting = Setting.of(engine, ring, row, pose, 0, radius);
        List<List<ArcSet>> kinds = setting.surely(pose, criteria);
        List<ArcSet> left = IntStream.range(0, alone.facetCount())
                .mapToObj(facet ->
                        kinds.stream().map(kind -> kind.get(facet)).reduce(alone.arcs(facet), ArcSet::intersection))
                .toList();
        return new InTheWay(
                setting.between(pose).stream().map(Setting.Between::row).toList(), left);
    }
}
