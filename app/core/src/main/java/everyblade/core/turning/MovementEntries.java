package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.fact.Fact;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Entries that turn a shaft or draw the scope tip round, watching or not. */
final class MovementEntries {

    static final Rules RULES = Rules.NONE
            .and(TurnEntry.Turn.class, MovementEntries::turn)
            .and(TurnEntry.Skip.class, MovementEntries::skip)
            .and(TurnEntry.Round.class, MovementEntries::round)
            .and(LookEntry.Look.class, MovementEntries::look)
            .and(TurnEntry.Draw.class, MovementEntries::draw)
            .and(
                    TurnEntry.Feed.class,
                    (moment, feed) -> new EntryEffect(drawn(moment.now(), moment.number(), feed.movement())));

    private MovementEntries() {}

    private static EntryEffect look(Moment moment, LookEntry.Look look) throws Refusal {
        Situation now = moment.now();
        Seat seat = ViewEntries.seat(now, 1);
        Watch watch = Watch.of(now, seat, look.through());
        int here = now.trackOf(seat.row()).here();
        return watched(watch.begun(now), moment.number(), watch, here, seconds(look, moment));
    }

    private static EntryEffect draw(Moment moment, TurnEntry.Draw draw) throws Refusal {
        Situation now = moment.now();
        Situation after = drawn(now, moment.number(), draw.movement());
        Seat seat = after.seat().orElseThrow();
        int from = now.trackOf(seat.row()).here();
        return watched(after, moment.number(), Watch.of(now, seat, Optional.empty()), from, seconds(draw, moment));
    }

    private static EntryEffect turn(Moment moment, TurnEntry.Turn turn) throws Refusal {
        Situation now = moment.now();
        Seat seat = ViewEntries.seat(now, turn.movement().column());
        refuseAmong(now);
        Watch watch = Watch.of(now, seat, turn.through());
        Spool spool = spool(now, turn.movement().column(), true);
        watch.refuseClose(now, seat, spool);
        int from = now.trackOf(seat.row()).here();
        Situation after = turned(watch.begun(now), moment.number(), spool, turn.movement());
        EntryEffect watched = watched(after, moment.number(), watch, from, seconds(turn, moment));
        List<Fact> warnings = new ArrayList<>(watched.warnings());
        warnings.addAll(Advice.onCount(now, watched.situation(), seat));
        return new EntryEffect(watched.situation(), warnings);
    }

    private static EntryEffect skip(Moment moment, TurnEntry.Skip skip) throws Refusal {
        Situation now = moment.now();
        refuseAmong(now);
        Spool spool = spool(now, skip.movement().column(), false);
        Situation after = turned(now, moment.number(), spool, skip.movement());
        return new EntryEffect(
                after,
                now.seat()
                        .<List<Fact>>map(seat -> List.copyOf(Advice.onWay(now, after, seat)))
                        .orElse(List.of()));
    }

    private static EntryEffect round(Moment moment, TurnEntry.Round round) throws Refusal {
        Situation now = moment.now();
        int number = moment.number();
        refuseAmong(now);
        Seat seat = ViewEntries.seat(now, round.airfoil().column());
        if (seat.row().kind() != RowKind.ROTOR) {
            throw new Refusal(1, new MoveProblem.StandsStill(seat.row().id()));
        }
        Spool spool = now.engine().spool(seat.row()).orElseThrow();
        Watch watch = Watch.of(now, seat, Optional.empty());
        Pad pad = now.padOf(spool);
        if (!pad.directions().contains(spool.normal())) {
            throw new Refusal(1, new MoveProblem.NoRound(pad.id(), spool.name(), spool.normal()));
        }
        // Its length is as well known as both ends together: an airfoil is seen at each of them.
        double aim = CountEntries.aim(now, seat, round.plusMinus());
        Uncertainty length = Uncertainty.of(Math.hypot(aim, aim));
        EntryEffect began = CountEntries.identified(now, number, seat.row(), round.airfoil(), round.plusMinus());
        Track track = began.situation().trackOf(seat.row());
        Turn full = spool.normal() == Direction.CW ? Turn.FULL : Turn.FULL.negated();
        Situation turned = began.situation().tracked(track.moved(number, full, length));
        EntryEffect ended = CountEntries.identified(turned, number, seat.row(), round.airfoil(), round.plusMinus());
        EntryEffect watched = watched(ended.situation(), number, watch, track.here(), seconds(round, moment));
        List<Fact> warnings = new ArrayList<>(began.warnings());
        further(seat, pad, aim, watched.situation().runs()).ifPresent(warnings::add);
        return new EntryEffect(watched.situation(), warnings);
    }

