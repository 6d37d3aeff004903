package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.sight.ToleranceCost.Way;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Tolerance;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The 27 poses that stand for a tolerance: the nominal one first, then every other combination of −, 0 and + the
 * tolerance axially, tangentially and radially. Those after the nominal one are tilted in turn upward, to the right of
 * the picture, downward and to the left. Fixed, so that numbers agree from run to run.
 */
public final class PoseFamily {

    /** How many poses there are in a family. */
    public static final int SIZE = 27;

    private static final int[] OFFSETS = {0, 1, -1};

    private PoseFamily() {}

    /** The family of a pose; the pose alone where it is exact. */
    public static List<Pose> of(Pose nominal, Tolerance within) {
        if (within.mm() == 0 && within.deg() == 0) {
            return List.of(nominal);
        }
        List<Pose> family = new ArrayList<>();
        for (int axial : OFFSETS) {
            for (int tangential : OFFSETS) {
                for (int radial : OFFSETS) {
                    Pose tilted = tilted(nominal, family.size(), Math.toRadians(within.deg()));
                    family.add(moved(tilted, axial * within.mm(), tangential * within.mm(), radial * within.mm()));
                }
            }
        }
        return List.copyOf(family);
    }

    /** The poses that are off in one way only, the nominal one not among them; none where a tolerance is 0. */
    static Map<Way, List<Pose>> oneWay(Pose nominal, Tolerance within) {
        double mm = within.mm();
        Map<Way, List<Pose>> ways = new EnumMap<>(Way.class);
        if (mm > 0) {
            ways.put(Way.AXIALLY, List.of(moved(nominal, mm, 0, 0), moved(nominal, -mm, 0, 0)));
            ways.put(Way.ROUND, List.of(moved(nominal, 0, mm, 0), moved(nominal, 0, -mm, 0)));
            ways.put(Way.OUTWARD, List.of(moved(nominal, 0, 0, mm), moved(nominal, 0, 0, -mm)));
        }
        if (within.deg() > 0) {
            ways.put(
                    Way.TILTED,
                    IntStream.rangeClosed(1, 4)
                            .mapToObj(index -> tilted(nominal, index, Math.toRadians(within.deg())))
                            .toList());
        }
        return ways;
    }

    private static Pose tilted(Pose pose, int index, double angle) {
        if (index == 0) {
            return pose;
        }
        double signed = (index - 1) % 4 < 2 ? angle : -angle;
        boolean upward = index % 2 == 1;
        Heading up = square(pose.up(), pose.forward());
        Heading towards = upward ? up : cross(pose.forward(), up);
        Heading forward = sum(pose.forward(), Math.cos(signed), towards, Math.sin(signed));
        return with(
                pose,
                pose.x(),
                pose.r(),
                pose.clock(),
                forward,
                upward ? sum(up, Math.cos(signed), pose.forward(), -Math.sin(signed)) : up);
    }

    /** Moved straight, its headings kept in space. */
    private static Pose moved(Pose pose, double axial, double tangential, double radial) {
        double outward = pose.r() + radial;
        double turned = tangential == 0 && outward >= 0 ? 0 : Math.atan2(tangential, outward);
        return with(
                pose,
                pose.x() + axial,
                tangential == 0 ? Math.abs(outward) : Math.hypot(tangential, outward),
                pose.clock().plus(Turn.ofDegrees(Math.toDegrees(turned))),
                seenFrom(turned, pose.forward()),
                seenFrom(turned, pose.up()));
    }

    /** The parts of a heading at a clock angle further on. */
    private static Heading seenFrom(double turned, Heading heading) {
        double sine = Math.sin(turned);
        double cosine = Math.cos(turned);
        return new Heading(
                heading.axial(),
                heading.tangential() * cosine - heading.radial() * sine,
                heading.radial() * cosine + heading.tangential() * sine);
    }

    private static Pose with(Pose pose, double x, double r, Turn clock, Heading forward, Heading up) {
        return new Pose(x, r, clock, forward, up, pose.cone(), pose.near(), pose.far(), pose.pixels());
    }

    /** The part of {@code up} square to {@code forward}, of unit length; any such direction if the two are parallel. */
    private static Heading square(Heading up, Heading forward) {
        double along =
                up.axial() * forward.axial() + up.tangential() * forward.tangential() + up.radial() * forward.radial();
        Heading across = sum(up, 1, forward, -along);
        double length = Math.sqrt(across.axial() * across.axial()
                + across.tangential() * across.tangential()
                + across.radial() * across.radial());
        if (length < 1e-9) {
            boolean mostlyAxial = Math.abs(forward.axial()) > 0.5;
            return square(mostlyAxial ? new Heading(0, 0, 1) : new Heading(1, 0, 0), forward);
        }
        return new Heading(across.axial() / length, across.tangential() / length, across.radial() / length);
    }

    private static Heading sum(Heading a, double ofA, Heading b, double ofB) {
        return new Heading(
                ofA * a.axial() + ofB * b.axial(),
                ofA * a.tangential() + ofB * b.tangential(),
                ofA * a.radial() + ofB * b.radial());
    }

    /** The direction to the right of one who looks along the first with the second upward. */
    private static Heading cross(Heading forward, Heading up) {
        // Axial, tangential and radial make a right-handed frame in this order: aft, then 3 o'clock, then 12 o'clock.
        return new Heading(
                forward.tangential() * up.radial() - forward.radial() * up.tangential(),
                forward.radial() * up.axial() - forward.axial() * up.radial(),
                forward.axial() * up.tangential() - forward.tangential() * up.axial());
    }
}
