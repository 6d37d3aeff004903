package everyblade.core.move;

import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Placing.Place;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Moves for rows whose sight is computed, one gap after the other, those at the station in use first, else the largest: each is followed through fold and
 * coverage before the next is chosen, so what they close is sure, but nothing says that other moves would not turn less.
 */
final class Stepwise {

    private static final int MOST_MOVES = 80;

    private final List<Move> moves = new ArrayList<>();
    private final List<List<Entry>> entries = new ArrayList<>();
    /** Ways that brought nothing, or that may not be turned. */
    private final Set<Gap.Reach> vain = new HashSet<>();

    private Trial trial;
    private Coverage coverage;
    private long turning;
    private long drawing;

    private Stepwise(Trial trial, Coverage coverage) {
        this.trial = trial;
        this.coverage = coverage;
    }

    /**
     * The moves from where other planned moves end.
     *
     * @param coverage there
     */
    static Stepwise of(Trial trial, Coverage coverage) throws Refusal {
        Stepwise steps = new Stepwise(trial, coverage);
        for (Optional<Gap> gap = steps.largest();
                gap.isPresent() && steps.moves.size() < MOST_MOVES;
                gap = steps.largest()) {
            steps.close(gap.get());
        }
        return steps;
    }

    List<Move> moves() {
        return moves;
    }

    List<List<Entry>> entries() {
        return entries;
    }

    /** Steps of shaft turned in all moves. */
    long turning() {
        return turning;
    }

    /** Steps that the scope tip is drawn and fed in all moves. */
    long drawing() {
        return drawing;
    }

    /** Cells that some view can show and that are still open after all moves; rows nobody identified left out. */
    int unsure() {
        return Gaps.of(coverage).stream()
                .filter(gap -> gap.reach().isPresent() && computed(gap))
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
    }

    private boolean computed(Gap gap) {
        return coverage.row(gap.row().id()).basis() == Basis.COMPUTED;
    }

    private Optional<Gap> largest() {
        return Gaps.of(coverage).stream()
                .filter(gap ->
                        gap.reach().isPresent() && !vain.contains(gap.reach().get()) && computed(gap))
                .max(Comparator.comparing((Gap gap) -> atHand(gap.reach().get()))
                        .thenComparingInt(
                                gap -> gap.airfoils().size() * gap.zones().size()));
    }

    /** Whether the scope tip sits there already. */
    private boolean atHand(Gap.Reach reach) {
        return trial.situation()
                .seat()
                .filter(seat -> seat.view().id().equals(reach.view()))
                .filter(seat -> seat.station().map(Station::id).equals(reach.station()))
                .isPresent();
    }

