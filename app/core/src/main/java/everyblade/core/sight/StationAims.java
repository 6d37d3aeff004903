package everyblade.core.sight;

import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine.Aims;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How far the middle of the picture moves on the row that is looked at, while the scope tip takes all poses of its
 * station's tolerance: degrees of clock angle, against the nominal pose. Nothing moves where the station is exact, and
 * nothing is known where the row has no shape or the view no scope tip. Computed when asked for, and remembered.
 */
public final class StationAims implements Aims {

    /** So near the row the optical axis has met it, mm. */
    private static final double MET = 1e-3;

    private final ViewScene engine;
    private final Map<String, Optional<Meridian>> rows = new ConcurrentHashMap<>();
    private final Map<String, Double> stations = new ConcurrentHashMap<>();

    public StationAims(ViewScene engine) {
        this.engine = engine;
    }

    @Override
    public double at(View view, Station station) {
        return stations.computeIfAbsent(view.id() + "\n" + station.id(), key -> found(view, station));
    }

    private double found(View view, Station station) {
        Row row = engine.model().row(view.row()).orElseThrow();
        Optional<ScopeTip> tip = view.scopeTip().flatMap(engine.model()::scopeTip);
        Optional<Meridian> swept = rows.computeIfAbsent(row.id(), id -> swept(row));
        if (tip.isEmpty() || swept.isEmpty()) {
            return 0;
        }
        Pose nominal = Pose.of(station, tip.get());
        double middle = middle(nominal, swept.get());
        return PoseFamily.of(nominal, station.within()).stream()
                .mapToDouble(pose -> Math.abs(RingShade.wrapped(middle(pose, swept.get()) - middle)))
                .map(Math::toDegrees)
                .max()
                .orElse(0);
    }

    private Optional<Meridian> swept(Row row) {
        try {
            return engine.airfoil(row).map((Mesh airfoil) -> Meridian.of(airfoil));
        } catch (UnusableShape unusable) {
            throw new IllegalStateException(unusable.getMessage(), unusable);
        }
    }

    /**
     * The clock angle at which the optical axis first meets what the row sweeps, or comes nearest to it; radians. Steps as far
     * as nothing of the row can be (J. C. Hart, Sphere tracing, The Visual Computer 12 (1996), from memory).
     */
    private static double middle(Pose pose, Meridian swept) {
        double nearest = Double.POSITIVE_INFINITY;
        double clock = 0;
        for (double along = 0; along <= pose.far() && nearest > MET; ) {
            double x = pose.x() + along * pose.forward().axial();
            double across = along * pose.forward().tangential();
            double up = pose.r() + along * pose.forward().radial();
            double distance = swept.distance(x, Math.hypot(across, up));
            if (distance < nearest) {
                nearest = distance;
                clock = Math.atan2(across, up);
            }
            along += Math.max(distance, MET);
        }
        return CriteriaCut.radians(pose.clock()) + clock;
    }
}
