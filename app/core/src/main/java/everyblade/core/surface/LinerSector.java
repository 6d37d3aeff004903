package everyblade.core.surface;

import everyblade.core.entry.Zoning;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Shape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * One sector of a liner, centred at clock 0: its outer wall, which faces the axis, then its inner wall, which faces away;
 * each from front to rear in strips round the sector. The halves are those of each wall's own length.
 */
final class LinerSector {

    /** No facet spans more of the circle than this, degrees; it stands off the true wall by a thousandth of its radius. */
    private static final double WIDEST = 5;

    private static final double SAME = 1e-9;

    private LinerSector() {}

    /** @param split into how many parts each facet is divided both ways */
    static Grid of(Shape.Liner liner, int count, Zoning zoning, Fineness fineness, int split) throws UnusableShape {
        MeshBuilder mesh = new MeshBuilder();
        double sector = 2 * Math.PI / count;
        int steps = split * Math.max(fineness.span(), (int) Math.ceil(360.0 / count / WIDEST));
        for (boolean outer : new boolean[] {true, false}) {
            Curve curve = outer
                    ? frontToRear(liner.outer(), CurveName.OfShape.OUTER_LINER)
                    : frontToRear(liner.inner(), CurveName.OfShape.INNER_LINER);
            double[] shares = shares(curve, fineness.chord(), split);
            double[] x = Arrays.stream(shares).map(curve::xAt).toArray();
            double[] r = Arrays.stream(shares).map(curve::rAt).toArray();
            int wall = outer || zoning.spans().isEmpty()
                    ? 0
                    : Math.max(1, zoning.chords().size());
            boolean halves = !zoning.chords().isEmpty();
            new Revolution(x, r)
                    .addTo(
                            mesh,
                            -sector / 2,
                            sector,
                            steps,
                            !outer,
                            i -> wall + (halves && shares[i] + shares[i + 1] > 1 ? 1 : 0));
        }
        return new Grid(mesh.built(), steps, column -> false);
    }

    private static Curve frontToRear(List<MeridionalPoint> points, CurveName name) throws UnusableShape {
        List<MeridionalPoint> inOrder = new ArrayList<>(points);
        if (points.get(0).x() > points.get(points.size() - 1).x()) {
            Collections.reverse(inOrder);
        }
        return new Curve(inOrder, name);
    }

    /** The corners of the wall and its middle, and evenly between them what it takes. */
    private static double[] shares(Curve curve, int facets, int split) {
        List<Double> breaks = new ArrayList<>(List.of(0.5));
        for (int i = 0; i < curve.size(); i++) {
            breaks.add(curve.shareOf(i));
        }
        breaks.sort(null);
        List<Double> shares = new ArrayList<>(List.of(0.0));
        for (double end : breaks) {
            double begin = shares.get(shares.size() - 1);
            int pieces = split * (int) Math.ceil((end - begin) * facets - SAME);
            for (int i = 1; i <= pieces; i++) {
                shares.add(Between.mix(begin, end, (double) i / pieces));
            }
        }
        return shares.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
