package everyblade.window;

import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.session.JobState;
import everyblade.window.view.Motion;
import everyblade.window.view.Practising;
import everyblade.window.view.ScopeEye;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/**
 * A drill going on: what the scope tip sees, live, and beside it the screen of a job, where the same entries are made by the same
 * keys. The picture is made behind a door of its own, so that it goes on while an entry is kept.
 */
final class DrillScreen {

    private static final int TICK_MILLIS = 25;
    private static final int SAVE_TICKS = 80;
    private static final List<Integer> SIZES = List.of(640, 520, 400, 320);
    private static final double TOO_SLOW_MILLIS = 38;
    private static final double QUICK_MILLIS = 14;

    /** In a burst it is looked so often what is in the picture, milliseconds. */
    private static final long GLANCE_MILLIS = 250;

    private final Practising practising;
    private final JobScreen job;
    private final Door door;
    private final Door eyeDoor;
    private final Words words;
    private final InstantSource clock;
    private final ScopeEye eye;
    private final ScopePanel scope;
    private final ScopeHands hands;
    private final Paragraph where = new Paragraph();
    private final Optional<BurstTelling> burst;
    private final JButton end;
    private final Timer timer;
    private JobState state;
    private List<Finding> findings;
    private long sinceGlance;
    private boolean glancing;
    private boolean drawing;
    private boolean stale = true;
    private int size;
    private double took;
    private long last;
    private int ticks;

    /** @param ended is asked for when the person ends the drill */
    DrillScreen(
            Practising practising,
            JobScreen job,
            Door door,
            Door eyeDoor,
            Words words,
            InstantSource clock,
            Runnable ended) {
        this.practising = practising;
        this.job = job;
        this.door = door;
        this.eyeDoor = eyeDoor;
        this.words = words;
        this.clock = clock;
        this.eye = practising.eye();
        this.scope = new ScopePanel(words);
        this.hands = new ScopeHands(scope, clock, new AtScope());
        this.end = Texts.button(words.say("drill.end"));
        this.burst = practising.drill().drill().mode() == Drill.Mode.BURST
                ? Optional.of(new BurstTelling(practising, words))
                : Optional.empty();
        this.state = job.state();
        this.findings = Findings.of(state.fold());
        this.last = clock.millis();
        this.timer = new Timer(TICK_MILLIS, due -> tick());
        lay(ended);
        practising.follow(state);
    }

    private void lay(Runnable ended) {
        end.setName("drill.end");
        end.addActionListener(pressed -> ended.run());
        where.setName("drill.where");
        Drill drill = practising.drill().drill();
        JPanel left = new JPanel(new MigLayout("insets 6 8 6 4, fill, wrap", "[grow, fill]", "[][grow, fill][][]"));
        // In large letters the bar over it all has to tell the task; the picture needs the room.
        Paragraph task = new Paragraph(words.say("drill.banner", drill.title(), drill.task()));
        task.setVisible(!Looks.large());
        left.add(task, "wmin 0, hidemode 3");
        left.add(scope, "w 470px, h 470px, wmin 300px, hmin 240px");
        left.add(where, "wmin 0");
        left.add(end, "hmin 34");
        Texts.tip(scope, words.say("drill.keys"));
        job.inPlaceOfStages(left, this::shown);
        Keys.within(job.component(), "ctrl K", scope::requestFocusInWindow);
    }

    JComponent component() {
        return job.component();
    }

    ScopePanel scope() {
        return scope;
    }

    /** Begins to move and to draw. */
    void start() {
        last = clock.millis();
        timer.start();
    }

    /** Stops, and keeps what is left of the track. */
    void stop() {
        timer.stop();
        save();
    }

    /** One step of time; the timer makes them. */
    void tick() {
        long now = clock.millis();
        long passed = Math.min(250, now - last);
        last = now;
        List<Motion> going = hands.going();
        if (!going.isEmpty()) {
            stale |= practising.move(going, passed / 1000.0, hands.speed());
        }
        stale |= practising.passed(passed);
        burst.ifPresent(answers -> glance(answers, passed));
        if (++ticks % SAVE_TICKS == 0) {
            save();
        }
        draw();
        tell();
    }

