package everyblade.core.turning;

import everyblade.core.angle.Clock;
import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An engine model made ready to be asked: its rows by id and how each is divided.
 *
 * @param model as the author wrote it
 * @param rows by id, in the model's order
 * @param zonings by row id
 */
public record Engine(EngineModel model, Map<String, Row> rows, Map<String, Zoning> zonings) {

    /** The engine of this model. */
    public static Engine of(EngineModel model) {
        Map<String, Row> rows = new LinkedHashMap<>();
        Map<String, Zoning> zonings = new LinkedHashMap<>();
        for (Row row : model.rows()) {
            rows.put(row.id(), row);
            zonings.put(row.id(), Zoning.of(row));
        }
        return new Engine(model, java.util.Collections.unmodifiableMap(rows), Map.copyOf(zonings));
    }

    /** The spool that a row turns with; empty if it stands still. */
    public Optional<Spool> spool(Row row) {
        return row.kind() == RowKind.ROTOR ? row.spool().flatMap(model::spool) : Optional.empty();
    }

    /** What a row's angle is kept on: its spool's track, or one of its own if it stands still. */
    static String track(Row row) {
        return row.kind() == RowKind.ROTOR ? "spool " + row.spool().orElseThrow() : "row " + row.id();
    }

    /** Degrees from one airfoil of a row to the next. */
    public static double pitch(Row row) {
        return 360.0 / row.count();
    }

    /** How far clockwise airfoil n stands from airfoil 1. */
    public static Turn fromFirst(Row row, int airfoil) {
        return Turn.ofFraction((long) row.numbering().sign() * (airfoil - 1), row.count());
    }

    /** Where airfoil 1 of a row stands if this one stands at the clock angle. */
    static Turn origin(Row row, int airfoil, Clock clock) {
        return Turn.ofTicks(clock.tick()).minus(fromFirst(row, airfoil));
    }
}
