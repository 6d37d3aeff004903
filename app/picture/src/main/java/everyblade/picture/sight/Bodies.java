package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Setting.Between;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.surface.Walls;
import everyblade.picture.sight.Body.Role;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * All that a scope tip may see, by the same rules as {@link ViewScene} takes what hides, so that picture and sight arcs agree;
 * and beyond that rows in the background, which for lack of their place cannot hide anything.
 *
 * @param vantage from where
 * @param first clock angle at which airfoil 1 of the row stands
 */
record Bodies(Vantage vantage, Turn first) {

    /** A wall so close to a liner, mm, is the liner itself. */
    private static final double SAME_WALL = 0.5;

    /** The row that is looked at comes first, its airfoils in the order of their numbers. */
    List<Body> all() throws UnusableShape {
        Row row = vantage.row();
        ViewScene engine = vantage.engine();
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Body(
                row.name(),
                Role.ROW,
                vantage.scene().row().airfoil(),
                IntStream.range(0, row.count())
                        .mapToObj(i -> vantage.clock(i, first))
                        .toList()));
        for (Wall wall : engine.model().walls()) {
            if (row.kind() != RowKind.LINER || !same(wall)) {
                bodies.add(new Body(wall.id(), Role.WALL, Walls.of(wall), List.of(Turn.ZERO)));
            }
        }
        List<Row> ring = engine.model().rows().stream()
                .filter(other -> row.ring().isPresent() && other.ring().equals(row.ring()))
                .toList();
        for (Row other : engine.model().rows()) {
            Optional<Mesh> shape = other.equals(row) ? Optional.empty() : engine.airfoil(other);
            if (shape.isPresent() && ring.contains(other)) {
                Turn offset = offset(ring, other).minus(offset(ring, row));
                bodies.add(ring(other, Role.MATE, shape.get(), first.plus(offset)));
            } else if (shape.isPresent()) {
                bodies.addAll(elsewhere(other, shape.get()));
            }
        }
        return bodies;
    }

    private static Turn offset(List<Row> ring, Row row) {
        return ring.get(0).equals(row) ? Turn.ZERO : Turn.ofDegrees(row.ringOffset() * 360 / row.count());
    }

    private boolean same(Wall wall) {
        Facets facets = vantage.scene().facets();
        return IntStream.range(0, facets.count())
                .anyMatch(facet -> Meridian.distance(
                                wall.curve(),
                                facets.centroid(facet, 0),
                                StrictMath.hypot(facets.centroid(facet, 1), facets.centroid(facet, 2)))
                        < SAME_WALL);
    }

    private static Body ring(Row row, Role role, Mesh mesh, Turn from) {
        return new Body(
                row.name(),
                role,
                mesh,
                IntStream.range(0, row.count())
                        .mapToObj(i -> from.plus(Turn.ofFraction(i, row.count())))
                        .toList());
    }

    /** A row of another ring: it can hide only if it reaches between the scope tip and the row. */
    private List<Body> elsewhere(Row other, Mesh shape) {
        Optional<Between> between = vantage.setting().between(vantage.pose()).stream()
                .filter(one -> one.row().equals(other))
                .findFirst();
        if (between.isEmpty()) {
            return isNear(Meridian.of(shape)) ? List.of(ring(other, Role.BACKGROUND, shape, Turn.ZERO)) : List.of();
        } else if (between.get().rings().isEmpty()) {
            return List.of(new Body(other.name(), Role.SWEPT, SweptChart.by(shape), List.of(Turn.ZERO)));
        }
        Turn from = between.get().turns() ? first : Turn.ZERO;
        Role role = between.get().sure() ? Role.FIXED : Role.SWEPT;
        return between.get().rings().stream()
                .map(ring -> ring(other, role, ring.airfoil(), from.plus(ring.offset())))
                .toList();
    }

    private boolean isNear(Meridian swept) {
        Pose pose = vantage.pose();
        return swept.rear() > pose.x() - pose.far() && swept.front() < pose.x() + pose.far();
    }
}
