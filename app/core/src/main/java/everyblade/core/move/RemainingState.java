package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.SmoothedTrack.Stand;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where everything stands after the moves so far, followed through fold and coverage, and what is left then. */
record RemainingState(Trial trial, Coverage coverage) {

    private static final Turn STEP = Turn.ofFraction(1, 360);
    private static final double EXACT = 1e-6;

    Situation now() {
        return trial.situation();
    }

    /** The place of a row at which it surely stands; empty if a known airfoil must be seen first. */
    Optional<Place> place(Row row) {
        return place(now(), row);
    }

    private static Optional<Place> place(Situation now, Row row) {
        if (!now.counting(row)) {
            return Optional.empty();
        }
        Stand stand = now.placing(row).at(row.id(), row.rock(), now.stop(row)).widened(now.runs() + 1);
        double pitch = 360.0 / row.count();
        return stand.sure()
                ? stand.place().filter(place -> place.high().minus(place.low()).degrees() < pitch || row.count() == 1)
                : Optional.empty();
    }

    OptionalDouble clock(Row row) {
        return place(row)
                .map(place -> OptionalDouble.of(place.best().degrees()))
                .orElseGet(OptionalDouble::empty);
    }

    /** Where a row that stands still is from the scope tip as newly seated, if that is known. */
    OptionalDouble setBack(Row row) {
        return turns(row)
                ? OptionalDouble.empty()
                : place(row)
                        .map(place -> OptionalDouble.of(
                                place.best().minus(now().reading(row)).degrees()))
                        .orElseGet(OptionalDouble::empty);
    }

    /** Clock angle of airfoil 1 of a row that stands still, or of a rotor now; empty if nobody knows. */
    OptionalDouble setBackOrClock(Row row) {
        return turns(row) ? clock(row) : setBack(row);
    }

    static boolean turns(Row row) {
        return row.kind() == RowKind.ROTOR;
    }

    Optional<Spool> spool(Row row) {
        return now().engine().spool(row);
    }

    /** How entries move a row, or the scope tip round it, in the hands that do the job. */
    Steered steered(Row row) {
        return new Steered(
                spool(row), StatedError.of(trial.fold(), spool(row), spool(row).map(now()::padOf)));
    }

    /** The ways in which a row may be turned at the pad in use; a scope tip is drawn either way. */
    Set<Direction> ways(Row row) {
        Set<Direction> ways =
                spool(row).map(turned -> now().padOf(turned).directions()).orElse(EnumSet.allOf(Direction.class));
        // In one order, so that of two plans that are as good the same one is found each time.
        return EnumSet.copyOf(ways);
    }

    /** The way in which a row is turned where nothing speaks against it. */
    Direction usual(Row row) {
        Direction normal = spool(row).map(Spool::normal).orElse(Direction.CW);
        return ways(row).contains(normal) ? normal : normal.opposite();
    }

    /** Whether a whole turn before an option may be told by an airfoil that comes round again: that way, and told from those beside it. */
    boolean rounds(Row row, ViewOption option) {
        boolean thatWay =
                spool(row).filter(spool -> ways(row).contains(spool.normal())).isPresent();
        return thatWay && (row.count() == 1 || 2 * aim(row, option) < Engine.pitch(row));
    }

    /** How exactly an airfoil is put to the reference of an option, which it may rock about; ± degrees. */
    double aim(Row row, ViewOption option) {
        return now().engine().aim(option.view(), option.stationThere()) + row.rock();
    }

    /** Whether anybody may think that a row that turns with this one is where it was, so that an unsaid move would be a lie. */
    boolean anyKnown(Row row) {
        return turningWith(row).anyMatch(other -> stand(other).isPresent());
    }

    /** Whether something is left of a row that turns and is not known to stand anywhere: who looks for it breaks all counts. */
    boolean anyUnknown() {
        return now().engine().rows().values().stream()
                .filter(RemainingState::turns)
                .filter(row -> stand(row).isEmpty())
                .anyMatch(this::anyLeft);
    }

    /** Whether anything is left of a row that some view shows. */
    boolean anyLeft(Row row) {
        RowCoverage of = coverage.row(row.id());
        return IntStream.rangeClosed(1, row.count())
                .anyMatch(n -> !Gaps.within(of, n).isEmpty());
    }

    private Stream<Row> turningWith(Row row) {
        return now().engine().rows().values().stream()
                .filter(RemainingState::turns)
                .filter(other -> other.spool().equals(row.spool()));
    }

    /** Where airfoil 1 of a row most likely stands, however doubtful that is; empty if it may stand anywhere. */
    OptionalDouble likely(Row row) {
        return stand(row)
                .flatMap(Stand::place)
                .map(place -> OptionalDouble.of(place.best().degrees()))
                .orElseGet(OptionalDouble::empty);
    }

    private Optional<Stand> stand(Row row) {
        return stand(now(), row);
    }

    private static Optional<Stand> stand(Situation now, Row row) {
        return now.counting(row)
                ? Optional.of(now.placing(row).at(row.id(), row.rock(), now.stop(row)))
                        .filter(stand -> stand.place().isPresent())
                : Optional.empty();
    }

    /** The airfoil at the reference where it was counted by eye from one that was known. */
    OptionalInt countedByEye(Seat seat) {
        boolean closely = stand(seat.row())
                .filter(Stand::sure)
                .flatMap(Stand::place)
                .filter(place -> place.high().minus(place.low()).degrees()
                        <= 2 * (now().engine().aim(seat) + seat.row().rock()) + EXACT)
                .isPresent();
        return closely
                ? now().airfoilAtReference(seat).map(OptionalInt::of).orElseGet(OptionalInt::empty)
                : OptionalInt.empty();
    }

