package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.NearestWord;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.turning.SeatProblem.Named;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Entries that seat the scope tip, say what is watched, under which conditions, and from where the shaft is turned. */
final class ViewEntries {

    private static final BigDecimal FREEZING_F = BigDecimal.valueOf(32);

    static final Rules RULES = Rules.NONE
            .and(LookEntry.View.class, ViewEntries::view)
            .and(LookEntry.At.class, ViewEntries::at)
            .and(LookEntry.Watch.class, ViewEntries::watch)
            .and(LookEntry.In.class, (moment, in) -> moved(moment.now(), true))
            .and(LookEntry.Clear.class, (moment, clear) -> moved(moment.now(), false))
            .and(LookEntry.Out.class, (moment, out) -> out(moment.now()))
            .and(LookEntry.Heat.class, (moment, heat) -> heat(moment.now(), heat))
            .and(LookEntry.Proof.class, (moment, proof) -> proof(moment.now(), proof))
            .and(TurnEntry.Pad.class, (moment, pad) -> pad(moment.now(), pad.pad()))
            .and(TurnEntry.Vanes.class, (moment, vanes) -> vanes(moment.now(), vanes));

    private ViewEntries() {}

    private static EntryEffect watch(Moment moment, LookEntry.Watch watch) throws Refusal {
        Situation now = moment.now();
        Seat seat = seat(now, 1);
        ZoneSet zones = ZoneWords.parts(now.engine().zonings().get(seat.row().id()), watch.parts());
        return new EntryEffect(now.seated(seat.watching(zones), now.placements()));
    }

    private static EntryEffect out(Situation now) throws Refusal {
        return new EntryEffect(
                now.seated(seat(now, 1).takenOut(), now.placements()).among(false));
    }

    private static EntryEffect proof(Situation now, LookEntry.Proof proof) {
        return new EntryEffect(now.noted(now.ledger()
                .proved(new Stance.Proof(
                        proof.size().value().doubleValue(),
                        proof.distance().value().doubleValue()))));
    }

    /**
     * Put in among the blades, or drawn clear of them, the scope tip leaves its station or comes back to it: to some other
     * place within its tolerance.
     */
    private static EntryEffect moved(Situation now, boolean in) {
        Situation after = now.among(in);
        if (now.among() == in || now.seat().flatMap(Seat::station).isEmpty()) {
            return new EntryEffect(after);
        }
        Seat seat = now.seat().get();
        int placement = now.placements() + 1;
        return new EntryEffect(
                after.seated(seat.placed(placement, now.engine().tooClose(seat).isPresent() == in), placement));
    }

    /** A reading is kept whatever it says; one that is too high for the scope tip inside calls it out. */
    private static EntryEffect heat(Situation now, LookEntry.Heat heat) {
        BigDecimal read = heat.temperature().value();
        BigDecimal celsius = heat.fahrenheit()
                ? read.subtract(FREEZING_F)
                        .multiply(BigDecimal.valueOf(5))
                        .divide(BigDecimal.valueOf(9), MathContext.DECIMAL64)
                : read;
        return new EntryEffect(now.heated(celsius))
                .and(now.seat()
                        .flatMap(Seat::scopeTip)
                        .filter(tip -> celsius.doubleValue() > tip.hottest().orElse(Double.POSITIVE_INFINITY))
                        .map(tip -> new EntryNote.Hot(tip.hottest().getAsDouble())));
    }

    /** The view in use. */
    static Seat seat(Situation now, int column) throws Refusal {
        return now.seat()
                .orElseThrow(() -> new Refusal(
                        column,
                        new SeatProblem.NoView(
                                now.lastSeat().isPresent(),
                                now.engine().model().views().stream()
                                        .findFirst()
                                        .map(View::id))));
    }

    private static EntryEffect view(Moment moment, LookEntry.View entry) throws Refusal {
        Situation now = moment.now();
        View view = named(
                entry.view(),
                Named.VIEW,
                now.engine().model().view(entry.view().value()),
                now.engine().model().views().stream().map(View::id).toList());
        Optional<ScopeTip> tip = view.scopeTip().flatMap(now.engine().model()::scopeTip);
        if (entry.scopeTip().isPresent()) {
            Said<String> said = entry.scopeTip().get();
            tip = Optional.of(named(
                    said,
                    Named.SCOPE_TIP,
                    now.engine().model().scopeTip(said.value()),
                    now.engine().model().scopeTips().stream().map(ScopeTip::id).toList()));
        }
        if (tip.isPresent() && tip.get().hottest().isPresent()) {
            double hottest = tip.get().hottest().getAsDouble();
            BigDecimal celsius = now.celsius()
                    .orElseThrow(() -> new Refusal(entry.view().column(), new SeatProblem.NotMeasured(hottest)));
            if (celsius.doubleValue() > hottest) {
                throw new Refusal(entry.view().column(), new SeatProblem.TooHot(celsius.doubleValue(), hottest));
            }
        }
        Row row = now.engine().rows().get(view.row());
        int placement = now.placements() + 1;
        Seat seat = new Seat(
                view,
                row,
                tip,
                view.stations().stream().findFirst(),
                placement,
                true,
                now.engine().zonings().get(row.id()).all(),
                false,
                Optional.empty());
        Situation seated = setBack(now.seated(seat, placement), moment.number(), row);
        return close(placedByMaker(seated, moment.number(), row), seat).and(ClosingAdvice.onView(now, view));
    }

