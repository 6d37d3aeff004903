package everyblade.core.surface;

import everyblade.core.English;
import everyblade.core.entry.Zoning;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Position;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Models of one row for tests. Unless said otherwise the hub is a cylinder of 100 mm and tips stand at 150 mm. */
final class Shapes {

    private List<MeridionalPoint> hub = line(-500, 100, 500, 100);
    private List<MeridionalPoint> casing = line(-500, 150.5, 500, 150.5);
    private int count = 20;
    private int spanBands = 2;
    private boolean sides = true;
    private boolean chordBands = true;
    private Optional<Position> position = Optional.empty();
    private Fineness fineness = Fineness.STANDARD;

    static Shapes annulus() {
        return new Shapes();
    }

    Shapes hub(double... xr) {
        hub = line(xr);
        return this;
    }

    Shapes casing(double... xr) {
        casing = line(xr);
        return this;
    }

    Shapes count(int airfoils) {
        count = airfoils;
        return this;
    }

    Shapes spanBands(int bands) {
        spanBands = bands;
        return this;
    }

    Shapes withoutSides() {
        sides = false;
        return this;
    }

    Shapes withoutChordBands() {
        chordBands = false;
        return this;
    }

    Shapes turnedBy(double degrees) {
        position = Optional.of(new Position(degrees));
        return this;
    }

    Shapes fineness(int chord, int span) {
        fineness = new Fineness(chord, span);
        return this;
    }

    static Shape.Section section(double span, double chord, double stagger, double camber, double thickness, double x) {
        return new Shape.Section(span, chord, stagger, camber, thickness, x);
    }

    /** The same section from root to tip. */
    static Shape.Axial prism(double chord, double stagger, double camber, double thickness, double x) {
        return new Shape.Axial(List.of(
                section(0, chord, stagger, camber, thickness, x), section(1, chord, stagger, camber, thickness, x)));
    }

    /** x and r of each point in turn. */
    static List<MeridionalPoint> line(double... xr) {
        List<MeridionalPoint> points = new ArrayList<>();
        for (int i = 0; i < xr.length; i += 2) {
            points.add(new MeridionalPoint(xr[i], xr[i + 1]));
        }
        return points;
    }

    static List<Shape.WrapPoint> wrap(double... mAndDegrees) {
        List<Shape.WrapPoint> points = new ArrayList<>();
        for (int i = 0; i < mAndDegrees.length; i += 2) {
            points.add(new Shape.WrapPoint(mAndDegrees[i], mAndDegrees[i + 1]));
        }
        return points;
    }

    Row row(Shape shape) {
        return row(Optional.of(shape));
    }

    Row row(Optional<Shape> shape) {
        boolean liner = shape.filter(Shape.Liner.class::isInstance).isPresent();
        List<ChordBand> bands = liner
                ? List.of(ChordBand.FORWARD, ChordBand.AFT)
                : List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING);
        return new Row(
                "c1",
                "row c1",
                liner ? RowKind.LINER : RowKind.ROTOR,
                Optional.empty(),
                count,
                Direction.CW,
                0,
                spanBands,
                chordBands ? bands : List.of(),
                sides && !liner,
                List.of(),
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                shape,
                Map.of(),
                Optional.empty());
    }

    EngineModel model(Shape shape) {
        return new EngineModel(
                "m",
                "m",
                Optional.empty(),
                List.of(),
                List.of(new Wall("hub", Optional.empty(), hub), new Wall("casing", Optional.empty(), casing)),
                List.of(row(shape)),
                List.of(),
                List.of(),
                List.of());
    }

    Solid solid(Shape shape) throws UnusableShape {
        return solid(shape, Map.of());
    }

    Solid solid(Shape shape, Map<String, byte[]> files) throws UnusableShape {
        Row row = row(shape);
        return new Solid(
                Surfaces.of(model(shape), row, position, fineness, files).orElseThrow(), Zoning.of(row));
    }

    /** What a person is told of a shape that gave no surface. */
    static String told(Throwable refused) {
        return English.say(((UnusableShape) refused).told());
    }
}
