package everyblade.core.turning;

import everyblade.core.angle.Clock;
import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An engine model made ready to be asked: its rows by id and how each is divided.
 *
 * @param model as the author wrote it
 * @param rows by id, in the model's order
 * @param zonings by row id
 * @param clearances from each station to what a spool turns, where both are known
 * @param margin least clearance with which a spool may be turned, mm
 * @param aims how exactly an airfoil can be put to the middle of the picture from stations
 */
public record Engine(
        EngineModel model,
        Map<String, Row> rows,
        Map<String, Zoning> zonings,
        Map<Standing, Double> clearances,
        double margin,
        Aims aims) {

    /** How far the middle of a picture may lie from the reference of its view. */
    public interface Aims {

        /** Nothing is known of that. */
        Aims UNKNOWN = (view, station) -> 0;

        /** How far it may lie off, either way, wherever within its tolerance the scope tip stands at a station; degrees. */
        double at(View view, Station station);
    }

    /**
     * A station and a spool that may turn beside it.
     *
     * @param view id of the station's view
     * @param station its id
     * @param spool its id
     */
    public record Standing(String view, String station, String spool) {}

    /** The engine of this model; nothing is known of clearances. */
    public static Engine of(EngineModel model) {
        Map<String, Row> rows = new LinkedHashMap<>();
        Map<String, Zoning> zonings = new LinkedHashMap<>();
        for (Row row : model.rows()) {
            rows.put(row.id(), row);
            zonings.put(row.id(), Zoning.of(row));
        }
        return new Engine(
                model, java.util.Collections.unmodifiableMap(rows), Map.copyOf(zonings), Map.of(), 0, Aims.UNKNOWN);
    }

    /**
     * The same, with what is known of clearances.
     *
     * @param known mm from the middle of the scope tip to the nearest place that the spool's rows sweep
     * @param least margin, mm
     */
    public Engine withClearances(Map<Standing, Double> known, double least) {
        return new Engine(model, rows, zonings, Map.copyOf(known), least, aims);
    }

    /** The same, with what is known of how exactly airfoils can be put to the reference. */
    public Engine withAims(Aims known) {
        return new Engine(model, rows, zonings, clearances, margin, known);
    }

    /** How exactly a person can put an airfoil to the reference: as the view says, else as its station's tolerance lets them; ± degrees. */
    public double aim(Seat seat) {
        return aim(seat.view(), seat.station());
    }

    /** The same of a station before anybody is there. */
    public double aim(View view, Optional<Station> at) {
        return view.aim() > 0
                ? view.aim()
                : at.map(station -> aims.at(view, station)).orElse(0.0);
    }

    /**
     * What is left between the scope tip's side, at the worst place of its station's tolerance, and what a spool turns; mm,
     * negative if they may touch, empty if it is not known.
     */
    OptionalDouble clearance(Seat seat, String spool) {
        Optional<Double> middle = seat.station()
                .map(station -> clearances.get(new Standing(seat.view().id(), station.id(), spool)));
        if (middle.isEmpty()) {
            return OptionalDouble.empty();
        }
        double radius = seat.scopeTip().map(tip -> tip.diameter() / 2).orElse(0.0);
        return OptionalDouble.of(
                middle.get() - radius - seat.station().get().within().mm());
    }

    /** The least clearance of a seat, where it is under the margin, so that the scope tip is among what turns. */
    OptionalDouble tooClose(Seat seat) {
        return model.spools().stream()
                .map(spool -> clearance(seat, spool.id()))
                .flatMapToDouble(OptionalDouble::stream)
                .filter(clearance -> clearance < margin)
                .min();
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
