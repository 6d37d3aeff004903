package everyblade.picture.sight;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Point;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where each facet of an airfoil lies on the sheet: the surface cut open at the trailing edge and laid flat, so that the
 * leading edges of both sides meet in the middle, the pressure side on the left, the root below. A liner has its outer wall
 * on the left, both walls with the front on the left. Facets of a mesh file lie as seen from the side instead, at x and
 * distance from the axis.
 *
 * @param shapes of the facets
 * @param sides of the facets, 0 on the left
 * @param boxes of the two sides
 * @param inStrips whether the surface is laid flat
 */
record BothSides(List<DrawnShape> shapes, int[] sides, List<Patch> boxes, boolean inStrips) {

    /**
     * The facets in two boxes beside each other.
     *
     * @param corner upper left of the left box
     * @param width of each box, mm
     * @param height of each box, mm
     * @param gap between them, mm
     */
    static BothSides of(Mesh mesh, Row row, Point corner, double width, double height, double gap) {
        List<Patch> boxes = List.of(
                new Patch(new Flat(corner.plus(0, height)), 0, width, 0, height),
                new Patch(new Flat(corner.plus(width + gap, height)), 0, width, 0, height));
        boolean turned = row.kind() != RowKind.LINER;
        Optional<Unrolling> unrolling = Unrolling.of(mesh, row.kind());
        if (unrolling.isPresent()) {
            Unrolling of = unrolling.get();
            List<DrawnShape> shapes = new ArrayList<>();
            for (int facet = 0; facet < mesh.faceCount(); facet++) {
                int side = of.sides()[facet];
                boolean mirrored = turned && side == 0;
                double from = mirrored ? 1 - of.to(facet) : of.from(facet);
                double to = mirrored ? 1 - of.from(facet) : of.to(facet);
                shapes.add(boxes.get(side).part(from, to, of.low(facet), of.high(facet)));
            }
            return new BothSides(shapes, of.sides(), boxes, true);
        }
        int[] sides = sides(mesh, Zoning.of(row));
        return new BothSides(seenFromTheSide(mesh, sides, boxes, turned), sides, boxes, false);
    }

    private static int[] sides(Mesh mesh, Zoning zoning) {
        Facets facets = Facets.of(mesh);
        int[] sides = new int[mesh.faceCount()];
        int chords = Math.max(1, zoning.chords().size());
        for (int facet = 0; facet < sides.length; facet++) {
            boolean clockwise = facets.normal(facet, 1) > 0;
            sides[facet] = zoning.sides().isEmpty() ? (clockwise ? 1 : 0) : mesh.zone(facet) / chords % 2;
        }
        return sides;
    }

    private static List<DrawnShape> seenFromTheSide(Mesh mesh, int[] sides, List<Patch> boxes, boolean turned) {
        double[] range = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int point = 0; point < mesh.pointCount(); point++) {
            range[0] = Math.min(range[0], mesh.x(point));
            range[1] = Math.max(range[1], mesh.x(point));
            range[2] = Math.min(range[2], radius(mesh, point));
            range[3] = Math.max(range[3], radius(mesh, point));
        }
        List<DrawnShape> shapes = new ArrayList<>();
        for (int facet = 0; facet < mesh.faceCount(); facet++) {
            List<Point> corners = new ArrayList<>();
            for (int k = 0; k < mesh.cornerCount(facet); k++) {
                int point = mesh.corner(facet, k);
                double along = share(mesh.x(point), range[0], range[1]);
                double across = share(radius(mesh, point), range[2], range[3]);
                boolean mirrored = turned && sides[facet] == 0;
                corners.add(boxes.get(sides[facet]).at(mirrored ? 1 - along : along, across));
            }
            shapes.add(new Polygon(corners));
        }
        return shapes;
    }

    private static double radius(Mesh mesh, int point) {
        return StrictMath.hypot(mesh.y(point), mesh.z(point));
    }

    private static double share(double value, double least, double most) {
        return most > least ? (value - least) / (most - least) : 0.5;
    }
}
