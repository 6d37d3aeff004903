package everyblade.window.view;

import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.fact.Fact;
import everyblade.practice.account.Burst;
import everyblade.practice.account.Glance;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Hands.Moved;
import everyblade.practice.drill.Hands.Outcome;
import everyblade.practice.drill.Hands.Struck;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.TipTrack.Event;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.practice.drill.TipTrack.TipLost;
import everyblade.practice.drill.TipTrack.ToldOf;
import everyblade.practice.drill.Truth;
import everyblade.practice.drill.TurningTool;
import everyblade.practice.drill.TurningTool.Turned;
import everyblade.session.JobState;
import everyblade.session.around.Failure;
import everyblade.session.drill.DrillRecord;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A drill going on: where the scope tip and the rotors are. Hands move them; entries seat the scope tip, as they do in the
 * record. For one thread.
 */
public final class Practising {

    /** Samples of what stands still come so far apart, that replays know that somebody was there; milliseconds. */
    private static final long IDLE = 500;

    /** The same of what moves. */
    private static final long MOVING = 75;

    /** Hands that have not turned for so long have let the tool go, milliseconds. */
    private static final long LET_GO = 300;

    private final DrillRecord drill;
    private final Truth truth;
    private final Mockup mockup;
    private final Hands hands;
    private final List<Sample> unsaved = new ArrayList<>();
    private Map<String, Double> shafts;
    private final Map<String, TurningTool> tools = new HashMap<>();
    private final Map<String, Double> zeroes = new HashMap<>();
    private Situation situation;
    private int entries;
    private long lastTurn;
    private Optional<Moment> moment = Optional.empty();
    private Optional<Seat> seat = Optional.empty();
    private Optional<String> struck = Optional.empty();
    private boolean stopped;
    private Optional<Fact> oneWay = Optional.empty();
    private long millis;
    private long lastSample;
    private boolean unsampled;

    /**
     * Goes on with a drill where its track ends.
     *
     * @throws Failure if its engine gives no surface
     */
    public Practising(DrillRecord drill, Truth truth) {
        this.drill = drill;
        this.situation = drill.job().fold().situation();
        this.truth = truth;
        try {
            mockup = new Mockup(
                    drill.scene(),
                    truth.harms(),
                    truth.standing(),
                    truth.recipe().grime());
            hands = new Hands(drill.scene(), mockup);
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.noSurface", drill.path(), unusable.told());
        }
        List<Sample> before = drill.folder().track().samples();
        Optional<Sample> last = before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
        shafts = last.map(sample -> sample.moment().shafts()).orElse(Map.of());
        millis = last.map(Sample::millis).orElse(0L);
        lastSample = millis;
        last.ifPresent(sample -> sample.tools().forEach((spool, reads) -> tools.put(spool, fresh(spool, reads))));
    }

    public DrillRecord drill() {
        return drill;
    }

    public Truth truth() {
        return truth;
    }

    /** Answers to what is called and what goes by, going on where the track ends. */
    public Burst burst() {
        return new Burst(truth, drill.folder().track().told().keySet());
    }

    /** Tells what is in the picture at a moment. */
    public Glance glance() {
        return new Glance(mockup, hands, truth.harms());
    }

    /** What is seen of the engine; made of moments, on any thread. */
    public ScopeEye eye() {
        return new ScopeEye(drill, mockup, hands, truth);
    }

    /** Follows the record: seats the scope tip where the last entries say. */
    public void follow(JobState state) {
        situation = state.situation();
        boolean said = state.fold().entries().size() != entries;
        entries = state.fold().entries().size();
        Optional<Seat> now = state.seat().filter(at -> at.station().isPresent());
        boolean same = now.map(Practising::seating).equals(seat.map(Practising::seating));
        seat = now;
        if (!same) {
            struck = Optional.empty();
            stopped = false;
            moment = now.map(at ->
                    hands.seated(at.view().id(), at.station().orElseThrow().id(), shafts));
        }
        if (!same || said) {
            sample();
        }
    }

    private static String seating(Seat seat) {
        return seat.view().id() + " " + seat.station().orElseThrow().id() + " " + seat.placement();
    }

    /**
     * Moves as long as hands do.
     *
     * @param motions that go on
     * @param seconds for which
     * @param speed 1 as usual
     * @return whether anything has moved, or could not
     */
    public boolean move(Iterable<Motion> motions, double seconds, double speed) {
        boolean changed = false;
        for (Motion motion : motions) {
            changed |= move(motion, motion.rate() * seconds * speed);
        }
        return changed;
    }

    /**
     * Moves once.
     *
     * @param amount mm, degrees, or pitches of the row in view
     */
    public boolean move(Motion motion, double amount) {
        if (moment.isEmpty()) {
            return false;
        }
        Moment before = moment.get();
        Outcome outcome = isTurning(motion)
                ? turn(before, motion == Motion.CLOCKWISE ? amount : -amount)
                : hands.move(before, motion.of(before.tip(), amount));
        boolean wasStopped = stopped;
        stopped = outcome instanceof Hands.Stopped;
        oneWay = oneWay.filter(why -> stopped && isTurning(motion));
        if (outcome instanceof Moved moved) {
            moment = Optional.of(moved.moment());
            shafts = moved.moment().shafts();
            unsampled = true;
        } else if (outcome instanceof Struck by) {
            struck = Optional.of(by.row());
            happened(new TipLost(by.row()));
            moment = Optional.empty();
        }
        return !stopped || !wasStopped;
    }

