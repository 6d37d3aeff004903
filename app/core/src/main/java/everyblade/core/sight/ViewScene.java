package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Patches;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Placing.Place;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What surrounds the airfoils of a row.
 *
 * @param model the engine
 * @param files contents of its mesh files, by name
 * @param vanes positions of movable vanes by row, where they stand at one
 * @param places where the first airfoils of rows that stand still are, by row, where a journal tells: clock angles of the engine
 */
public record ViewScene(
        EngineModel model, Map<String, byte[]> files, Map<String, String> vanes, Map<String, Place> places) {

    /** A wall so close to a liner, mm, is the liner itself. */
    private static final double SAME_WALL = 0.5;

    public ViewScene {
        files = Map.copyOf(files);
        vanes = Map.copyOf(vanes);
        places = Map.copyOf(places);
    }

    /** The surroundings in an engine of which no journal tells where its vanes stand. */
    public ViewScene(EngineModel model, Map<String, byte[]> files, Map<String, String> vanes) {
        this(model, files, vanes, Map.of());
    }

    /** The surface of one airfoil of a row; empty if it has no shape. */
    public Optional<Mesh> airfoil(Row row) throws UnusableShape {
        return Surfaces.of(
                model,
                row,
                Optional.ofNullable(vanes.get(row.id())).map(row.positions()::get),
                everyblade.core.surface.Fineness.STANDARD,
                files);
    }

    /** How finely one airfoil of a row is judged; empty if it has no shape. */
    public Optional<Grain> grain(Row row) throws UnusableShape {
        Optional<Patches> patches = Surfaces.patches(
                model, row, Optional.ofNullable(vanes.get(row.id())).map(row.positions()::get), files);
        return patches.isPresent()
                ? Optional.of(Grain.of(airfoil(row).orElseThrow(), patches.get()))
                : Optional.empty();
    }

    /**
     * A row with all that turns in its ring, and the walls.
     *
     * @return empty if the row has no shape
     * @throws UnusableShape if a shape of its ring gives no surface
     */
    public Optional<Scene> ring(Row row) throws UnusableShape {
        Optional<Mesh> airfoil = airfoil(row);
        if (airfoil.isEmpty()) {
            return Optional.empty();
        }
        Scene scene = Scene.of(airfoil.get(), row.count(), Zoning.of(row));
        List<Row> ring = model.rows().stream()
                .filter(other -> row.ring().isPresent() && other.ring().equals(row.ring()))
                .toList();
        for (Row mate : ring) {
            Optional<Mesh> shape = mate.equals(row) ? Optional.empty() : airfoil(mate);
            if (shape.isPresent()) {
                Turn offset = offset(ring, mate).minus(offset(ring, row));
                scene = scene.withMate(new Ring(shape.get(), mate.count(), offset.wrapped()));
            }
        }
        for (Wall wall : model.walls()) {
            if (row.kind() != RowKind.LINER || !same(wall, scene.facets())) {
                scene = scene.withWall(wall);
            }
        }
        return Optional.of(scene);
    }

    /** The first row of a ring stands where it stands; the others are offset by their share of a pitch. */
    private static Turn offset(List<Row> ring, Row row) {
        return ring.get(0).equals(row) ? Turn.ZERO : Turn.ofDegrees(row.ringOffset() * 360 / row.count());
    }

    private static boolean same(Wall wall, Facets facets) {
        for (int facet = 0; facet < facets.count(); facet++) {
            double x = facets.centroid(facet, 0);
            double r = Math.hypot(facets.centroid(facet, 1), facets.centroid(facet, 2));
            if (Meridian.distance(wall.curve(), x, r) < SAME_WALL) {
                return true;
            }
        }
        return false;
    }

    /**
     * The scene of a row with the other rows that stand between it and a scope tip, as far as one scene can tell: what turns
     * hides all that it sweeps. So does what stands still where its place is not known exactly, unless the scope tip itself
     * stands in it: then it hides nothing.
     *
     * @param ring the scene of the row's ring; its first airfoil is the one that is looked at
     * @param pose of the scope tip
     * @param reach how far from there the scope tip may be, mm
     */
    public Scene with(Scene ring, Row row, Pose pose, double reach) throws UnusableShape {
        Scene scene = ring;
        for (Neighbour other : neighbours(this::swept, ring, row, pose, reach)) {
            if (other.isExact()) {
                scene = row.kind() == RowKind.ROTOR ? scene.withFixed(other.ring()) : scene.withMate(other.ring());
            } else if (other.isSwept()) {
                scene = scene.withSwept(other.airfoil());
            }
        }
        return scene;
    }

    /** The rows of other rings whose axial extent meets the stretch from a row to a scope tip, as in {@link #with}. */
    public List<Row> between(Scene ring, Row row, Pose pose, double reach) throws UnusableShape {
        return between(this::swept, ring, row, pose, reach);
    }

    /** @param airfoils of the other rows */
    List<Row> between(Airfoils airfoils, Scene ring, Row row, Pose pose, double reach) throws UnusableShape {
        return neighbours(airfoils, ring, row, pose, reach).stream()
                .map(Neighbour::row)
                .toList();
    }

    /** One airfoil of each row; empty if it has no shape. */
    @FunctionalInterface
    interface Airfoils {
        Optional<Swept> of(Row row) throws UnusableShape;
    }

    private Optional<Swept> swept(Row row) throws UnusableShape {
        return airfoil(row).map(Swept::of);
    }

    /**
     * A scene, and what stands otherwise round each airfoil, or is not known quite.
     *
     * @param scene with all that stands alike round every airfoil
     * @param others the rest
     */
    record Setting(Scene scene, Surroundings others) {}

    /**
     * The same as {@link #with} gives, all told: where a row stands past another of another count, or where it is not known, each
     * way in which they may stand. Of two rows whose place is not known quite the scope tip's own is told apart, else the first.
     *
     * @param radius of the scope tip, mm
     */
    Setting setting(Scene ring, Row row, Pose pose, double reach, double radius) throws UnusableShape {
        return setting(this::swept, ring, row, pose, reach, radius);
    }

    /** @param airfoils of the other rows */
    Setting setting(Airfoils airfoils, Scene ring, Row row, Pose pose, double reach, double radius)
            throws UnusableShape {
        Scene scene = ring;
        List<Neighbour> all = neighbours(airfoils, ring, row, pose, reach);
        List<Neighbour> mates = new ArrayList<>();
        Optional<Neighbour> doubtful = all.stream()
                .filter(other -> other.span().isPresent() && !other.isExact())
                .min(Comparator.comparing(other -> !other.among()));
        for (Neighbour other : all) {
            boolean rotor = row.kind() == RowKind.ROTOR;
            if (other.isExact() && rotor) {
                scene = scene.withFixed(other.ring());
            } else if (other.isExact() && other.row().count() % row.count() == 0) {
                scene = scene.withMate(other.ring());
            } else if (other.isExact()) {
                mates.add(other);
            } else if (doubtful.filter(other::equals).isEmpty()) {
                scene = scene.withSwept(other.airfoil());
            }
        }
        return new Setting(scene, Surroundings.of(row, mates, doubtful, radius));
    }

    private List<Neighbour> neighbours(Airfoils airfoils, Scene ring, Row row, Pose pose, double reach)
            throws UnusableShape {
        Meridian own = Meridian.of(ring.row().airfoil());
        double from = Math.min(own.front(), pose.x() - reach);
        double to = Math.max(own.rear(), pose.x() + reach);
        List<Neighbour> between = new ArrayList<>();
        for (Row other : model.rows()) {
            boolean mate =
                    other.equals(row) || row.ring().isPresent() && other.ring().equals(row.ring());
            Optional<Swept> shape = mate ? Optional.empty() : airfoils.of(other);
            if (shape.isPresent()) {
                Meridian swept = shape.get().meridian();
                if (swept.rear() > from && swept.front() < to) {
                    boolean among = swept.distance(pose.x(), pose.r()) <= reach;
                    between.add(new Neighbour(other, shape.get().airfoil(), among, span(row, other)));
                }
            }
        }
        return between;
    }

    private Optional<Span> span(Row row, Row other) {
        if (other.kind() != RowKind.STATOR) {
            return Optional.empty();
        }
        Optional<Span> there = place(other);
        Optional<Span> known = row.kind() == RowKind.ROTOR
                ? there
                : place(row).flatMap(own -> there.map(standing -> standing.after(own)));
        return Optional.of(known.orElse(Span.anywhere(other.count())));
    }

    /** Where the first airfoil of a row that stands still is, by its maker or else by the journal. */
    private Optional<Span> place(Row row) {
        return row.phase().isPresent()
                ? Optional.of(Span.at(Turn.ofDegrees(row.phase().getAsDouble())))
                : Optional.ofNullable(places.get(row.id())).map(Span::of);
    }
}
