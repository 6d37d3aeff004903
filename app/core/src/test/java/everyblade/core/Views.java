package everyblade.core;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Ring;
import everyblade.core.sight.SightScene;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import everyblade.spi.Station.Heading;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Invented rows with a scope tip before them, of the sizes that small gas turbines have.
 *
 * @param scene the row, what stands in one ring with it, and hub and casing
 * @param airfoil of the row
 * @param walls hub and casing
 * @param pose of the scope tip
 */
public record Views(SightScene scene, Mesh airfoil, List<Wall> walls, Pose pose) {

    private static final List<MeridionalPoint> HUB = curve(0, 20, 20, 24, 40, 45, 46, 80);
    private static final List<MeridionalPoint> SHROUD = curve(0, 55, 18, 58, 32, 66, 38, 80);

    /** 40 twisted blades between 60 and 90 mm, seen from before the row at two thirds of its span. */
    public static Views axial(Fineness fineness) throws UnusableShape {
        Shape shape = new Shape.Axial(List.of(
                new Shape.Section(0, 16, 25, 30, 0.09, 2),
                new Shape.Section(0.5, 16.5, 40, 20, 0.07, 1),
                new Shape.Section(1, 17, 55, 10, 0.05, 0)));
        Wall hub = wall("hub", -40, 58, 40, 62);
        Wall casing = wall("casing", -40, 91, 40, 89);
        Row row = row("r1", 40, shape);
        EngineModel model = model(List.of(hub, casing), row);
        Mesh airfoil = mesh(model, row, fineness);
        SightScene scene =
                SightScene.of(airfoil, 40, Zoning.of(row)).withWall(hub).withWall(casing);
        Pose pose = pose(-14, 80, new Heading(0.8, -0.55, -0.2));
        return new Views(scene, airfoil, List.of(hub, casing), pose);
    }

    /** Eleven blades and as many splitters of an impeller, seen from its eye. */
    public static Views impeller(Fineness fineness) throws UnusableShape {
        Wall hub = new Wall("hub", Optional.empty(), HUB);
        Wall casing = wall("casing", -20, 55.5, 0, 55.5, 18, 58.5, 32, 66.5, 38.5, 80.5);
        Row row = row("full", 11, blade(OptionalDouble.empty()));
        Mesh airfoil = mesh(model(List.of(hub, casing), row), row, fineness);
        SightScene scene = SightScene.of(airfoil, 11, Zoning.of(row))
                .withMate(splitters(fineness))
                .withWall(hub)
                .withWall(casing);
        Pose pose = pose(-12, 42, new Heading(0.85, -0.5, 0.1));
        return new Views(scene, airfoil, List.of(hub, casing), pose);
    }

    /** The splitters of the impeller, half a pitch from its blades. */
    public static Ring splitters(Fineness fineness) throws UnusableShape {
        Row row = row("splitter", 11, blade(OptionalDouble.of(0.35)));
        return new Ring(mesh(model(List.of(), row), row, fineness), 11, Turn.ofFraction(1, 22));
    }

    private static Shape blade(OptionalDouble from) {
        return new Shape.Radial(
                HUB,
                SHROUD,
                List.of(new Shape.WrapPoint(0, 0), new Shape.WrapPoint(0.5, -30), new Shape.WrapPoint(1, -40)),
                List.of(new Shape.WrapPoint(0, 0), new Shape.WrapPoint(0.5, -42), new Shape.WrapPoint(1, -55)),
                1.6,
                0.9,
                from);
    }

    private static Pose pose(double x, double r, Heading forward) {
        return new Pose(x, r, Turn.ofDegrees(40), forward, new Heading(0, 0, 1), Turn.ofDegrees(90), 3, 70, 640);
    }

    private static Mesh mesh(EngineModel model, Row row, Fineness fineness) throws UnusableShape {
        return Surfaces.of(model, row, Optional.empty(), fineness, Map.of()).orElseThrow();
    }

    private static EngineModel model(List<Wall> walls, Row... rows) {
        return new EngineModel(
                "invented",
                "invented",
                Optional.empty(),
                List.of(),
                walls,
                List.of(rows),
                List.of(),
                List.of(),
                List.of());
    }

    private static Row row(String id, int count, Shape shape) {
        return new Row(
                id,
                "row " + id,
                RowKind.ROTOR,
                Optional.of("shaft"),
                count,
                Direction.CW,
                0,
                2,
                List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING),
                true,
                List.of(),
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                Optional.of(shape),
                Map.of(),
                Optional.empty());
    }

    private static Wall wall(String id, double... points) {
        return new Wall(id, Optional.empty(), curve(points));
    }

    private static List<MeridionalPoint> curve(double... points) {
        return java.util.stream.IntStream.range(0, points.length / 2)
                .mapToObj(i -> new MeridionalPoint(points[2 * i], points[2 * i + 1]))
                .toList();
    }
}