    /** Straightens the bending part, if there is room. */
    public boolean straighten() {
        if (moment.isPresent() && hands.move(moment.get(), moment.get().tip().straight()) instanceof Moved moved) {
            moment = Optional.of(moved.moment());
            unsampled = true;
            return true;
        }
        return false;
    }

    private static boolean isTurning(Motion motion) {
        return motion == Motion.CLOCKWISE || motion == Motion.ANTICLOCKWISE;
    }

    private Outcome turn(Moment from, double pitches) {
        Row row = seat.orElseThrow().row();
        double degrees = pitches * Engine.pitch(row);
        if (row.kind() != RowKind.ROTOR) {
            return hands.move(from, from.tip().fed(degrees));
        }
        Spool turning = spool(row.spool().orElseThrow());
        oneWay = situation.oneWay(turning, degrees > 0 ? Direction.CW : Direction.CCW);
        if (oneWay.isPresent()) {
            return new Hands.Stopped();
        }
        String spool = turning.id();
        Turned turned = tool(spool).turn(situation.padOf(turning), degrees);
        Outcome outcome = turned.shaft() == 0 ? new Moved(from) : hands.turn(from, spool, turned.shaft());
        if (outcome instanceof Moved) {
            tools.put(spool, turned.tool());
            lastTurn = millis;
        }
        return outcome;
    }

    /** What errors a tool makes follows from the truth, and from how often it was turned before. */
    private TurningTool tool(String spool) {
        return tools.computeIfAbsent(spool, id -> fresh(id, 0));
    }

    private TurningTool fresh(String spool, double reads) {
        return TurningTool.at(truth.seed() + spool.hashCode() + entries, reads);
    }

    private Spool spool(String id) {
        return situation.engine().model().spools().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Rotors whose tools were let go may roll back. */
    private void letGo() {
        for (String spool : List.copyOf(tools.keySet())) {
            Turned rest = tools.get(spool).rest(situation.padOf(spool(spool)));
            tools.put(spool, rest.tool());
            if (rest.shaft() != 0
                    && moment.isPresent()
                    && hands.turn(moment.get(), spool, rest.shaft()) instanceof Moved moved) {
                moment = Optional.of(moved.moment());
                shafts = moved.moment().shafts();
                unsampled = true;
            }
        }
    }

    /**
     * So much time has passed; keeps account of it.
     *
     * @return whether anything has moved by itself
     */
    public boolean passed(long more) {
        millis += more;
        Optional<Moment> before = moment;
        if (millis - lastTurn > LET_GO) {
            letGo();
        }
        long since = millis - lastSample;
        if (moment.isPresent() && (since >= IDLE || unsampled && since >= MOVING)) {
            sample();
        }
        return !moment.equals(before);
    }

    private void sample() {
        moment.ifPresent(now -> unsaved.add(new Sample(millis, now, entries, Optional.empty(), reading())));
        lastSample = millis;
        unsampled = false;
    }

    private void happened(Event event) {
        moment.ifPresent(now -> unsaved.add(new Sample(millis, now, entries, Optional.of(event), reading())));
    }

    /** The trainee is told of damage that has gone by. */
    public void told(int harm) {
        happened(new ToldOf(harm));
    }

    /** What is not yet in the track. */
    public List<Sample> take() {
        if (unsampled) {
            sample();
        }
        List<Sample> taken = List.copyOf(unsaved);
        unsaved.clear();
        return taken;
    }

    /** Where everything is; empty while the scope tip is nowhere. */
    public Optional<Moment> moment() {
        return moment;
    }

    /** The row whose blades have taken the tip off, until it is seated anew. */
    public Optional<String> struck() {
        return struck;
    }

    /** Whether the last movement was stopped by metal. */
    public boolean stopped() {
        return stopped;
    }

    /** Why the pad in use does not turn the shaft the way that hands last tried; empty if they did something else. */
    public Optional<Fact> oneWay() {
        return oneWay;
    }

    /** What each tool was turned since it was last set to zero, degrees of its shaft. */
    private Map<String, Double> reading() {
        Map<String, Double> reading = new HashMap<>();
        tools.forEach((spool, tool) -> reading.put(spool, tool.reads() - zeroes.getOrDefault(spool, 0.0)));
        return reading;
    }

    /** The tool's turns since they were last set to zero, at the pad in use; empty where the row in view stands still. */
    public Optional<Double> toolTurns(JobState state) {
        return spool(state)
                .map(spool -> (tool(spool.id()).reads() - zeroes.getOrDefault(spool.id(), 0.0))
                        / 360
                        * state.situation().padOf(spool).ratio().denominator()
                        / state.situation().padOf(spool).ratio().numerator());
    }

    /** Counts the tool's turns from here. */
    public void zero(JobState state) {
        spool(state).ifPresent(spool -> zeroes.put(spool.id(), tool(spool.id()).reads()));
    }

    private Optional<Spool> spool(JobState state) {
        return seat.flatMap(at -> state.situation().engine().spool(at.row()));
    }
}
