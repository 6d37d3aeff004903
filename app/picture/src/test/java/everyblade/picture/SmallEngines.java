package everyblade.picture;

import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.Pad;
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

/** Engines for tests, with as few rows as a test needs; turned at a pad without any error. */
final class SmallEngines {

    private final List<Row> rows = new ArrayList<>();
    private final List<View> views = new ArrayList<>();
    private String name = "test engine";
    private Optional<String> notice = Optional.of("invented for tests");

    /** One rotor {@code c1}, undivided, seen whole within ± a few degrees of a clock angle through the view {@code v}. */
    static EngineModel rotor(int blades, Direction numbering, double reference) {
        return new SmallEngines()
                .row("c1", RowKind.ROTOR, blades, numbering, 1, false, List.of())
                .view("v", "c1", reference, 5)
                .built();
    }

    /** One rotor {@code c1} with everything divided, seen within ± 5° of 12 o'clock through the view {@code v}. */
    static EngineModel divided(int blades, int spanBands) {
        return new SmallEngines()
                .row(
                        "c1",
                        RowKind.ROTOR,
                        blades,
                        Direction.CW,
                        spanBands,
                        true,
                        List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING))
                .view("v", "c1", 0, 5)
                .built();
    }

    SmallEngines named(String newName, String newNotice) {
        name = newName;
        notice = Optional.of(newNotice);
        return this;
    }

    SmallEngines row(
            String id,
            RowKind kind,
            int count,
            Direction numbering,
            int spanBands,
            boolean sides,
            List<ChordBand> chords) {
        rows.add(new Row(
                id,
                "row " + id,
                kind,
                kind == RowKind.ROTOR ? Optional.of("shaft") : Optional.empty(),
                count,
                numbering,
                0,
                spanBands,
                chords,
                sides,
                List.of(),
                Optional.empty(),
                0.5,
                OptionalDouble.empty(),
                Optional.empty(),
                Map.of(),
                Optional.empty()));
        return this;
    }

    SmallEngines view(String id, String row, double reference, double halfWidth) {
        views.add(new View(
                id,
                Optional.empty(),
                row,
                Optional.empty(),
                reference,
                0,
                Optional.of(new Window(halfWidth, List.of("all"))),
                List.of(),
                true));
        return this;
    }

    EngineModel built() {
        return new EngineModel(
                "test",
                name,
                notice,
                List.of(new Spool(
                        "shaft",
                        "shaft",
                        Direction.CW,
                        List.of(new Pad("pad", "pad", Ratio.ONE, EnumSet.allOf(Direction.class), 0, 0, 0)))),
                List.of(),
                rows,
                List.of(),
                List.of(),
                views);
    }
}
