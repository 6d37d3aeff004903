package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.fact.Fact;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Where everything stands after some entries. Immutable; {@link Judge} makes the next one.
 *
 * @param engine that is inspected
 * @param scope where the scope tip is
 * @param drive at what shafts are turned, and how hot the metal is
 * @param tracks by the id that {@link Engine#track} gives
 * @param legs what was watched of each row, in order
 * @param ledger what people said beside the turning
 */
public record Situation(
        Engine engine,
        Scope scope,
        Drive drive,
        Map<String, Track> tracks,
        Map<String, Trail<Leg>> legs,
        Ledger ledger) {

    /**
     * Where the scope tip is.
     *
     * @param lastSeat where it was seated last, in or out by now
     * @param among whether it is among the blades
     * @param placements how often it was seated
     */
    record Scope(Optional<Seat> lastSeat, boolean among, int placements) {}

    /**
     * At what shafts are turned, and how hot the metal is.
     *
     * @param pads id of the pad in use by spool, where one was named
     * @param namedSpool the spool whose pad was named last
     * @param celsius metal temperature last read, °C
     */
    record Drive(Map<String, String> pads, Optional<String> namedSpool, Optional<BigDecimal> celsius) {}

    /** Before the first entry. */
    public static Situation start(Engine engine) {
        Map<String, Track> tracks = new HashMap<>();
        for (Spool spool : engine.model().spools()) {
            tracks.put("spool " + spool.id(), Track.start("spool " + spool.id()));
        }
        for (Row row : engine.rows().values()) {
            if (row.kind() != RowKind.ROTOR) {
                tracks.put(Engine.track(row), Track.start(Engine.track(row)));
            }
        }
        return new Situation(
                engine,
                new Scope(Optional.empty(), false, 0),
                new Drive(Map.of(), Optional.empty(), Optional.empty()),
                Map.copyOf(tracks),
                Map.of(),
                Ledger.BLANK);
    }

    /** Where the scope tip was seated last, in or out by now. */
    public Optional<Seat> lastSeat() {
        return scope.lastSeat();
    }

    /** Whether the scope tip is among the blades. */
    public boolean among() {
        return scope.among();
    }

    /** How often the scope tip was seated. */
    int placements() {
        return scope.placements();
    }

    /** The spool whose pad was named last. */
    public Optional<String> namedSpool() {
        return drive.namedSpool();
    }

    /** Metal temperature last read, °C. */
    public Optional<BigDecimal> celsius() {
        return drive.celsius();
    }

    /** The view in use; empty before the first one, and while the scope is out. */
    public Optional<Seat> seat() {
        return lastSeat().filter(last -> !last.out());
    }

    /** What is known of the angle that a row stands at. */
    Track trackOf(Row row) {
        return tracks.get(Engine.track(row));
    }

    /** Where a row stood at each stop of its track, with every sighting so far taken into account. */
    public SmoothedTrack placing(Row row) {
        return SmoothedTrack.of(trackOf(row));
    }

    /** How many sightings tie the row's track down: places may change only when this does. */
    public int sightings(Row row) {
        return trackOf(row).sightings().size();
    }

    /** Index of the stop at which the row's track is now. */
    public int stop(Row row) {
        return trackOf(row).here();
    }

    /** Index of the stop at which the row's track was after entry K. */
    public int stopAfter(Row row, int entry) {
        List<Stop> stops = trackOf(row).stops();
        int last = 0;
        while (last + 1 < stops.size() && stops.get(last + 1).entry() <= entry) {
            last++;
        }
        return last;
    }

    /** By how much what turned or was drawn did at each entry that moved something, degrees as counted, without sign. */
    public Map<Integer, Double> moved() {
        Map<Integer, Double> moved = new HashMap<>();
        for (Track track : tracks.values()) {
            for (int stop = 1; stop < track.stops().size(); stop++) {
                Stop at = track.stops().get(stop);
                Turn by = at.counted().minus(track.stops().get(stop - 1).counted());
                moved.merge(at.entry(), Math.abs(by.degrees()), Math::max);
            }
        }
        return moved;
    }

    /** Best value of the reading of a row's shaft (of a static row, of the angle to the scope tip), 0 to a turn. */
    public Turn reading(Row row) {
        return trackOf(row).readingNow();
    }

    /** What was watched of a row, in order. */
    public List<Leg> legsOf(Row row) {
        return legs.getOrDefault(row.id(), Trail.empty());
    }

    /** Whether any airfoil of the row was identified, so that watching it counts. */
    public boolean counting(Row row) {
        return trackOf(row).knows(row.id());
    }

    /** Where the first airfoil of each row that stands still is, if one of its airfoils was identified: clock angles of the engine. */
    public Map<String, SmoothedTrack.Place> places() {
        Map<String, SmoothedTrack.Place> places = new HashMap<>();
        for (Row row : engine.rows().values()) {
            if (row.kind() != RowKind.ROTOR && counting(row)) {
                // The track of such a row keeps its angle to the scope tip, which may have been drawn round since.
                Turn drawn = reading(row);
                placing(row)
                        .at(row.id(), row.rock(), stop(row))
                        .place()
                        .ifPresent(at -> places.put(
                                row.id(),
                                new SmoothedTrack.Place(
                                        at.low().minus(drawn),
                                        at.high().minus(drawn),
                                        at.best().minus(drawn))));
            }
        }
        return places;
    }

    /** The count errors found on the tracks of this engine, by the entry that found them. */
    public List<CountError> countErrors() {
        return byEntry(tracks.values().stream().flatMap(track -> track.countErrors().stream()));
    }

    /** Those that were not found in an earlier situation of this engine. */
    public List<CountError> countErrorsSince(Situation before) {
        return byEntry(tracks.values().stream()
                .flatMap(track -> track.countErrorsSince(before.tracks.get(track.id())).stream()));
    }

    private static List<CountError> byEntry(Stream<CountError> errors) {
        return errors.sorted(Comparator.comparingInt(CountError::entry)).toList();
    }

    /** The airfoil that stands nearest to the reference of the view in use; empty if its row is not being counted. */
    public Optional<Integer> airfoilAtReference(Seat inUse) {
        Row row = inUse.row();
        Optional<SmoothedTrack.Place> place =
                placing(row).at(row.id(), row.rock(), stop(row)).place();
        return place.map(stands -> {
            double pitches = Turn.ofTicks(inUse.reference().tick())
                            .minus(stands.best())
                            .wrapped()
                            .degrees()
                    / Engine.pitch(row)
                    * row.numbering().sign();
            return Math.floorMod(Math.round(pitches), row.count()) + 1;
        });
    }

    /** How far an airfoil most likely is from the reference of the view in use, degrees; its row is being counted. */
    public double offReference(Seat inUse, int airfoil) {
        Row row = inUse.row();
        Turn best = placing(row)
                .at(row.id(), row.rock(), stop(row))
                .place()
                .orElseThrow()
                .best();
        double off = Turn.ofTicks(inUse.reference().tick())
                .minus(best.plus(Engine.fromFirst(row, airfoil)))
                .wrapped()
                .degrees();
        return Math.min(off, 360 - off);
    }

    /** From where, and with what, the row in view is watched from this seat. */
    Stance stance(Seat from) {
        return stance(from, from.station().map(Station::id).stream().toList(), false);
    }

    /** The same while the scope tip is moved through these stations. */
    Stance stance(Seat from, List<String> stations, boolean moved) {
        return new Stance(
                from.view().id(), stations, moved, from.scopeTip().map(ScopeTip::id), ledger.vanes(), ledger.proof());
    }

    /** The pad at which a spool is turned now. */
    public Pad padOf(Spool spool) {
        String id = drive.pads().getOrDefault(spool.id(), spool.pads().get(0).id());
        return spool.pads().stream()
                .filter(pad -> pad.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Why the pad in use does not turn a spool that way; empty if it does. */
    public Optional<Fact> oneWay(Spool spool, Direction way) {
        return Moves.oneWay(spool, padOf(spool), way).map(Function.identity());
    }

    Situation seated(Seat newSeat, int newPlacements) {
        return with(new Scope(Optional.of(newSeat), among(), newPlacements));
    }

    /** Nobody knows that the scope tip stayed where it was within the tolerance of its station. */
    Situation reseated() {
        int placement = placements() + 1;
        return seat().filter(in -> in.station().isPresent())
                .map(in -> seated(in.placed(placement, in.there()), placement))
                .orElse(this);
    }

    /** After something was opened, or shut by an entry. */
    Situation portSaid(String thing, Optional<Integer> shutBy) {
        return lastSeat()
                .map(seat -> seated(seat.after(thing, shutBy), placements()))
                .orElse(this);
    }

    Situation among(boolean isAmong) {
        return with(new Scope(lastSeat(), isAmong, placements()));
    }

    Situation atPad(String spool, String pad) {
        Map<String, String> newPads = new HashMap<>(drive.pads());
        newPads.put(spool, pad);
        return with(new Drive(Collections.unmodifiableMap(newPads), Optional.of(spool), celsius()));
    }

    Situation heated(BigDecimal newCelsius) {
        return with(new Drive(drive.pads(), namedSpool(), Optional.of(newCelsius)));
    }

    Situation tracked(Track track) {
        Map<String, Track> newTracks = new HashMap<>(tracks);
        newTracks.put(track.id(), track);
        return new Situation(engine, scope, drive, Collections.unmodifiableMap(newTracks), legs, ledger);
    }

    /** How many runs of watching without a seam there were, of all rows. */
    public int runs() {
        return legs.values().stream()
                .mapToInt(trail -> trail.last().run())
                .max()
                .orElse(0);
    }

    Situation watched(Row row, Leg said) {
        Map<String, Trail<Leg>> newLegs = new HashMap<>(legs);
        Trail<Leg> before = legs.getOrDefault(row.id(), Trail.empty());
        boolean goesOn = !before.isEmpty() && said.continues(before.last());
        Leg leg = said.inRun(goesOn ? before.last().run() : runs() + 1);
        newLegs.merge(row.id(), Trail.<Leg>empty().with(leg), (trail, one) -> trail.with(leg));
        return new Situation(engine, scope, drive, tracks, Collections.unmodifiableMap(newLegs), ledger);
    }

    /** The same with these remarks about cells and no others. */
    public Situation remarked(List<Remark> remarks) {
        return noted(ledger.remarked(remarks));
    }

    Situation noted(Ledger newLedger) {
        return new Situation(engine, scope, drive, tracks, legs, newLedger);
    }

    private Situation with(Scope tip) {
        return new Situation(engine, tip, drive, tracks, legs, ledger);
    }

    private Situation with(Drive turning) {
        return new Situation(engine, scope, turning, tracks, legs, ledger);
    }
}