    /** A scope tip that stands closer to what turns than the margin is among the blades. */
    private static EntryEffect close(Situation seated, Seat seat) {
        OptionalDouble clearance = seated.engine().tooClose(seat);
        if (clearance.isEmpty()) {
            return new EntryEffect(seated);
        }
        return new EntryEffect(
                seated.among(true),
                new EntryNote.AmongBlades(
                        seat.station().map(Station::id).orElseThrow(),
                        clearance.getAsDouble(),
                        seated.engine().margin()));
    }

    private static EntryEffect at(Moment moment, LookEntry.At entry) throws Refusal {
        Situation now = moment.now();
        Seat seat = seat(now, entry.station().column());
        Station station = named(
                entry.station(),
                Named.STATION,
                seat.view().stations().stream()
                        .filter(one -> one.id().equals(entry.station().value()))
                        .findFirst(),
                seat.view().stations().stream().map(Station::id).toList());
        int placement = now.placements() + 1;
        Seat moved = seat.at(station, placement);
        return close(setBack(now.seated(moved, placement), moment.number(), seat.row()), moved);
    }

    /** A newly seated scope tip is where the view says, however it was drawn before. */
    private static Situation setBack(Situation now, int number, Row row) {
        if (row.kind() == RowKind.ROTOR) {
            return now;
        }
        Track track = now.trackOf(row);
        return track.here() > 0 ? now.tracked(track.read(number, Turn.ZERO.minus(track.readingNow()), 0)) : now;
    }

    /** A row whose place the maker fixes needs no datum. */
    private static Situation placedByMaker(Situation now, int number, Row row) {
        Track track = now.trackOf(row);
        if (row.phase().isEmpty() || track.knows(row.id())) {
            return now;
        }
        Turn origin = Turn.ofDegrees(row.phase().getAsDouble()).plus(track.readingNow());
        return now.tracked(track.identified(
                new Sighting(number, track.here(), row.id(), origin, 1, 0, row.rock(), Engine.pitch(row))));
    }

    private static EntryEffect pad(Situation now, Said<String> said) throws Refusal {
        List<Spool> holders = now.engine().model().spools().stream()
                .filter(spool -> spool.pads().stream().anyMatch(pad -> pad.id().equals(said.value())))
                .toList();
        if (holders.isEmpty()) {
            named(
                    said,
                    Named.PAD,
                    Optional.empty(),
                    now.engine().model().spools().stream()
                            .flatMap(spool -> spool.pads().stream())
                            .map(everyblade.spi.Pad::id)
                            .toList());
        }
        Optional<String> inView =
                now.seat().flatMap(seat -> now.engine().spool(seat.row())).map(Spool::id);
        Optional<Spool> own = holders.stream()
                .filter(spool -> inView.filter(spool.id()::equals).isPresent())
                .findFirst();
        if (own.isEmpty() && holders.size() > 1) {
            throw new Refusal(said.column(), new SeatProblem.SeveralSpools(said.value()));
        }
        return new EntryEffect(now.atPad(own.orElse(holders.get(0)).id(), said.value()));
    }

    private static EntryEffect vanes(Situation now, TurnEntry.Vanes entry) throws Refusal {
        Row row = CellEntries.row(now, Optional.of(entry.row()), entry.row().column());
        String said = entry.position().value();
        List<String> there = row.positions().keySet().stream().sorted().toList();
        if (!there.contains(said)) {
            throw new Refusal(
                    entry.position().column(),
                    new SeatProblem.NoPosition(row.id(), said, NearestWord.to(said, there), there));
        }
        return new EntryEffect(now.noted(now.ledger().vanesAt(row.id(), said)));
    }

    /** What a word names, or a refusal that lists what there is. */
    static <T> T named(Said<String> said, Named what, Optional<T> found, List<String> there) throws Refusal {
        return found.orElseThrow(() -> new Refusal(
                said.column(),
                new SeatProblem.NotThere(
                        what,
                        said.value(),
                        NearestWord.to(said.value(), there),
                        there.stream().distinct().toList())));
    }
}