    /**
     * How much further to turn until what passes where a round began and ended has surely come into the window too. Where
     * what is in sight is computed, it mostly is for longer than a round's length may be off, and coverage tells of the rest.
     */
    private static Optional<CountWarning> further(Seat seat, Pad pad, double aim, int run) {
        if (seat.view().window().isEmpty() || !seat.view().stations().isEmpty()) {
            return Optional.empty();
        }
        double room = 2 * (seat.view().window().get().halfWidth() - seat.row().rock());
        double wider = SmoothedTrack.widening(run);
        if (wider * Math.hypot(aim, aim) <= room) {
            return Optional.empty();
        }
        double off = wider * (Math.sqrt(2 * aim * aim + pad.play() * pad.play()) + pad.drift());
        double further = Math.ceil(10 * (off - room)) / 10;
        return Optional.of(new CountWarning.RoundTooShort(aim, String.format(Locale.ROOT, "%.1f", further)));
    }

    private static Situation turned(Situation now, int number, Spool spool, Said<Movement> movement) throws Refusal {
        Track track = now.tracks().get("spool " + spool.id());
        Optional<Row> inView = now.seat().map(Seat::row);
        return now.tracked(
                Moves.ofShaft(movement, spool, now.padOf(spool), inView, track).on(track, number));
    }

    /** The scope tip moved clockwise is the row moved counter-clockwise. */
    private static Situation drawn(Situation now, int number, Said<Movement> movement) throws Refusal {
        Seat seat = ViewEntries.seat(now, movement.column());
        if (seat.row().kind() == RowKind.ROTOR) {
            throw new Refusal(1, new MoveProblem.Turns(seat.row().id()));
        }
        Track track = now.trackOf(seat.row());
        Turn reference = Turn.ofTicks(seat.reference().tick()).minus(track.readingNow());
        Moves.Move move = Moves.ofScope(movement, seat.row(), reference.wrapped());
        return now.tracked(
                new Moves.Move(move.amount().negated(), move.error().reversed(), move.reading()).on(track, number));
    }

    private static EntryEffect watched(Situation now, int number, Watch watch, int from, OptionalDouble seconds) {
        Row row = watch.row();
        if (!watch.there()) {
            return new EntryEffect(
                    now,
                    new CountWarning.NotFromStation(watch.stance().stations().get(0)));
        }
        if (!now.counting(row)) {
            return new EntryEffect(now, new CountWarning.NoDatum(row.kind(), row.id()));
        }
        int to = now.trackOf(row).here();
        return new EntryEffect(now.watched(
                row, new Leg(number, watch.stance(), watch.placement(), watch.zones(), from, to, 0, seconds)));
    }

    /** The spool that a move turns. */
    private static Spool spool(Situation now, int column, boolean watching) throws Refusal {
        Optional<Spool> inView = now.seat().flatMap(seat -> now.engine().spool(seat.row()));
        if (inView.isPresent()) {
            return inView.get();
        }
        if (now.namedSpool().isPresent()) {
            return now.engine().model().spool(now.namedSpool().get()).orElseThrow();
        }
        if (!watching && now.engine().model().spools().size() == 1) {
            return now.engine().model().spools().get(0);
        }
        throw new Refusal(
                column,
                new MoveProblem.WhichShaft(
                        now.seat().isEmpty(),
                        now.engine().model().spools().stream()
                                .map(spool -> spool.pads().get(0).id())
                                .findFirst()));
    }

    private static void refuseAmong(Situation now) throws Refusal {
        if (now.among()) {
            throw new Refusal(1, MoveProblem.Flaw.AMONG_BLADES);
        }
    }

    /** As said, else at most the time since the entry before. */
    private static OptionalDouble seconds(Entry.Timed timed, Moment moment) {
        return timed.seconds().isPresent()
                ? OptionalDouble.of(timed.seconds().get().doubleValue())
                : moment.sinceBefore();
    }
}
