package everyblade.core.finding.photo;

import everyblade.core.angle.Clock;
import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Stated;
import everyblade.core.turning.Engine;
import everyblade.core.turning.EntryTime;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Places pictures by the times of the entries round them: an entry's time is when what it says was done. A turn ends at
 * its entry and took as long as it says, or all the time since the entry before; within it the shaft is taken to turn
 * evenly, to a fifth of the turn.
 *
 * <p>Every identification counts, later ones too, as it does for what was seen.
 */
final class PhotoPlacing {

    /** How uneven a turn by hand may be: share of the turn, at its middle. */
    private static final double UNEVEN = 0.2;

    private final Situation situation;
    private final List<Logged> counting;

    private PhotoPlacing(Fold fold) {
        this.situation = fold.situation();
        this.counting = fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .toList();
    }

    /** Of pictures taken in the course of this journal. */
    static PhotoPlacing of(Fold fold) {
        return new PhotoPlacing(fold);
    }

    /** Where things were at a time. */
    PhotoPlace at(Instant taken) {
        int next = 0;
        while (next < counting.size() && !counting.get(next).at().isAfter(taken)) {
            next++;
        }
        int last = next == 0 ? 0 : counting.get(next - 1).number();
        Optional<View> view = viewAfter(last);
        Optional<Row> row = view.map(seen -> situation.engine().rows().get(seen.row()));
        if (row.isEmpty()) {
            return PhotoPlace.unknown(last, view, row);
        }
        double share = next < counting.size() ? shareOfMove(next, taken) : 0;
        int from = situation.stopAfter(row.get(), last);
        int to = share > 0 ? situation.stopAfter(row.get(), counting.get(next).number()) : from;
        return place(last, view.get(), row.get(), from, to, share);
    }

    /** The view in use after an entry. */
    private Optional<View> viewAfter(int entry) {
        return counting.stream()
                .takeWhile(logged -> logged.number() <= entry)
                .filter(logged -> logged.entry() instanceof LookEntry.View)
                .reduce((earlier, later) -> later)
                .flatMap(logged -> situation
                        .engine()
                        .model()
                        .view(((LookEntry.View) logged.entry()).view().value()));
    }

    /** How much of the move that ends with the next entry was done by then; 0 if it had not begun or is none. */
    private double shareOfMove(int next, Instant taken) {
        Logged logged = counting.get(next);
        Entry entry = logged.entry();
        if (!EntryKind.of(entry).moves() || next == 0) {
            return 0;
        }
        double since = EntryTime.seconds(counting.get(next - 1).at(), logged.at());
        double took = Math.min(
                since, Stated.seconds(entry).map(BigDecimal::doubleValue).orElse(since));
        double left = EntryTime.seconds(taken, logged.at());
        return took <= 0 ? 0 : Math.max(0, Math.min(1, 1 - left / took));
    }

    private PhotoPlace place(int last, View view, Row row, int from, int to, double share) {
        SmoothedTrack placing = situation.placing(row);
        double moved = placing.counted(from, to).degrees();
        double uneven = UNEVEN * Math.abs(moved) * 2 * Math.sqrt(share * (1 - share));
        Turn shaft = placing.adjusted(from).plus(Turn.ofDegrees(share * moved)).wrapped();
        SmoothedTrack.Stand stand = placing.at(row.id(), row.rock(), from);
        SmoothedTrack.Stand end = placing.at(row.id(), row.rock(), to);
        boolean lost = stand.otherwise().isPresent()
                || end.otherwise().isPresent()
                || IntStream.rangeClosed(from + 1, to).anyMatch(placing::doubtful);
        if (stand.place().isEmpty()) {
            return new PhotoPlace(
                    last,
                    Optional.of(view),
                    Optional.of(row),
                    OptionalDouble.of(shaft.degrees()),
                    uneven,
                    Optional.empty(),
                    0,
                    share > 0,
                    lost);
        }
        SmoothedTrack.Place place = stand.place().get();
        Turn best = place.best().plus(Turn.ofDegrees(share * moved));
        double below = place.best().minus(place.low()).degrees() + uneven;
        double above = place.high().minus(place.best()).degrees() + uneven;
        long middle = pitches(view, row, best, 0);
        long off = Math.max(
                Math.abs(pitches(view, row, best, -below) - middle),
                Math.abs(pitches(view, row, best, above) - middle));
        return new PhotoPlace(
                last,
                Optional.of(view),
                Optional.of(row),
                OptionalDouble.of(shaft.degrees()),
                Math.max(below, above),
                Optional.of(Math.floorMod(middle, row.count()) + 1),
                (int) Math.min(off, row.count() / 2),
                share > 0,
                lost);
    }

    /** How many airfoils after the first one stands at the reference, if the first stands at this angle. */
    private static long pitches(View view, Row row, Turn first, double further) {
        double apart = Turn.ofTicks(Clock.ofDegrees(view.reference()).tick())
                        .minus(first)
                        .degrees()
                - further;
        return Math.round(apart / Engine.pitch(row) * row.numbering().sign());
    }
}
