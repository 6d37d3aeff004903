package everyblade.core.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A row as a scope tip sees it: with all that stands alike round every airfoil, with what stands otherwise round each, and with
 * each way in which a row may stand whose place is not known. Never changes.
 *
 * <p>Of several such rows the scope tip's own is told apart, else the first; the others hide all that they sweep. Told apart
 * together they would make too many ways: with so few for each as time allows nothing was left in sight past both.
 */
public final class Setting {

    /**
     * What a row between may hide.
     *
     * @param row that stands there
     * @param rings the places at which it stands or may stand; none if it hides all that it sweeps
     * @param sure whether it stands nowhere else
     * @param turns whether its clock angles are those at which the first airfoil of the row that is looked at stands at clock 0;
     *     else they are those of the engine
     */
    public record Between(Row row, List<Ring> rings, boolean sure, boolean turns) {

        public Between {
            rings = List.copyOf(rings);
        }
    }

    private final Row row;
    private final SightScene scene;
    private final Environment others;
    private final List<Neighbour> neighbours;

    private Setting(Row row, SightScene scene, Environment others, List<Neighbour> neighbours) {
        this.row = row;
        this.scene = scene;
        this.others = others;
        this.neighbours = neighbours;
    }

    /**
     * A row of an engine.
     *
     * @param ring the scene of the row's ring
     * @param pose of the scope tip
     * @param reach how far from there the scope tip may be, mm
     * @param radius of the scope tip, mm
     * @throws UnusableShape if a shape of a row between gives no surface
     */
    public static Setting of(ViewScene engine, SightScene ring, Row row, Pose pose, double reach, double radius)
            throws UnusableShape {
        return of(
                Neighbour.between(engine, engine::swept, Meridian.of(ring.row().airfoil()), row, pose, reach),
                ring,
                row,
                radius);
    }

    static Setting of(List<Neighbour> neighbours, SightScene ring, Row row, double radius) {
        SightScene scene = ring;
        List<Neighbour> mates = new ArrayList<>();
        Optional<Neighbour> doubtful =
                neighbours.stream().filter(Neighbour::isDoubtful).min(Comparator.comparing(other -> !other.among()));
        for (Neighbour other : neighbours) {
            if (!other.isExact()) {
                scene = doubtful.filter(other::equals).isPresent() ? scene : scene.withSwept(other.airfoil());
            } else if (row.kind() == RowKind.ROTOR) {
                scene = scene.withFixed(other.ring());
            } else {
                mates.add(other);
            }
        }
        return new Setting(row, scene, Environment.of(row, mates, doubtful, radius), List.copyOf(neighbours));
    }

    /** The row with all that stands alike round every airfoil. */
    public SightScene scene() {
        return scene;
    }

    Environment others() {
        return others;
    }

    /** Of which kind airfoil n is, counted from 1: those of a kind show the same. */
    public int kind(int n) {
        return Environment.kind(row, n, others.kinds());
    }

    /**
     * Of each kind of airfoils and each facet, the clock angles at which it is in sight from a pose, wherever rows between may
     * stand.
     */
    public List<List<ArcSet>> surely(Pose pose, Criteria criteria) {
        List<SightArcs> ways = SightArcs.compute(scene, Standings.of(List.of(pose), others), criteria, Progress.NONE)
                .get(0);
        int each = ways.size() / others.kinds();
        return IntStream.range(0, others.kinds())
                .mapToObj(kind -> every(ways.subList(kind * each, (kind + 1) * each)))
                .toList();
    }

    /** Whether a row between that does not stand alike round every airfoil takes anything from what is in sight from a pose. */
    boolean hidesSomewhere(Pose pose, Criteria criteria) {
        SightArcs alone = SightArcs.compute(scene, pose, criteria, Progress.NONE);
        return surely(pose, criteria).stream()
                .anyMatch(kind -> IntStream.range(0, kind.size())
                        .anyMatch(facet -> !kind.get(facet).equals(alone.arcs(facet))));
    }

    private static List<ArcSet> every(List<SightArcs> ways) {
        return IntStream.range(0, ways.get(0).facetCount())
                .mapToObj(facet -> ways.stream()
                        .map(way -> way.arcs(facet))
                        .reduce(ArcSet::intersection)
                        .orElseThrow())
                .toList();
    }

    /** The rows between, and what they may hide from a pose. */
    public List<Between> between(Pose pose) {
        return neighbours.stream().map(other -> between(other, pose)).toList();
    }

    private Between between(Neighbour other, Pose pose) {
        return others.between(other.row(), pose)
                .orElseGet(() -> new Between(
                        other.row(),
                        other.isExact() ? List.of(other.ring()) : List.of(),
                        other.isExact(),
                        row.kind() != RowKind.ROTOR));
    }
}
