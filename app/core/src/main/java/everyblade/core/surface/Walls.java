package everyblade.core.surface;

import everyblade.spi.Wall;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Walls of revolution as meshes. */
public final class Walls {

    /** How far a facet stands off the true wall at most, mm. */
    public static final double CHORDAL_ERROR = 0.002;

    private static final int LEAST_STEPS = 24;

    private Walls() {}

    /**
     * The whole wall, all the way round, in facets from front to rear and clockwise from clock 0. Corners lie on the true
     * wall; between them a facet stands off it by {@value #CHORDAL_ERROR} mm at most. The wall {@code casing} faces the axis,
     * every other one away from it. All faces have zone 0.
     *
     * @throws UnusableShape if the wall has no length
     */
    public static Mesh of(Wall wall) throws UnusableShape {
        return of(wall, CHORDAL_ERROR);
    }

    /**
     * The same, not so fine.
     *
     * @param chordalError how far a facet may stand off the true wall, mm, above 0
     */
    public static Mesh of(Wall wall, double chordalError) throws UnusableShape {
        Curve curve = new Curve(wall.curve(), new CurveName.OfWall(wall.id()));
        double[] shares = IntStream.range(0, curve.size())
                .mapToDouble(curve::shareOf)
                .distinct()
                .toArray();
        double[] x = Arrays.stream(shares).map(curve::xAt).toArray();
        double[] r = Arrays.stream(shares).map(curve::rAt).toArray();
        double largest = Arrays.stream(r).max().orElseThrow();
        MeshBuilder mesh = new MeshBuilder();
        new Revolution(x, r)
                .addTo(
                        mesh,
                        0,
                        2 * Math.PI,
                        steps(largest, chordalError),
                        !wall.id().equals(Annulus.CASING),
                        i -> 0);
        return mesh.built();
    }

    private static int steps(double radius, double chordalError) {
        if (radius <= chordalError) {
            return LEAST_STEPS;
        }
        return Math.max(LEAST_STEPS, (int) Math.ceil(Math.PI / StrictMath.acos(1 - chordalError / radius)));
    }
}
