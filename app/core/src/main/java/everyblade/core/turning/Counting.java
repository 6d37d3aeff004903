package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** Entries that start, check or break the count. */
final class Counting {

    private Counting() {}

    static Step judge(Situation now, int number, Entry entry) throws Refusal {
        if (entry instanceof Entry.Datum datum) {
            return datum(now, number, datum);
        }
        if (entry instanceof Entry.Here here) {
            Seat seat = Seating.seat(now, here.airfoil().column());
            return identified(now, number, seat.row(), here.airfoil(), here.plusMinus());
        }
        if (entry instanceof Entry.Slip) {
            return new Step(slipped(now, number)).and(Advice.onSlip(now));
        }
        boolean held = entry instanceof Entry.Handover
                || entry instanceof Entry.Pause pause && pause.held()
                || entry instanceof Entry.Takeover takeover && takeover.held();
        // The rotor may be held, but nobody's hand holds the scope tip where it was.
        return new Step((held ? now : slipped(now, number)).reseated());
    }

    private static Step datum(Situation now, int number, Entry.Datum datum) throws Refusal {
        Row row = Remarking.row(now, Optional.of(datum.row()), datum.row().column());
        if (datum.shaftAngle().isEmpty()) {
            return identified(now, number, row, datum.airfoil(), datum.plusMinus());
        }
        Said<BigDecimal> angle = datum.shaftAngle().get();
        if (row.kind() != RowKind.ROTOR) {
            throw new Refusal(
                    angle.column(), "row " + row.id() + " stands still and has no shaft angle: leave out at …");
        }
        // The airfoil first: it may be what tells where the shaft is, and the reading is set from there.
        Step seen = identified(now, number, row, datum.airfoil(), datum.plusMinus());
        Track labelled = seen.situation().trackOf(row).labelled(number, Turn.ofDegrees(angle.value()));
        return new Step(seen.situation().tracked(labelled), seen.warnings());
    }

    /** An airfoil of a row is at the reference of the view in use. */
    static Step identified(Situation now, int number, Row row, Said<Integer> airfoil, Optional<BigDecimal> plusMinus)
            throws Refusal {
        Seat seat = Seating.seat(now, airfoil.column());
        int n = Remarking.airfoil(row, airfoil);
        Track track = now.trackOf(row)
                .sighted(new Sighting(
                        number,
                        now.trackOf(row).here(),
                        row.id(),
                        Engine.origin(row, n, seat.reference()),
                        n,
                        plusMinus
                                .map(BigDecimal::doubleValue)
                                .orElseGet(() -> now.engine().aim(seat)),
                        row.rock(),
                        Engine.pitch(row)));
        Situation after = now.tracked(track);
        return track.fixes()
                .last()
                .countError()
                .filter(CountError::outside)
                .map(error -> new Step(after, told(error, row)))
                .orElse(new Step(after));
    }

    private static Situation slipped(Situation now, int number) {
        Situation after = now;
        for (var spool : now.engine().model().spools()) {
            after = after.tracked(after.tracks().get("spool " + spool.id()).slipped(number));
        }
        return after;
    }

    private static String told(CountError error, Row row) {
        String off = String.format(Locale.ROOT, "%.1f°", Math.abs(error.degrees()));
        if (!error.lost()) {
            return "the count is off by " + off + ", more than the stated errors allow for: it was shared out,"
                    + " but the stated ± are too small";
        }
        return "the count was lost: off by " + off + ", about " + error.airfoils() + " "
                + row.kind().airfoil() + (error.airfoils() == 1 ? "" : "s") + ", somewhere between entries "
                + error.since() + " and " + error.entry() + "; what was seen between them is only maybe seen"
                + " until it is seen again";
    }
}