    private void close(Gap gap) throws Refusal {
        Gap.Reach reach = gap.reach().orElseThrow();
        View view = coverage.situation().engine().model().view(reach.view()).orElseThrow();
        List<Entry> said = seating(view, reach.station());
        boolean seated = !said.isEmpty();
        Trial there = trial.with(said);
        Situation now = there.situation();
        Optional<Spool> spool = now.engine().spool(gap.row());
        Steered steered = new Steered(spool);
        Turn doubt = doubt(now, gap.row(), spool);
        int sense = reach.sweep() < 0 ? -1 : 1;
        Turn first = Turn.ofDegrees(reach.from());
        Turn from = sense > 0
                ? tenths(first.minus(doubt))
                : tenths(first.plus(doubt).negated()).negated();
        Turn last = sense > 0 ? first.plus(doubt) : first.minus(doubt);
        Turn past = sense > 0 ? last.minus(from) : from.minus(last);
        Turn sweep = tenths(Turn.ofDegrees(Math.abs(reach.sweep())).plus(past).negated())
                .negated();
        sweep = sweep.compareTo(Turn.FULL) > 0 ? Turn.FULL : sweep;
        Turn here =
                reach.drawn() ? Turn.ofDegrees(view.reference()).minus(now.reading(gap.row())) : now.reading(gap.row());
        Turn way = shortest(from.minus(here), now, spool);
        if (way.signum() != 0) {
            said.add(steered.unwatched(from, reach.drawn() ? way.negated() : way));
        }
        Turn turn = sense > 0 ? sweep : sweep.negated();
        said.add(steered.watched(reach.drawn() ? turn.negated() : turn));
        try {
            Trial after = trial.with(said);
            Coverage later = coverage.after(after.situation());
            if (seen(later, gap.row()) <= seen(coverage, gap.row())) {
                vain.add(reach);
                return;
            }
            trial = after;
            coverage = later;
        } catch (Refusal mayNotTurn) {
            vain.add(reach);
            return;
        }
        entries.add(said);
        long length = Math.abs(Steps.floor(way)) + Steps.ceil(sweep);
        turning += reach.drawn() ? 0 : length;
        drawing += reach.drawn() ? length : 0;
        moves.add(new Move(
                gap.row(),
                view,
                reach.station(),
                seated,
                Steps.degrees(Steps.floor(way)),
                Steps.degrees(Steps.floor(from.wrapped())),
                Steps.degrees(Steps.floor(turn)),
                reach.drawn(),
                now.engine().zonings().get(gap.row().id()).all(),
                List.of(new Move.Closing(gap.airfoils().stream().sorted().toList(), reach.zones()))));
    }

    /** The next angle below that can be read off in tenths of a degree. */
    private static Turn tenths(Turn angle) {
        long tenth = Circle.TICKS_PER_DEGREE / 10;
        return Turn.ofTicks(Math.floorDiv(angle.floorTicks(), tenth) * tenth);
    }

    private static double seen(Coverage coverage, Row row) {
        RowCoverage of = coverage.row(row.id());
        return of.areas(of.zoning().all()).seen();
    }

    /** What seats the scope tip there, watching everything; nothing if it sits there. */
    private List<Entry> seating(View view, Optional<String> station) {
        List<Entry> said = new ArrayList<>();
        Optional<Seat> seat = trial.situation().seat().filter(in -> in.view().equals(view));
        Optional<String> first = view.stations().stream().findFirst().map(Station::id);
        boolean all = seat.filter(in -> in.watching()
                        .equals(trial.situation()
                                .engine()
                                .zonings()
                                .get(view.row())
                                .all()))
                .isPresent();
        Optional<String> at = all ? seat.get().station().map(Station::id) : first;
        if (!all) {
            said.add(new Entry.View(new Said<>(view.id(), 1), Optional.empty()));
        }
        if (!at.equals(station)) {
            station.ifPresent(id -> said.add(new Entry.At(new Said<>(id, 1))));
        }
        return said;
    }

    /** By how much a planned stop may be off: what the row's place is good to, and the play of two moves. */
    private static Turn doubt(Situation now, Row row, Optional<Spool> spool) {
        Place place =
                now.placing(row).at(row.id(), row.rock(), now.stop(row)).place().orElseThrow();
        double play = spool.map(turned -> {
                    var pad = now.padOf(turned);
                    return 2 * (pad.play() + pad.backlash() + pad.drift());
                })
                .orElse(0.0);
        return Turn.ofDegrees(place.high().minus(place.low()).degrees() / 2 + play);
    }

    /** The shorter way of those that the pad allows. */
    private static Turn shortest(Turn difference, Situation now, Optional<Spool> spool) {
        Set<Direction> ways = Footing.ways(now, spool);
        Turn clockwise = difference.wrapped();
        Turn other = clockwise.minus(Turn.FULL);
        if (!ways.contains(Direction.CCW)) {
            return clockwise;
        }
        boolean shorter = clockwise.compareTo(other.negated()) <= 0;
        return ways.contains(Direction.CW) && shorter || clockwise.signum() == 0 ? clockwise : other;
    }
}
