package everyblade.core.doubt;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which airfoils lie in the field of view, by the cone and the distances of the scope tip or by the view's window:
 * more than is in sight, since neighbours may hide them, and never less.
 *
 * @param now in which the scope tip is seated
 * @param seat of it
 */
record Field(Situation now, Seat seat) {

    /** Steps of a turn in which places are told apart, so that each stands for a degree either way. */
    private static final int STEPS = 180;

    /** Whether an airfoil surely was not in the field, neither at rest now nor during the last watching from here. */
    boolean missed(int airfoil) {
        Row row = seat.row();
        Optional<Leg> leg = now.legsOf(row).stream()
                .filter(one -> one.placement() == seat.placement())
                .reduce((earlier, later) -> later);
        Optional<BitSet> field = steps(leg);
        SmoothedTrack placing = now.placing(row);
        Optional<SmoothedTrack.Place> here =
                placing.at(row.id(), row.rock(), now.stop(row)).place();
        if (field.isEmpty() || here.isEmpty()) {
            return false;
        }
        double first = Engine.fromFirst(row, airfoil).degrees();
        double off = here.get().high().minus(here.get().low()).degrees() / 2;
        double stands = here.get().best().degrees() + first;
        if (meets(field.get(), stands - off, stands + off)) {
            return false;
        }
        if (leg.isEmpty()) {
            return true;
        }
        Turn back = placing.counted(leg.get().from(), now.stop(row));
        double began = stands - back.degrees();
        double ended = began + placing.counted(leg.get().from(), leg.get().to()).degrees();
        return !meets(field.get(), Math.min(began, ended) - off, Math.max(began, ended) + off);
    }

    private static boolean meets(BitSet field, double from, double to) {
        double width = 360.0 / STEPS;
        long last = Math.min((long) Math.floor(to / width), (long) Math.floor(from / width) + STEPS);
        for (long step = (long) Math.floor(from / width); step <= last; step++) {
            if (field.get((int) Math.floorMod(step, (long) STEPS))) {
                return true;
            }
        }
        return false;
    }

    /** At which clock angles an airfoil lies in the field; empty if that is not known. */
    private Optional<BitSet> steps(Optional<Leg> leg) {
        BitSet field = new BitSet(STEPS);
        boolean known = false;
        if (seat.view().window().isPresent()) {
            double half = seat.view().window().get().halfWidth();
            set(field, seat.view().reference() - half, seat.view().reference() + half);
            known = true;
        }
        Optional<Mesh> mesh = surface();
        if (seat.scopeTip().isPresent() && mesh.isPresent()) {
            for (Station station : stations(leg)) {
                addCone(field, mesh.get(), station, seat.scopeTip().get());
                known = true;
            }
        }
        return known ? Optional.of(field) : Optional.empty();
    }

    private static void set(BitSet field, double from, double to) {
        double width = 360.0 / STEPS;
        long last = Math.min((long) Math.floor(to / width), (long) Math.floor(from / width) + STEPS);
        for (long step = (long) Math.floor(from / width); step <= last; step++) {
            field.set((int) Math.floorMod(step, (long) STEPS));
        }
    }

    private List<Station> stations(Optional<Leg> leg) {
        Set<String> ids = new LinkedHashSet<>();
        seat.station().map(Station::id).ifPresent(ids::add);
        leg.ifPresent(watched -> ids.addAll(watched.stance().stations()));
        return seat.view().stations().stream()
                .filter(station -> ids.contains(station.id()))
                .toList();
    }

    private Optional<Mesh> surface() {
        try {
            return Surfaces.of(now.engine().model(), seat.row(), Optional.empty());
        } catch (UnusableShape notKnownHere) {
            return Optional.empty();
        }
    }

    /** Adds where any point of an airfoil lies within the cone and the distances, wherever in its tolerance the tip is. */
    private static void addCone(BitSet field, Mesh mesh, Station station, ScopeTip tip) {
        Pose pose = Pose.of(station, tip);
        double slack = station.within().mm();
        double within = Math.cos(
                Math.toRadians(Math.min(180, tip.cone() / 2 + station.within().deg() + 360.0 / STEPS)));
        double clock = pose.clock().degrees();
        double[] sines = new double[STEPS];
        double[] cosines = new double[STEPS];
        for (int step = 0; step < STEPS; step++) {
            double turned = Math.toRadians((step + 0.5) * 360 / STEPS - clock);
            sines[step] = Math.sin(turned);
            cosines[step] = Math.cos(turned);
        }
        for (int point = 0; point < mesh.pointCount(); point++) {
            double axial = mesh.x(point) - pose.x();
            for (int step = field.nextClearBit(0); step < STEPS; step = field.nextClearBit(step + 1)) {
                double tangential = mesh.y(point) * cosines[step] + mesh.z(point) * sines[step];
                double radial = mesh.z(point) * cosines[step] - mesh.y(point) * sines[step] - pose.r();
                double distance = Math.sqrt(axial * axial + tangential * tangential + radial * radial);
                double along = axial * pose.forward().axial()
                        + tangential * pose.forward().tangential()
                        + radial * pose.forward().radial();
                if (distance >= tip.near() - slack && distance <= tip.far() + slack && along >= within * distance) {
                    field.set(step);
                }
            }
        }
    }
}
