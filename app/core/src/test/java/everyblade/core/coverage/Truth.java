package everyblade.core.coverage;

import everyblade.core.FineCaster;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is truly seen of a row on a surface twenty times as fine as that which coverage is computed with. */
final class Truth {

    /** 20 times as many facets, and none of them where those of the program are. */
    private static final Fineness FINE = new Fineness(72, 36);

    /** So many columns of facets at each edge reach 1.0 % into the chord, within the outermost strip of 1.25 %. */
    private static final int STRIP = 4;

    private final Row row;
    private final Zoning zoning;
    private final Mesh mesh;
    private final Facets facets;
    private final FineCaster caster;
    private final List<Watched> watched = new ArrayList<>();

    /** From a pose while airfoil 1 ran from one clock angle to another, degrees. */
    private record Watched(FineCaster.FromPose sight, double from, double to) {}

    /** Of a row that is seen past no other. */
    Truth(EngineModel model, Row row) throws UnusableShape {
        this(model, row, Map.of(), Map.of());
    }

    /**
     * Of a row past others.
     *
     * @param turning rows that keep their place to it: clock of an airfoil of each while its first one stands at clock 0
     * @param still rows that keep their place to the scope tip: clock of an airfoil of each
     */
    Truth(EngineModel model, Row row, Map<Row, Double> turning, Map<Row, Double> still) throws UnusableShape {
        this.row = row;
        this.zoning = Zoning.of(row);
        this.mesh = fine(model, row);
        this.facets = Facets.of(mesh);
        List<Wall> walls = row.kind() == RowKind.LINER ? List.of() : model.walls();
        FineCaster cast = new FineCaster(mesh, row.count(), walls);
        List<Row> ring = model.rows().stream()
                .filter(other -> row.ring().isPresent() && other.ring().equals(row.ring()))
                .toList();
        for (Row mate : ring) {
            if (!mate.equals(row)) {
                double offset = (offset(ring, mate) - offset(ring, row)) * 2 * Math.PI / row.count();
                cast.turning(fine(model, mate), mate.count(), offset);
            }
        }
        for (Map.Entry<Row, Double> other : turning.entrySet()) {
            cast.turning(fine(model, other.getKey()), other.getKey().count(), Math.toRadians(other.getValue()));
        }
        for (Map.Entry<Row, Double> other : still.entrySet()) {
            cast.still(fine(model, other.getKey()), other.getKey().count(), Math.toRadians(other.getValue()));
        }
        this.caster = cast;
    }

    private static double offset(List<Row> ring, Row row) {
        return ring.get(0).equals(row) ? 0 : row.ringOffset();
    }

    private static Mesh fine(EngineModel model, Row row) throws UnusableShape {
        return Surfaces.of(model, row, Optional.empty(), FINE, Map.of()).orElseThrow();
    }

    /**
     * Watched from a pose while airfoil 1 ran from one clock angle to another.
     *
     * @param from degrees
     * @param to degrees, not less
     */
    void watch(Pose pose, double from, double to) {
        watched.add(new Watched(caster.from(pose, Criteria.USUAL), from, to));
    }

    private boolean isSeen(int n, int facet) {
        double clock = Engine.fromFirst(row, n).degrees();
        return watched.stream()
                .anyMatch(watch -> meets(watch.sight(), facet, watch.from() + clock, watch.to() + clock));
    }

    private static boolean meets(FineCaster.FromPose sight, int facet, double from, double to) {
        double step = 360.0 / FineCaster.STEPS;
        long first = (long) Math.ceil(from / step - 1e-9);
        long last = Math.min(first + FineCaster.STEPS - 1, (long) Math.floor(to / step + 1e-9));
        for (long at = first; at <= last; at++) {
            if (sight.sees(facet, (int) Math.floorMod(at, (long) FineCaster.STEPS))) {
                return true;
            }
        }
        // Where it began and ended it stood between two steps.
        return sight.sees(facet, from) || sight.sees(facet, to);
    }

    /** The facets of a zone of airfoil n that were never in sight. */
    BitSet missed(int n, int zone) {
        BitSet missed = new BitSet();
        for (int facet = 0; facet < facets.count(); facet++) {
            missed.set(facet, mesh.zone(facet) == zone && !isSeen(n, facet));
        }
        return missed;
    }

    /** Whether enough of a zone is in sight, and of its outermost strip if it has one, where these facets are not. */
    boolean isEnough(int zone, BitSet missed) {
        return share(zone, false, missed) >= 0.95 && (!zoning.atEdge(zone) || share(zone, true, missed) >= 0.95);
    }

    /** The share of a zone of airfoil n that was in sight. */
    double share(int n, int zone) {
        return share(zone, false, missed(n, zone));
    }

    /** The same of its outermost strip; 1 where it has none. */
    double strip(int n, int zone) {
        return zoning.atEdge(zone) ? share(zone, true, missed(n, zone)) : 1;
    }

    private double share(int zone, boolean stripOnly, BitSet missed) {
        int columns = FINE.chord();
        double all = 0;
        double sum = 0;
        for (int facet = 0; facet < facets.count(); facet++) {
            int column = facet % columns;
            boolean within = !stripOnly || column < STRIP || column >= columns - STRIP;
            if (mesh.zone(facet) == zone && within) {
                all += facets.area(facet);
                sum += missed.get(facet) ? 0 : facets.area(facet);
            }
        }
        return sum / all;
    }
}
