package everyblade.core.check;

import everyblade.core.surface.Mesh;
import everyblade.spi.Row;
import everyblade.spi.RowKind;

/**
 * The surface of a row as it is judged: one airfoil at clock 0, in space and as what it sweeps.
 *
 * @param index of the row in its model
 */
record CheckedSurface(int index, Row row, Mesh mesh, TriangleTree inSpace, TriangleTree swept) {

    static CheckedSurface of(int index, Row row, Mesh mesh) {
        return new CheckedSurface(
                index, row, mesh, new TriangleTree(Triangles.of(mesh, 0)), new TriangleTree(Triangles.swept(mesh)));
    }

    String id() {
        return row.id();
    }

    CheckedPart part() {
        return new CheckedPart.ShapeOf(index);
    }

    /** Liners are walls rather than airfoils: their sectors join. */
    boolean isAirfoil() {
        return row.kind() != RowKind.LINER;
    }

    /** The angle between two airfoils, radians. */
    double pitch() {
        return 2 * Math.PI / row.count();
    }

    /** The same airfoils, turned clockwise by an angle in radians. */
    TriangleTree turned(double angle) {
        return new TriangleTree(Triangles.of(mesh, angle));
    }

    /** Whether this airfoil cuts that one. */
    static boolean cut(TriangleTree one, TriangleTree other) {
        return one.anyPair(other, (i, j) -> one.triangles().cut(i, other.triangles(), j));
    }
}