    /** The airfoil at the reference, if it stands so near to a landmark that it is told by it. */
    OptionalInt beside(Row row, int landmark) {
        OptionalInt there = now().seat().map(this::surelyThere).orElseGet(OptionalInt::empty);
        int apart = ToldBy.apart(row, there.orElse(landmark), landmark);
        return apart != 0 && apart <= ToldBy.BESIDE ? there : OptionalInt.empty();
    }

    /** The airfoil that stands at the reference, if it cannot be one beside it. */
    private OptionalInt surelyThere(Seat seat) {
        Row row = seat.row();
        double aim = now().engine().aim(seat) + row.rock();
        boolean sure = place(row)
                .filter(place -> place.high().minus(place.low()).degrees() / 2 + aim < Engine.pitch(row) / 2)
                .isPresent();
        OptionalInt likely = sure
                ? now().airfoilAtReference(seat).map(OptionalInt::of).orElseGet(OptionalInt::empty)
                : OptionalInt.empty();
        return likely.isPresent() && now().offReference(seat, likely.getAsInt()) <= aim + EXACT
                ? likely
                : OptionalInt.empty();
    }

    /** After entries that watch nothing; empty if one of them is refused. */
    Optional<RemainingState> following(List<Entry> entries) {
        try {
            return Optional.of(new RemainingState(trial.with(entries), coverage));
        } catch (Refusal notThisWay) {
            return Optional.empty();
        }
    }

    /**
     * What a planned move of a row may be off where it begins and where it ends: found by trying such moves, so that
     * whatever errors they have, plans allow for them.
     */
    Slack slack(Row row, ViewOption option) {
        try {
            Trial there = trial.with(new LookEntry.View(new Said<>(option.view().id(), 1), Optional.empty()));
            if (place(there.situation(), row).isEmpty()) {
                Said<Integer> known = new Said<>(
                        row.landmarks().stream()
                                .findFirst()
                                .map(everyblade.spi.Landmark::airfoil)
                                .orElse(1),
                        1);
                there = there.with(
                        new TurnEntry.Datum(new Said<>(row.id(), 1), known, Optional.empty(), Optional.empty()));
            }
            Slack slack = off(there.situation(), row, Optional.empty());
            Steered steered = steered(row);
            for (Direction way : ways(row)) {
                Turn reading = there.situation().reading(row);
                Turn there2 = Steps.turn(Steps.floor(reading)).plus(STEP.times(way.sign(), 1));
                Turn offset = stand(there.situation(), row)
                        .flatMap(Stand::place)
                        .orElseThrow()
                        .best()
                        .minus(reading);
                Trial moved = there.with(steered.unwatched(there2, there2.minus(reading)));
                slack = slack.or(off(moved.situation(), row, Optional.of(there2.plus(offset))));
                moved = moved.with(steered.watched(STEP.times(way.sign(), 1)));
                slack = slack.or(off(
                        moved.situation(), row, Optional.of(there2.plus(offset).plus(STEP.times(way.sign(), 1)))));
            }
            return slack;
        } catch (Refusal closed) {
            return Slack.NONE;
        }
    }

    private static Slack off(Situation now, Row row, Optional<Turn> meant) {
        Place place = now.placing(row)
                .at(row.id(), row.rock(), now.stop(row))
                .widened(now.runs() + 1)
                .place()
                .orElseThrow();
        Turn half = Turn.ofFraction(1, 2);
        double beyond = meant.map(angle -> angle.minus(place.best())
                        .plus(half)
                        .wrapped()
                        .minus(half)
                        .degrees())
                .orElse(0.0);
        return new Slack(
                Math.max(0, beyond + place.best().minus(place.low()).degrees()),
                Math.max(0, place.high().minus(place.best()).degrees() - beyond));
    }

    /** Where the scope tip is, as one of these options. */
    Optional<ViewOption> seated(List<ViewOption> options) {
        return options.stream().filter(option -> option.holds(now().seat())).findFirst();
    }

    Optional<String> port() {
        return now().seat().map(Seat::view).flatMap(everyblade.spi.View::port);
    }

    /** Whether a whole turn was the last that was done, whatever was found or noted since. */
    boolean turnedWhole() {
        List<Logged> entries = trial.fold().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i).entry();
            if (!said(entry)) {
                return entry instanceof TurnEntry.Round;
            }
        }
        return false;
    }

    private static boolean said(Entry entry) {
        return entry instanceof LookEntry.Heat
                || entry instanceof FindingEntry.Find
                || entry instanceof FindingEntry.Recheck
                || entry instanceof FindingEntry.Photo
                || entry instanceof RecordEntry.Note;
    }

    /** How much of a row was surely seen, as a share of its surface. */
    double seen(Row row) {
        return coverage.row(row.id())
                .areas(coverage.row(row.id()).zoning().all())
                .seen();
    }

    /** What of a row is closed in a later state that was open here. */
    List<Move.Closing> closed(Row row, RemainingState later) {
        Map<Integer, ZoneSet> byAirfoil = new TreeMap<>();
        for (int n = 1; n <= row.count(); n++) {
            ZoneSet closed = Gaps.within(coverage.row(row.id()), n)
                    .minus(Gaps.within(later.coverage().row(row.id()), n));
            if (!closed.isEmpty()) {
                byAirfoil.put(n, closed);
            }
        }
        Map<ZoneSet, List<Integer>> byZones = new LinkedHashMap<>();
        byAirfoil.forEach((airfoil, zones) ->
                byZones.computeIfAbsent(zones, key -> new ArrayList<>()).add(airfoil));
        return byZones.entrySet().stream()
                .map(same -> new Move.Closing(same.getValue(), same.getKey()))
                .toList();
    }
}
