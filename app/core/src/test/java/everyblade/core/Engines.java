package everyblade.core;

import everyblade.core.turning.Engine;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.Landmark;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import everyblade.spi.View;
import everyblade.spi.Window;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Small engines for tests, said in a few words. Rows turn with the spool {@code shaft}, turned at the pad {@code pad}. */
public final class Engines {

    private final List<Row> rows = new ArrayList<>();
    private final List<View> views = new ArrayList<>();
    private final List<Pad> pads = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private final List<String> spools = new ArrayList<>(List.of("shaft"));
    private double aim;
    private List<Landmark> landmarks = List.of();
    private Direction normal = Direction.CW;
    private String spool = "shaft";

    /** One rotor {@code c1} of so many blades, undivided, seen through the view {@code v} within ± so many degrees. */
    public static Engine of(int blades, double halfWidth) {
        return new Engines().rotor("c1", blades).view("v", "c1", 0, halfWidth).built();
    }

    /** The rotors to come turn with this spool; it has the same pads as all others. */
    public Engines onSpool(String id) {
        spool = id;
        if (!spools.contains(id)) {
            spools.add(id);
        }
        return this;
    }

    /** In the views to come an airfoil is put to the reference to ± so many degrees. */
    public Engines aim(double plusMinus) {
        aim = plusMinus;
        return this;
    }

    /** The rows to come have an airfoil that anybody knows again. */
    public Engines landmark(int airfoil) {
        landmarks = List.of(new Landmark(airfoil, "locking piece"));
        return this;
    }

    public Engines rotor(String id, int count) {
        return row(id, RowKind.ROTOR, count, Direction.CW, 1, List.of(), false, 0);
    }

    public Engines stator(String id, int count) {
        return row(id, RowKind.STATOR, count, Direction.CW, 1, List.of(), false, 0);
    }

    public Engines row(
            String id,
            RowKind kind,
            int count,
            Direction numbering,
            int spanBands,
            List<ChordBand> chordBands,
            boolean sides,
            double rock) {
        rows.add(new Row(
                id,
                "row " + id,
                kind,
                kind == RowKind.ROTOR ? Optional.of(spool) : Optional.empty(),
                count,
                numbering,
                rock,
                spanBands,
                chordBands,
                sides,
                landmarks,
                Optional.empty(),
                0.5,
                OptionalDouble.empty(),
                Optional.empty(),
                Map.of(),
                Optional.empty()));
        return this;
    }

    public Engines view(String id, String row, double reference, double halfWidth, String... shows) {
        return view(id, Optional.empty(), row, reference, halfWidth, shows);
    }

    /** A view at the top of its row, through a port, within ± 2°. */
    public Engines viewThrough(String port, String id, String row) {
        return view(id, Optional.of(port), row, 0, 2);
    }

    /** A view through a port, within ± so many degrees. */
    public Engines viewThrough(
            String port, String id, String row, double reference, double halfWidth, String... shows) {
        return view(id, Optional.of(port), row, reference, halfWidth, shows);
    }

    private Engines view(
            String id, Optional<String> port, String row, double reference, double halfWidth, String... shows) {
        views.add(new View(
                id,
                port,
                row,
                Optional.empty(),
                reference,
                aim,
                Optional.of(new Window(halfWidth, shows.length == 0 ? List.of("all") : List.of(shows))),
                List.of(),
                true));
        return this;
    }

    /** A plug of which nothing else is stated. */
    public Engines port(String id) {
        ports.add(
                new Port(id, "port " + id, Port.Kind.PLUG, OptionalDouble.empty(), OptionalDouble.empty(), List.of()));
        return this;
    }

    public Engines pad(String id, Ratio ratio, double play, double backlash, double drift, Direction... directions) {
        Set<Direction> allowed =
                directions.length == 0 ? EnumSet.allOf(Direction.class) : Set.copyOf(List.of(directions));
        pads.add(new Pad(id, id, ratio, allowed, play, backlash, drift));
        return this;
    }

    public Engines normal(Direction direction) {
        normal = direction;
        return this;
    }

    public Engine built() {
        if (pads.isEmpty()) {
            pad("pad", Ratio.ONE, 0, 0, 0);
        }
        return Engine.of(new EngineModel(
                "test",
                "test engine",
                Optional.of("invented for tests"),
                spools.stream().map(id -> new Spool(id, id, normal, pads)).toList(),
                List.of(),
                rows,
                List.of(),
                ports,
                views));
    }
}
