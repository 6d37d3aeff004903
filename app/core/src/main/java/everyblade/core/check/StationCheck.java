package everyblade.core.check;

import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Finds stations at which there is metal where the scope tip should be. */
record StationCheck(EngineModel model, List<CheckedSurface> airfoils, List<Flaw> flaws) {

    /** Clock angles tried in a pitch, to find one at which the scope tip fits between two airfoils. */
    private static final int TRIES = 72;

    /** A scope tip may rest on a wall, and walls and stations are written to a tenth, mm. */
    private static final double ROUNDING = 0.2;

    void run() {
        Optional<Channel> channel = channel();
        for (int v = 0; v < model.views().size(); v++) {
            View view = model.views().get(v);
            double radius = view.scopeTip()
                    .flatMap(model::scopeTip)
                    .map(ScopeTip::diameter)
                    .map(diameter -> diameter / 2)
                    .orElse(0.0);
            for (int s = 0; s < view.stations().size(); s++) {
                Station station = view.stations().get(s);
                CheckedPart part = new CheckedPart.StationAt(v, s);
                channel.ifPresent(walls -> walls(walls, view, station, radius, part));
                airfoils.stream()
                        .filter(surface -> !fitsBetween(surface, station, radius))
                        .findFirst()
                        .ifPresent(surface -> flaws.add(new Flaw(
                                Flaw.Kind.STATION_IN_BLADES,
                                part,
                                new Wrong.StationInBlades(station.id(), view.id(), surface.id()),
                                Wrong.Because.TIP_DOES_NOT_FIT,
                                Wrong.Mend.MOVE_OR_THINNER)));
            }
        }
    }

    private Optional<Channel> channel() {
        Optional<Wall> hub = wall("hub");
        Optional<Wall> casing = wall("casing");
        return hub.isPresent() && casing.isPresent()
                ? Optional.of(new Channel(
                        new WallLine(hub.get().curve()),
                        new WallLine(casing.get().curve())))
                : Optional.empty();
    }

    private Optional<Wall> wall(String id) {
        return model.walls().stream().filter(wall -> wall.id().equals(id)).findFirst();
    }

    private void walls(Channel channel, View view, Station station, double radius, CheckedPart part) {
        if (!channel.reaches(station.x())) {
            return;
        }
        boolean inside = channel.holds(station.x(), station.r());
        if (!inside || channel.distance(station.x(), station.r()) < radius - ROUNDING) {
            boolean inOpening = !inside && inOpening(view, station);
            flaws.add(new Flaw(
                    Flaw.Kind.STATION_OUTSIDE_WALLS,
                    part,
                    inside
                            ? new Wrong.StationAtWall(station.id(), view.id())
                            : new Wrong.StationOutsideWalls(station.id(), view.id()),
                    inside
                            ? Wrong.Because.WALL_TOO_NEAR
                            : inOpening ? Wrong.Because.IN_OPENING : Wrong.Because.IN_METAL,
                    inOpening ? Wrong.Mend.PUT_WITHIN_WALLS : Wrong.Mend.MOVE_STATION));
        }
    }

    /** Whether a station lies within the narrowest opening of its port, however far outward. */
    private boolean inOpening(View view, Station station) {
        return view.port()
                .flatMap(id -> model.ports().stream()
                        .filter(port -> port.id().equals(id))
                        .findFirst())
                .filter(port -> port.x().isPresent() && port.clock().isPresent())
                .map(port -> {
                    double turned =
                            Math.toRadians(station.clock() - port.clock().getAsDouble());
                    double aside = Math.hypot(station.x() - port.x().getAsDouble(), station.r() * Math.sin(turned));
                    return Math.cos(turned) > 0
                            && port.through().stream().allMatch(opening -> aside <= opening.diameter() / 2)
                            && !port.through().isEmpty();
                })
                .orElse(false);
    }

    /** Whether at some clock angle of the airfoils the ball of the scope tip touches none of them. */
    private static boolean fitsBetween(CheckedSurface surface, Station station, double radius) {
        double[] low = {station.x() - radius, station.r() - radius, 0};
        double[] high = {station.x() + radius, station.r() + radius, 0};
        if (!surface.swept().any(low, high, triangle -> true)) {
            return true;
        }
        int count = surface.row().count();
        for (int i = 0; i < TRIES; i++) {
            boolean free = true;
            for (int k = 0; k < count && free; k++) {
                free = !touches(surface, station, radius, (k + (double) i / TRIES) * surface.pitch());
            }
            if (free) {
                return true;
            }
        }
        return false;
    }

    private static boolean touches(CheckedSurface surface, Station station, double radius, double clock) {
        double[] point = {station.x(), station.r() * Math.sin(clock), station.r() * Math.cos(clock)};
        double[] low = {point[0] - radius, point[1] - radius, point[2] - radius};
        double[] high = {point[0] + radius, point[1] + radius, point[2] + radius};
        Triangles triangles = surface.inSpace().triangles();
        return surface.inSpace().any(low, high, triangle -> triangles.distance(triangle, point) < radius);
    }

    /** The room between hub and casing in the plane through the axis. */
    private record Channel(WallLine hub, WallLine casing) {

        /** Whether both walls reach to this x. */
        boolean reaches(double x) {
            return x >= Math.max(hub.least(), casing.least()) && x <= Math.min(hub.most(), casing.most());
        }

        /** Whether a way straight outward meets the outline of the room an odd number of times. */
        boolean holds(double x, double r) {
            List<MeridionalPoint> outline = new ArrayList<>(hub.points());
            List<MeridionalPoint> back = new ArrayList<>(casing.points());
            if (runsAft(hub.points()) == runsAft(back)) {
                Collections.reverse(back);
            }
            outline.addAll(back);
            boolean inside = false;
            for (int i = 0; i < outline.size(); i++) {
                MeridionalPoint a = outline.get(i);
                MeridionalPoint b = outline.get((i + 1) % outline.size());
                if (a.x() > x != b.x() > x && a.r() + (b.r() - a.r()) * (x - a.x()) / (b.x() - a.x()) > r) {
                    inside = !inside;
                }
            }
            return inside;
        }

        private static boolean runsAft(List<MeridionalPoint> curve) {
            return curve.get(0).x() <= curve.get(curve.size() - 1).x();
        }

        double distance(double x, double r) {
            return Math.min(hub.distance(x, r), casing.distance(x, r));
        }
    }
}
