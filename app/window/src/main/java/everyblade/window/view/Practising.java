package everyblade.window.view;

import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Hands.Moved;
import everyblade.practice.drill.Hands.Outcome;
import everyblade.practice.drill.Hands.Struck;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.practice.drill.Truth;
import everyblade.session.JobState;
import everyblade.session.around.Failure;
import everyblade.session.drill.DrillRecord;
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

    private final DrillRecord drill;
    private final Truth truth;
    private final Mockup mockup;
    private final Hands hands;
    private final List<Sample> unsaved = new ArrayList<>();
    private Map<String, Double> shafts;
    private final Map<String, Double> zeroes = new HashMap<>();
    private Optional<Moment> moment = Optional.empty();
    private Optional<Seat> seat = Optional.empty();
    private Optional<String> struck = Optional.empty();
    private boolean stopped;
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
    }

    public DrillRecord drill() {
        return drill;
    }

    public Truth truth() {
        return truth;
    }

    /** What is seen of the engine; made of moments, on any thread. */
    public ScopeEye eye() {
        return new ScopeEye(drill, mockup, hands, truth);
    }

    /** Follows the record: seats the scope tip where the last entries say. */
    public void follow(JobState state) {
        Optional<Seat> now = state.seat().filter(at -> at.station().isPresent());
        boolean same = now.map(Practising::seating).equals(seat.map(Practising::seating));
        seat = now;
        if (!same) {
            struck = Optional.empty();
            stopped = false;
            moment = now.map(at ->
                    hands.seated(at.view().id(), at.station().orElseThrow().id(), shafts));
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
        if (outcome instanceof Moved moved) {
            moment = Optional.of(moved.moment());
            shafts = moved.moment().shafts();
            unsampled = true;
        } else if (outcome instanceof Struck by) {
            struck = Optional.of(by.row());
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
        return row.kind() == RowKind.ROTOR
                ? hands.turn(from, row.spool().orElseThrow(), degrees)
                : hands.move(from, from.tip().fed(degrees));
    }

    /** So much time has passed; keeps account of it. */
    public void passed(long more) {
        millis += more;
        long since = millis - lastSample;
        if (moment.isPresent() && (since >= IDLE || unsampled && since >= MOVING)) {
            sample();
        }
    }

    private void sample() {
        moment.ifPresent(now -> unsaved.add(new Sample(millis, now)));
        lastSample = millis;
        unsampled = false;
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

    /** The seat of the scope tip, if it is seated. */
    public Optional<Seat> seat() {
        return seat;
    }

    /** The row whose blades have taken the tip off, until it is seated anew. */
    public Optional<String> struck() {
        return struck;
    }

    /** Whether the last movement was stopped by metal. */
    public boolean stopped() {
        return stopped;
    }

    /** The tool's turns since they were last set to zero, at the pad in use; empty where the row in view stands still. */
    public Optional<Double> toolTurns(JobState state) {
        return spool(state)
                .map(spool -> (shafts.getOrDefault(spool.id(), 0.0) - zeroes.getOrDefault(spool.id(), 0.0))
                        / 360
                        * state.situation().padOf(spool).ratio().denominator()
                        / state.situation().padOf(spool).ratio().numerator());
    }

    /** Counts the tool's turns from here. */
    public void zero(JobState state) {
        spool(state).ifPresent(spool -> zeroes.put(spool.id(), shafts.getOrDefault(spool.id(), 0.0)));
    }

    private Optional<Spool> spool(JobState state) {
        return seat.flatMap(at -> state.situation().engine().spool(at.row()));
    }
}
