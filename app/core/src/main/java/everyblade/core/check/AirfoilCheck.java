package everyblade.core.check;

import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Position;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.spi.Wall;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Finds airfoils that cut each other or a wall. */
record AirfoilCheck(EngineModel model, List<CheckedSurface> airfoils, List<Flaw> flaws) {

    /** By how much a surface may dip into a wall that is drawn with other points, mm. */
    private static final double WALL_TOLERANCE = 0.5;

    /** Curves with more points than anybody writes are passed over, for that would take too long. */
    private static final int MOST_POINTS = 2000;

    void run() {
        for (int i = 0; i < airfoils.size(); i++) {
            CheckedSurface surface = airfoils.get(i);
            neighbours(surface);
            positions(surface);
            walls(surface);
            for (CheckedSurface other : airfoils.subList(0, i)) {
                if (surface.row().ring().isPresent()
                        && surface.row().ring().equals(other.row().ring())) {
                    ringMates(other, surface);
                } else {
                    rows(other, surface);
                }
            }
        }
    }

    private void neighbours(CheckedSurface surface) {
        if (surface.row().count() > 1 && CheckedSurface.cut(surface.inSpace(), surface.turned(surface.pitch()))) {
            flaws.add(new Flaw(
                    Flaw.Kind.BLADES_CUT,
                    surface.part(),
                    new Wrong.NeighboursCut(surface.id()),
                    Wrong.Because.NO_WAY_BETWEEN,
                    Wrong.Mend.CHECK_COUNT));
        }
    }

    private void positions(CheckedSurface surface) {
        Row row = surface.row();
        if (row.shape().filter(Shape.Axial.class::isInstance).isEmpty() || row.count() < 2) {
            return;
        }
        for (Map.Entry<String, Position> position : new TreeMap<>(row.positions()).entrySet()) {
            if (position.getValue().stagger() != 0 && cutAt(surface, position.getValue())) {
                flaws.add(new Flaw(
                        Flaw.Kind.VANES_CUT,
                        new CheckedPart.PositionOf(surface.index(), position.getKey()),
                        new Wrong.NeighboursCutAt(surface.id(), position.getKey()),
                        Wrong.Because.TOUCH_BEFORE,
                        Wrong.Mend.CHECK_STAGGER));
            }
        }
    }

    private boolean cutAt(CheckedSurface surface, Position position) {
        try {
            Optional<Mesh> mesh = Surfaces.of(model, surface.row(), Optional.of(position));
            CheckedSurface there = CheckedSurface.of(surface.index(), surface.row(), mesh.orElseThrow());
            return CheckedSurface.cut(there.inSpace(), there.turned(there.pitch()));
        } catch (UnusableShape unusable) {
            return true;
        }
    }

    /** Every airfoil of the one row whose clock angles meet those of an airfoil of the other is held against it. */
    private void ringMates(CheckedSurface first, CheckedSurface second) {
        double offset = (second.row().ringOffset() - first.row().ringOffset()) * first.pitch();
        Span one = Span.of(first.mesh());
        Span other = Span.of(second.mesh());
        int from = (int) Math.ceil((one.least() - other.most() - offset) / first.pitch());
        int to = (int) Math.floor((one.most() - other.least() - offset) / first.pitch());
        for (int k = from; k <= to; k++) {
            if (CheckedSurface.cut(first.inSpace(), second.turned(offset + k * first.pitch()))) {
                flaws.add(new Flaw(
                        Flaw.Kind.RING_MATES_CUT,
                        second.part(),
                        new Wrong.RingMatesCut(second.id(), first.id()),
                        Wrong.Because.NO_WAY_BETWEEN,
                        Wrong.Mend.CHECK_RING));
                return;
            }
        }
    }

    /** The clock angles that an airfoil takes, radians from clock 0, at most a turn. */
    private record Span(double least, double most) {

        static Span of(Mesh mesh) {
            double[] clocks = IntStream.range(0, mesh.pointCount())
                    .mapToDouble(point -> Math.atan2(mesh.y(point), mesh.z(point)))
                    .toArray();
            return new Span(
                    Arrays.stream(clocks).min().orElseThrow(),
                    Arrays.stream(clocks).max().orElseThrow());
        }
    }

    private void rows(CheckedSurface one, CheckedSurface other) {
        boolean turnAlike = one.row().spool().equals(other.row().spool());
        if (turnAlike) {
            return;
        }
        TriangleTree mine = one.swept();
        TriangleTree theirs = other.swept();
        if (mine.anyPair(theirs, (i, j) -> mine.triangles().overlap(i, theirs.triangles(), j))) {
            flaws.add(new Flaw(
                    Flaw.Kind.ROWS_CUT,
                    other.part(),
                    new Wrong.RowsCut(other.id(), one.id()),
                    Wrong.Because.STANDS_IN_SWEPT,
                    Wrong.Mend.CHECK_CHORD));
        }
    }

    private void walls(CheckedSurface surface) {
        List<Wall> walls = model.walls().stream()
                .filter(wall -> wall.curve().size() <= MOST_POINTS)
                .toList();
        for (Wall wall : walls) {
            WallLine line = new WallLine(wall.curve());
            TriangleTree swept = surface.swept();
            boolean cuts = swept.anyPair(
                    new TriangleTree(Triangles.along(wall.curve())),
                    (i, piece) -> line.parts(swept.triangles(), i, WALL_TOLERANCE));
            if (cuts) {
                flaws.add(new Flaw(
                        Flaw.Kind.BLADE_CUTS_WALL,
                        surface.part(),
                        new Wrong.CutsWall(surface.id(), wall.id()),
                        Wrong.Because.BEHIND_WALL,
                        Wrong.Mend.END_AT_WALL));
            }
        }
    }
}
