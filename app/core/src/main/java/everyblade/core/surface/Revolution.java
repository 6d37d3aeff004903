package everyblade.core.surface;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/** A line in the plane through the axis, turned about it: flat four-cornered facets, whose corners lie on the true surface. */
final class Revolution {

    private final double[] x;
    private final double[] r;

    /** The line through these points. */
    Revolution(double[] x, double[] r) {
        this.x = x;
        this.r = r;
    }

    /**
     * Adds the facets between two clock angles, or all the way round.
     *
     * @param from radians
     * @param sweep radians; a full turn joins up
     * @param steps how many facets round
     * @param leftHand whether facets look to the left of one who goes along the line with the radius upward, thus away
     *     from the axis if the line goes aft
     * @param zone of the facets by the piece of the line
     */
    void addTo(MeshBuilder mesh, double from, double sweep, int steps, boolean leftHand, IntUnaryOperator zone) {
        boolean closed = sweep >= 2 * Math.PI;
        int columns = closed ? steps : steps + 1;
        int[][] nodes = new int[x.length][columns];
        for (int i = 0; i < x.length; i++) {
            for (int k = 0; k < columns; k++) {
                boolean again = r[i] == 0 && k > 0;
                nodes[i][k] = again ? nodes[i][0] : mesh.pointAt(x[i], r[i], from + sweep * k / steps);
            }
        }
        for (int i = 0; i + 1 < x.length; i++) {
            for (int k = 0; k < steps; k++) {
                int next = (k + 1) % columns;
                int[] around = {nodes[i][k], nodes[i + 1][k], nodes[i + 1][next], nodes[i][next]};
                face(mesh, zone.applyAsInt(i), leftHand ? around : MeshBuilder.reversed(around));
            }
        }
    }

    /** On the axis two corners are one. */
    private static void face(MeshBuilder mesh, int zone, int[] around) {
        int[] apart = Arrays.stream(around).distinct().toArray();
        if (apart.length >= 3) {
            mesh.face(zone, apart);
        }
    }
}
