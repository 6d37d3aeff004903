package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Entries that start, check or break the count. */
final class CountEntries {

    static final Rules RULES = Rules.NONE
            .and(TurnEntry.Datum.class, CountEntries::datum)
            .and(TurnEntry.Here.class, CountEntries::here)
            .and(TurnEntry.Slip.class, CountEntries::slip)
            .and(RecordEntry.Pause.class, (moment, pause) -> stopped(moment, pause.held()))
            .and(RecordEntry.Handover.class, (moment, handover) -> stopped(moment, true))
            .and(RecordEntry.Takeover.class, CountEntries::takenOver);

    private CountEntries() {}

    private static EntryEffect here(Moment moment, TurnEntry.Here here) throws Refusal {
        Seat seat = ViewEntries.seat(moment.now(), here.airfoil().column());
        return identified(moment.now(), moment.number(), seat.row(), here.airfoil(), here.plusMinus());
    }

    private static EntryEffect slip(Moment moment, TurnEntry.Slip slip) {
        return new EntryEffect(slipped(moment.now(), moment.number())).and(Advice.onSlip(moment.now()));
    }

    /** The rotor may be held, but nobody's hand holds the scope tip where it was. */
    private static EntryEffect stopped(Moment moment, boolean held) {
        return new EntryEffect((held ? moment.now() : slipped(moment.now(), moment.number())).reseated());
    }

    private static EntryEffect takenOver(Moment moment, RecordEntry.Takeover takeover) {
        Situation after = stopped(moment, takeover.held()).situation();
        return new EntryEffect(after.noted(after.ledger().takenOver(takeover.name())));
    }

    private static EntryEffect datum(Moment moment, TurnEntry.Datum datum) throws Refusal {
        Situation now = moment.now();
        int number = moment.number();
        Row row = CellEntries.row(now, Optional.of(datum.row()), datum.row().column());
        if (datum.shaftAngle().isEmpty()) {
            return identified(now, number, row, datum.airfoil(), datum.plusMinus());
        }
        Said<BigDecimal> angle = datum.shaftAngle().get();
        if (row.kind() != RowKind.ROTOR) {
            throw new Refusal(angle.column(), new MoveProblem.NoShaftAngle(row.id()));
        }
        // The airfoil first: it may be what tells where the shaft is, and the reading is set from there.
        EntryEffect seen = identified(now, number, row, datum.airfoil(), datum.plusMinus());
        Track labelled = seen.situation().trackOf(row).labelled(number, Turn.ofDegrees(angle.value()));
        return new EntryEffect(seen.situation().tracked(labelled), seen.warnings());
    }

    /** An airfoil of a row is at the reference of the view in use. */
    static EntryEffect identified(
            Situation now, int number, Row row, Said<Integer> airfoil, Optional<BigDecimal> plusMinus) throws Refusal {
        Seat seat = ViewEntries.seat(now, airfoil.column());
        int n = CellEntries.airfoil(row, airfoil);
        Track before = now.trackOf(row);
        Seen seen = Seen.of(now, seat, row);
        double aim = aim(now, seat, plusMinus);
        Track track = before.identified(new Sighting(
                number,
                before.here(),
                row.id(),
                Engine.origin(row, n, seat.reference()).plus(seen.drawn()),
                n,
                Math.hypot(aim, seen.off()),
                row.rock(),
                Engine.pitch(row)));
        Situation after = now.tracked(track);
        List<CountError> errors = track.countErrorsSince(before);
        return errors.isEmpty() || !errors.get(errors.size() - 1).outside()
                ? new EntryEffect(after)
                : new EntryEffect(after, told(errors.get(errors.size() - 1), row, now));
    }

    /** How well an airfoil is put to the reference: as said, else as well as the view allows; ± degrees. */
    static double aim(Situation now, Seat seat, Optional<BigDecimal> plusMinus) {
        return plusMinus
                .map(BigDecimal::doubleValue)
                .orElseGet(() -> now.engine().aim(seat));
    }

    /**
     * Where a scope tip that was drawn round another row looks: its reference has moved with it.
     *
     * @param drawn by how much, as the row's own track keeps it
     * @param off what that may be off, degrees
     */
    private record Seen(Turn drawn, double off) {

        static Seen of(Situation now, Seat seat, Row row) {
            if (seat.row().id().equals(row.id())) {
                return new Seen(Turn.ZERO, 0);
            }
            Turn drawn =
                    row.kind() == RowKind.ROTOR ? Turn.ZERO : now.trackOf(row).readingNow();
            if (seat.row().kind() == RowKind.ROTOR) {
                return new Seen(drawn, 0);
            }
            Track scope = now.trackOf(seat.row());
            return new Seen(drawn.minus(scope.readingNow()), scope.readingOff().below());
        }
    }

    private static Situation slipped(Situation now, int number) {
        Situation after = now;
        for (var spool : now.engine().model().spools()) {
            after = after.tracked(after.tracks().get("spool " + spool.id()).slipped(number));
        }
        return after;
    }

    private static CountWarning told(CountError error, Row row, Situation now) {
        double off = Math.abs(error.degrees());
        if (!error.lost()) {
            return new CountWarning.ErrorsTooSmall(off);
        }
        return error.unlogged()
                ? new CountWarning.TurnedUnlogged(
                        row.kind(), error.airfoil(), off, error.since(), unsaid(error, row, now))
                : new CountWarning.CountLost(row.kind(), off, error.airfoils(), error.since(), error.entry());
    }

    /** The entry that says the turning which nobody said. */
    private static String unsaid(CountError error, Row row, Situation now) {
        double on = now.engine()
                .spool(row)
                .map(spool -> -spool.normal().sign() * error.degrees())
                .orElse(error.degrees());
        String verb = row.kind() == RowKind.ROTOR ? "skip on " : "feed on ";
        return verb + String.format(Locale.ROOT, "%.1f", on < 0 ? on + 360 : on);
    }
}
