package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Mesh;
import everyblade.spi.ChordBand;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Station.Heading;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Random small rings, walls and scope tips from a seed: warped, twisted airfoils of a few facets each. */
final class SmallRings {

    static final Zoning ZONING = new Zoning(List.of(), List.of(), List.of("leading", "middle", "trailing"));

    private final SplittableRandom random;

    SmallRings(long seed) {
        random = new SplittableRandom(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int count() {
        return 1 + random.nextInt(9);
    }

    Turn clock() {
        return Turn.ofDegrees(between(-30, 400));
    }

    boolean coin() {
        return random.nextBoolean();
    }

    /** Both faces of a bent plate, three pieces along by two up, its corners pushed about. */
    Mesh airfoil() {
        double x = between(-6, 6);
        double chord = between(4, 14);
        double stagger = Math.toRadians(between(-60, 60));
        double root = between(8, 20);
        double tip = root + between(6, 14);
        double[] points = new double[3 * 24];
        for (int side = 0; side < 2; side++) {
            for (int j = 0; j < 3; j++) {
                for (int i = 0; i < 4; i++) {
                    double along = chord * (i / 3.0 - 0.5);
                    double off = (side == 0 ? 1 : -1) * between(0.3, 1) + between(-0.3, 0.3);
                    double r = root + (tip - root) * j / 2 + between(-0.5, 0.5);
                    double round = along * Math.sin(stagger) + off * Math.cos(stagger);
                    int at = 3 * (12 * side + 4 * j + i);
                    points[at] = x + along * Math.cos(stagger) - off * Math.sin(stagger);
                    points[at + 1] = r * Math.sin(round / r);
                    points[at + 2] = r * Math.cos(round / r);
                }
            }
        }
        return faces(points);
    }

    private static Mesh faces(double[] points) {
        int[] corners = new int[48];
        int[] start = new int[13];
        int[] zone = new int[12];
        int face = 0;
        for (int side = 0; side < 2; side++) {
            for (int j = 0; j < 2; j++) {
                for (int i = 0; i < 3; i++) {
                    int a = 12 * side + 4 * j + i;
                    int[] around = side == 0 ? new int[] {a, a + 4, a + 5, a + 1} : new int[] {a, a + 1, a + 5, a + 4};
                    System.arraycopy(around, 0, corners, 4 * face, 4);
                    zone[face] = i;
                    start[++face] = 4 * face;
                }
            }
        }
        return new Mesh(points, corners, start, zone);
    }

    /** A scope tip in or near the ring that looks roughly at it. */
    Pose pose() {
        double x = between(-25, 25);
        double r = random.nextInt(8) == 0 ? 0 : between(5, 36);
        Heading forward = new Heading(-x + between(-10, 10), between(-15, 15), 20 - r + between(-10, 10));
        return new Pose(
                x,
                r,
                clock(),
                forward,
                new Heading(0, 1, 0),
                Turn.ofDegrees(between(30, 150)),
                between(0, 8),
                between(20, 80),
                400);
    }

    Criteria criteria() {
        Turn own = Turn.ofDegrees(between(0, 60));
        return new Criteria(
                Turn.ofDegrees(coin() ? 30 : between(0, 45)),
                coin() ? Map.of(ChordBand.LEADING, own) : Map.of(),
                coin() ? OptionalDouble.empty() : OptionalDouble.of(between(0.1, 1)));
    }

    /** A hub or casing of a few straight pieces, one of which may stand square to the axis. */
    Wall wall(String id, double radius) {
        double step = coin() ? 0 : between(-3, 3);
        double at = between(-5, 5);
        return new Wall(
                id,
                java.util.Optional.empty(),
                List.of(
                        new MeridionalPoint(-30, radius + between(-2, 2)),
                        new MeridionalPoint(at, radius),
                        new MeridionalPoint(at, radius + step),
                        new MeridionalPoint(30, radius + step + between(-2, 2))));
    }
}
