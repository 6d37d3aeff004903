package everyblade.core;

import everyblade.core.turning.Engine;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Pad;
import everyblade.spi.Position;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Shape;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Sector;
import everyblade.spi.Station.Tolerance;
import everyblade.spi.View;
import everyblade.spi.Wall;
import everyblade.spi.Window;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Engines with shapes for tests: rows of plain blades between a hub of 100 mm and a casing of 150 mm radius, and scope tips
 * of 60° that see from 2 to 60 mm.
 */
public final class ShapedEngine {

    private final List<Row> rows = new ArrayList<>();
    private final List<View> views = new ArrayList<>();
    private final List<ScopeTip> tips =
            new ArrayList<>(List.of(tip("fwd60", 60, 400), tip("coarse60", 60, 40), tip("wide120", 120, 800)));
    private double play;

    private static ScopeTip tip(String id, double cone, int pixels) {
        return new ScopeTip(id, cone, 0, 2, 60, pixels, 4, OptionalDouble.empty());
    }

    /** Blades of 30 mm chord and no camber whose leading edges stand at x. */
    public ShapedEngine row(String id, RowKind kind, int count, double stagger, double x) {
        return row(id, kind, count, stagger, x, OptionalDouble.empty());
    }

    /** The same, airfoil 1 at a clock angle that the maker fixes. */
    public ShapedEngine row(String id, RowKind kind, int count, double stagger, double x, OptionalDouble phase) {
        Shape.Section section = new Shape.Section(0, 30, stagger, 0, 0.06, x);
        return row(id, kind, count, phase, new Shape.Axial(List.of(section)));
    }

    /** Twisted and cambered blades of 30 mm chord whose leading edges stand at x. */
    public ShapedEngine twisted(String id, int count, double x) {
        return row(
                id,
                RowKind.ROTOR,
                count,
                OptionalDouble.empty(),
                new Shape.Axial(List.of(
                        new Shape.Section(0, 30, 15, 30, 0.09, x),
                        new Shape.Section(0.5, 30, 30, 20, 0.07, x),
                        new Shape.Section(1, 30, 48, 8, 0.05, x))));
    }

    /** A combustor of so many sectors between cylinders of 105 and 145 mm radius, x from 0 to 60. */
    public ShapedEngine liner(String id, int count) {
        Shape shape = new Shape.Liner(line(0, 145, 60, 145), line(0, 105, 60, 105));
        return row(id, RowKind.LINER, count, OptionalDouble.empty(), shape);
    }

    private ShapedEngine row(String id, RowKind kind, int count, OptionalDouble phase, Shape shape) {
        boolean liner = kind == RowKind.LINER;
        rows.add(new Row(
                id,
                "row " + id,
                kind,
                kind == RowKind.ROTOR ? Optional.of("shaft") : Optional.empty(),
                count,
                Direction.CW,
                0,
                2,
                liner
                        ? List.of(ChordBand.FORWARD, ChordBand.AFT)
                        : List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING),
                !liner,
                List.of(),
                Optional.empty(),
                0.5,
                phase,
                Optional.of(shape),
                Map.of("open", new Position(25)),
                Optional.empty()));
        return this;
    }

    /** A station at clock 0. */
    public static Station station(String id, double x, double r, Heading forward, double mm, double deg) {
        return new Station(id, x, r, 0, forward, new Heading(1, 0, 0), new Tolerance(mm, deg), Optional.empty());
    }

    /** The same, holding while the scope tip is in a clock sector. */
    public static Station holding(Station station, double from, double to) {
        return new Station(
                station.id(),
                station.x(),
                station.r(),
                station.clock(),
                station.forward(),
                station.up(),
                station.within(),
                Optional.of(new Sector(from, to)));
    }

    public ShapedEngine view(String id, String row, Station... stations) {
        return view(id, row, "fwd60", Optional.empty(), stations);
    }

    /** A view that only declares that it shows everything within so many degrees of clock 0. */
    public ShapedEngine window(String id, String row, double halfWidth) {
        return view(id, row, "fwd60", Optional.of(new Window(halfWidth, List.of("all"))));
    }

    public ShapedEngine view(String id, String row, String tip, Optional<Window> window, Station... stations) {
        return view(id, row, tip, window, true, stations);
    }

    /** A view whose scope tip cannot be drawn round. */
    public ShapedEngine fixedView(String id, String row, Station... stations) {
        return view(id, row, "fwd60", Optional.empty(), false, stations);
    }

    private ShapedEngine view(
            String id, String row, String tip, Optional<Window> window, boolean travels, Station... stations) {
        views.add(new View(id, Optional.empty(), row, Optional.of(tip), 0, 0, window, List.of(stations), travels));
        return this;
    }

    public ShapedEngine play(double degrees) {
        play = degrees;
        return this;
    }

    public EngineModel model() {
        Pad pad = new Pad("pad", "pad", Ratio.ONE, EnumSet.allOf(Direction.class), play, 0, 0);
        return new EngineModel(
                "test",
                "test engine",
                Optional.of("invented for tests"),
                List.of(new Spool("shaft", "shaft", Direction.CW, List.of(pad))),
                List.of(wall("hub", 100), wall("casing", 150)),
                rows,
                tips,
                List.of(),
                views);
    }

    public Engine built() {
        return Engine.of(model());
    }

    private static Wall wall(String id, double r) {
        return new Wall(id, Optional.empty(), line(-200, r, 300, r));
    }

    private static List<MeridionalPoint> line(double x0, double r0, double x1, double r1) {
        return List.of(new MeridionalPoint(x0, r0), new MeridionalPoint(x1, r1));
    }
}