    /** Looks now and then what is in the picture, and tells what has gone by without a call. */
    private void glance(BurstTelling answers, long passed) {
        Optional<Moment> moment = practising.moment();
        sinceGlance = moment.isPresent() ? sinceGlance + passed : 0;
        if (sinceGlance >= GLANCE_MILLIS && moment.isPresent() && !glancing) {
            double stood = sinceGlance / 1000.0;
            sinceGlance = 0;
            glancing = true;
            eyeDoor.run("", () -> answers.look(moment.get()), seen -> {
                glancing = false;
                List<String> passing = answers.saw(seen, stood, findings);
                if (!passing.isEmpty()) {
                    job.tell(passing);
                }
            });
        }
    }

    private void draw() {
        Optional<Moment> moment = practising.moment();
        if (moment.isEmpty()) {
            scope.dark();
        } else if (stale && !drawing) {
            stale = false;
            drawing = true;
            long from = System.nanoTime();
            int most = SIZES.get(size);
            eyeDoor.run("", () -> eye.shot(moment.get(), most), shot -> {
                drawing = false;
                scope.show(shot);
                adapt((System.nanoTime() - from) / 1e6);
            });
        }
    }

    /** Smaller pictures where the machine is slow, larger ones again where it is not. */
    private void adapt(double millis) {
        took += 0.2 * (millis - took);
        if (took > TOO_SLOW_MILLIS && size + 1 < SIZES.size()) {
            size++;
            took = (TOO_SLOW_MILLIS + QUICK_MILLIS) / 2;
        } else if (took < QUICK_MILLIS && size > 0) {
            size--;
            took = (TOO_SLOW_MILLIS + QUICK_MILLIS) / 2;
        }
    }

    private void tell() {
        if (practising.struck().isPresent()) {
            scope.tell(words.say("drill.struck", practising.struck().get()));
        } else if (practising.moment().isEmpty()) {
            scope.tell(words.say(
                            "drill.seat",
                            String.join(" ", practising.drill().drill().views()))
                    + "\n\n" + words.say("drill.keys"));
        } else {
            scope.tell(
                    practising.oneWay().map(words::say).orElse(practising.stopped() ? words.say("drill.stopped") : ""));
        }
        where.say(practising.moment().map(this::where).orElse(""));
    }

    private String where(Moment moment) {
        String tip = words.say(
                "drill.where",
                moment.tip().view(),
                moment.tip().station(),
                words.signed(moment.tip().push(), 1),
                words.signed(moment.tip().up(), 0),
                words.signed(moment.tip().right(), 0),
                words.signed(moment.tip().roll(), 0));
        return practising
                        .toolTurns(state)
                        .map(turns -> words.say("drill.tool", words.signed(turns, 2)))
                        .orElseGet(() -> words.say(
                                "drill.round", words.signed(moment.tip().round(), 1)))
                + "\n" + tip;
    }

    private void save() {
        List<Sample> samples = practising.take();
        if (!samples.isEmpty()) {
            door.run(
                    words.say("wait.entry"),
                    () -> practising.drill().folder().add(samples),
                    problem -> problem.map(words::say).ifPresent(message -> job.tell(List.of(message))));
        }
    }

    private void shown(Shown shown) {
        state = shown.state();
        practising.follow(state);
        stale = true;
        List<Finding> now = Findings.of(state.fold());
        if (burst.isPresent() && now.size() > findings.size()) {
            job.tell(burst.get().called(eye.answer(now.get(now.size() - 1), words), now));
        }
        findings = now;
    }

    /** What hands on the picture do. */
    private final class AtScope implements ScopeHands.Moving {

        @Override
        public void once(Motion motion, double amount) {
            stale |= practising.move(motion, amount);
        }

        @Override
        public void straighten() {
            stale |= practising.straighten();
        }

        @Override
        public void zero() {
            practising.zero(state);
        }

        @Override
        public void leave() {
            job.entry().focus();
        }
    }
}
