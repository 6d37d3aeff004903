package everyblade.core.check;

import everyblade.core.sight.Progress;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Port;
import everyblade.spi.Position;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Shape;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented rows in an annulus of 100 to 150 mm, from x = −500 to 500, with the flaws that are found in them. */
final class CheckedModel {

    private final List<Wall> walls = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final List<View> views = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private double diameter = 4;

    CheckedModel() {
        wall("hub", -500, 100, 500, 100);
        wall("casing", -500, 150.5, 500, 150.5);
    }

    CheckedModel wall(String id, double... xr) {
        List<MeridionalPoint> curve = new ArrayList<>();
        for (int i = 0; i < xr.length; i += 2) {
            curve.add(new MeridionalPoint(xr[i], xr[i + 1]));
        }
        walls.removeIf(wall -> wall.id().equals(id));
        walls.add(new Wall(id, Optional.empty(), curve));
        return this;
    }

    /** The same section, 40 mm long and 4 mm thick unless it is thinner, from root to tip. */
    static Shape.Axial plate(double x, double stagger, double thickness) {
        Shape.Section root = new Shape.Section(0, 40, stagger, 0, thickness, x);
        return new Shape.Axial(List.of(root, new Shape.Section(1, 40, stagger, 0, thickness, x)));
    }

    CheckedModel rotor(String id, int count, Shape shape) {
        return row(id, RowKind.ROTOR, Optional.of("shaft"), count, Optional.empty(), 0, shape, Map.of());
    }

    CheckedModel stator(String id, int count, Shape shape) {
        return row(id, RowKind.STATOR, Optional.empty(), count, Optional.empty(), 0, shape, Map.of());
    }

    CheckedModel vanes(String id, int count, Shape shape, String position, double stagger) {
        return row(
                id,
                RowKind.STATOR,
                Optional.empty(),
                count,
                Optional.empty(),
                0,
                shape,
                Map.of(position, new Position(stagger)));
    }

    CheckedModel inRing(String id, int count, double offset, Shape shape) {
        return row(id, RowKind.ROTOR, Optional.of("shaft"), count, Optional.of("ring"), offset, shape, Map.of());
    }

    private CheckedModel row(
            String id,
            RowKind kind,
            Optional<String> spool,
            int count,
            Optional<String> ring,
            double offset,
            Shape shape,
            Map<String, Position> positions) {
        rows.add(new Row(
                id,
                id,
                kind,
                spool,
                count,
                Direction.CW,
                0,
                2,
                List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING),
                true,
                List.of(),
                ring,
                offset,
                OptionalDouble.empty(),
                Optional.of(shape),
                positions,
                Optional.empty()));
        return this;
    }

    CheckedModel scopeTip(double thickness) {
        diameter = thickness;
        return this;
    }

    CheckedModel view(String row, Station... stations) {
        return view(row, 0, stations);
    }

    /** All views go through this port at 12 o'clock. */
    CheckedModel port(double x, double opening) {
        ports.add(new Port(
                "port",
                "port",
                Port.Kind.PLUG,
                OptionalDouble.of(0),
                OptionalDouble.of(x),
                List.of(new Port.Opening("plug hole", opening))));
        return this;
    }

    /** @param aim stated, degrees */
    CheckedModel view(String row, double aim, Station... stations) {
        views.add(new View(
                "view-" + row,
                ports.stream().map(Port::id).findFirst(),
                row,
                Optional.of("tip"),
                0,
                aim,
                Optional.empty(),
                List.of(stations),
                false));
        return this;
    }

    /** A station that looks aft or forward and a little aside. */
    static Station at(double x, double r, double axial) {
        return new Station(
                "at" + x,
                x,
                r,
                0,
                new Station.Heading(axial, 0.4, 0),
                new Station.Heading(0, 0, 1),
                new Station.Tolerance(0, 0),
                Optional.empty());
    }

    private EngineModel model() {
        ScopeTip tip = new ScopeTip("tip", 90, 0, 2, 90, 640, diameter, OptionalDouble.empty());
        return new EngineModel("m", "m", Optional.empty(), List.of(), walls, rows, List.of(tip), ports, views);
    }

    List<Flaw> flaws() {
        return flaws(Map.of());
    }

    List<Flaw> flaws(Map<String, byte[]> files) {
        return ModelCheck.of(model(), files);
    }

    List<Flaw.Kind> kinds() {
        return flaws().stream().map(Flaw::kind).toList();
    }

    List<Flaw> blindness() {
        return SightCheck.of(model(), Map.of(), Progress.NONE);
    }
}
