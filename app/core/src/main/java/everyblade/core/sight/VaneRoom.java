package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import everyblade.core.surface.NearestFacet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the vanes of a row may stand that leave a scope tip among them its room: no metal nearer to its middle than its
 * radius. Tried at so many places of a pitch, the last ones without room counted in; where no place has room, the roomiest
 * has. Never changes.
 */
final class VaneRoom {

    private static final int PLACES_A_PITCH = 96;
    private static final double ROUNDING = 1e-9;

    private final double pitch;
    private final int count;
    /** The triangles of one vane standing at clock 0. */
    private final double[] corners;

    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    VaneRoom(Mesh vane, int count) {
        this.count = count;
        pitch = 2 * Math.PI / count;
        int[] points = vane.triangles();
        corners = new double[3 * points.length];
        for (int i = 0; i < points.length; i++) {
            corners[3 * i] = vane.x(points[i]);
            corners[3 * i + 1] = vane.y(points[i]);
            corners[3 * i + 2] = vane.z(points[i]);
            double clock = Math.atan2(corners[3 * i + 1], corners[3 * i + 2]);
            least = Math.min(least, clock);
            most = Math.max(most, clock);
        }
    }

    /**
     * The places with room, of those that are possible.
     *
     * @param radius of the scope tip, mm
     */
    List<Span> of(Span possible, Pose pose, double radius) {
        boolean round = possible.width() >= pitch - ROUNDING;
        int steps = Math.max(1, (int) Math.ceil(Math.min(pitch, possible.width()) / pitch * PLACES_A_PITCH - ROUNDING));
        double step = Math.min(pitch, possible.width()) / steps;
        double[] room = new double[round ? steps : steps + 1];
        for (int i = 0; i < room.length; i++) {
            room[i] = room(possible.from() + i * step, pose, radius);
        }
        double enough = Math.min(radius, Arrays.stream(room).max().orElse(0)) - ROUNDING;
        int shut = 0;
        while (shut < room.length && room[shut] >= enough) {
            shut++;
        }
        if (shut == room.length) {
            return List.of(new Span(possible.from(), Math.min(pitch, possible.width())));
        }
        List<Span> spans = new ArrayList<>();
        int begin = round ? shut : 0;
        int open = 0;
        for (int k = 0; k <= room.length; k++) {
            if (k < room.length && room[(begin + k) % room.length] >= enough) {
                open++;
            } else if (open > 0) {
                int from = begin + k - open - 1;
                int to = begin + k;
                double low = possible.from() + (round ? from : Math.max(0, from)) * step;
                double high = possible.from() + (round ? to : Math.min(steps, to)) * step;
                spans.add(new Span(low, high - low));
                open = 0;
            }
        }
        return spans;
    }

    /** How far the middle of the scope tip stands from the metal while a vane stands at a clock angle; mm, negative within it. */
    private double room(double clock, Pose pose, double radius) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int vane = 0; vane < count; vane++) {
            double at = RingShade.wrapped(CriteriaCut.radians(pose.clock()) - clock - vane * pitch);
            double beyond = Math.max(0, Math.max(least - at, at - most));
            if (pose.r() * Math.sin(Math.min(Math.PI / 2, beyond)) < radius) {
                double[] middle = {pose.x(), pose.r() * Math.sin(at), pose.r() * Math.cos(at)};
                nearest = Math.min(nearest, room(middle));
            }
        }
        return nearest;
    }

    private double room(double[] middle) {
        double nearest = Double.POSITIVE_INFINITY;
        boolean before = true;
        for (int at = 0; at < corners.length; at += 9) {
            double squared = NearestFacet.squared(corners, at, middle);
            // At an edge as near as its faces are, it is outside if it is before one of them.
            if (squared < nearest - ROUNDING) {
                nearest = squared;
                before = isBefore(at, middle);
            } else if (squared < nearest + ROUNDING) {
                before |= isBefore(at, middle);
            }
        }
        return before ? Math.sqrt(nearest) : -Math.sqrt(nearest);
    }

    private boolean isBefore(int at, double[] point) {
        double ux = corners[at + 3] - corners[at];
        double uy = corners[at + 4] - corners[at + 1];
        double uz = corners[at + 5] - corners[at + 2];
        double vx = corners[at + 6] - corners[at];
        double vy = corners[at + 7] - corners[at + 1];
        double vz = corners[at + 8] - corners[at + 2];
        return (uy * vz - uz * vy) * (point[0] - corners[at])
                        + (uz * vx - ux * vz) * (point[1] - corners[at + 1])
                        + (ux * vy - uy * vx) * (point[2] - corners[at + 2])
                >= 0;
    }
}
