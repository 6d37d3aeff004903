package everyblade.window;

import everyblade.window.view.Choices;
import everyblade.window.view.Replay;
import everyblade.window.view.ReplayClock;
import everyblade.window.view.ReplayFrame;
import everyblade.window.view.ReviewKey;
import everyblade.window.view.RotorPose;
import everyblade.window.view.TipSight;
import everyblade.words.Words;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/**
 * Plays how a record came about: a slider over its entries, speeds, step by step; the rotor and the scope tip move, and beside
 * them stands what the scope tip saw. States are worked out ahead; where that takes longer than showing them, it waits.
 */
final class ReplayBar {

    private static final int TICK_MILLIS = 16;
    private static final int AHEAD = 96;
    private static final int LEAST_AT_ONCE = 8;
    private static final int MOST_AT_ONCE = 48;
    private static final List<Integer> SPEEDS = List.of(1, 2, 4, 8, 16, 32, 64, 256);

    private final Words words;
    private final Door door;
    private final LongSupplier nanos;
    private final Consumer<ReplayFrame> show;
    private final RotorDial dial;
    private final TipView tip;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 4 10 6 10, fillx, hidemode 3", "[]6[]12[grow, fill]"));
    private final JSlider slider = new JSlider(0, 1, 1);
    private final Paragraph said = new Paragraph();
    private final JButton play = new JButton();
    private final JComboBox<String> speeds = new JComboBox<>();
    private final Timer timer = new Timer(TICK_MILLIS, due -> tick());

    private Replay replay;
    private ReplayClock clock = ReplayClock.atEnd(0);
    /** Worked out and following each other; the first one is shown. */
    private final Deque<ReplayFrame> ready = new ArrayDeque<>();

    private int asked;
    private boolean working;
    private boolean moving;
    private long before;

    /**
     * A bar without a record.
     *
     * @param nanos a clock that only goes on
     * @param show is given each state that is to be shown
     */
    ReplayBar(Words words, Supplier<Choices> choices, Door door, LongSupplier nanos, Consumer<ReplayFrame> show) {
        this.words = words;
        this.door = door;
        this.nanos = nanos;
        this.show = show;
        this.dial = new RotorDial(words, choices);
        this.tip = new TipView(words, door);
        panel.add(dial, "w 132!, h 132!, spany 3");
        panel.add(tip, "w 132!, h 132!, spany 3");
        said.setName("replay entry");
        panel.add(said, "wmin 0, hmin 40, wrap");
        slider.setName("replay");
        Texts.name(slider, words.say("review.slider"));
        slider.addChangeListener(change -> {
            if (!moving) {
                seek(slider.getValue());
            }
        });
        panel.add(slider, "growx, wrap");
        panel.add(buttons(), "wrap");
    }

    private JComponent buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 4"));
        button(buttons, ReviewKey.FIRST, "|◂", () -> seek(0));
        button(buttons, ReviewKey.BACK_ONE, "◂", this::back);
        play.setName("replay play");
        play.addActionListener(pressed -> turn());
        buttons.add(play, "wmin 110, hmin 32");
        button(buttons, ReviewKey.ON_ONE, "▸", this::on);
        button(buttons, ReviewKey.LAST, "▸|", () -> seek(clock.length()));
        SPEEDS.forEach(speed -> speeds.addItem(words.say("review.speed", speed)));
        speeds.setName("replay speed");
        speeds.setRenderer(new VisibleCells());
        Texts.name(speeds, words.say("review.speed.name"));
        speeds.setSelectedIndex(SPEEDS.indexOf((int) clock.speed()));
        speeds.addActionListener(chosen -> clock = clock.with(SPEEDS.get(speeds.getSelectedIndex())));
        buttons.add(speeds, "hmin 32");
        tell();
        return buttons;
    }

    private void button(JPanel buttons, ReviewKey key, String sign, Runnable action) {
        JButton button = Texts.button(sign);
        String told = words.say(key.words()) + " (" + KeyNames.of(key.keys().get(0), words) + ")";
        button.setName(key.words());
        Texts.tip(button, told);
        button.getAccessibleContext().setAccessibleName(told);
        button.addActionListener(pressed -> action.run());
        buttons.add(button, "w 44!, hmin 32");
    }

    JComponent component() {
        return panel;
    }

    ReplayClock clock() {
        return clock;
    }

    RotorDial dial() {
        return dial;
    }

    /** Opens a record at its end. */
    void open(Replay newReplay, TipSight sight) {
        replay = newReplay;
        tip.open(sight);
        clock = ReplayClock.atEnd(replay.length()).with(clock.speed());
        moving = true;
        slider.setMaximum(replay.length());
        moving = false;
        seek(replay.length());
    }

    /** Shows the record after so many entries, and stops there. */
    void seek(int entry) {
        timer.stop();
        clock = clock.to(entry);
        tell();
        int to = clock.entry();
        int mine = ++asked;
        working = true;
        door.latest("replay", () -> ReplayFrame.of(replay.at(to)), frame -> {
            if (mine == asked) {
                working = false;
                ready.clear();
                ready.add(frame);
                show(frame);
            }
        });
    }

    void back() {
        seek(clock.share() > 0 ? clock.entry() : clock.entry() - 1);
    }

    void on() {
        seek(clock.entry() + 1);
    }

    /** Plays, or stops. */
    void turn() {
        boolean again = !clock.playing() && clock.entry() >= clock.length();
        ReplayClock turned = clock.turned();
        if (again) {
            seek(0);
        }
        clock = turned;
        tell();
        if (clock.playing()) {
            before = nanos.getAsLong();
            timer.start();
        } else {
            timer.stop();
        }
    }

    /** @param entries in a second, one of those that are offered */
    void speed(int entries) {
        speeds.setSelectedIndex(SPEEDS.indexOf(entries));
    }

    void faster(int steps) {
        speeds.setSelectedIndex(Math.max(0, Math.min(SPEEDS.size() - 1, speeds.getSelectedIndex() + steps)));
    }

    /** One picture later. */
    void tick() {
        long now = nanos.getAsLong();
        double seconds = (now - before) / 1e9;
        before = now;
        if (ready.isEmpty()) {
            return;
        }
        clock = clock.later(seconds, ready.peekLast().entries());
        int first = ready.peekFirst().entries();
        while (ready.size() > 1 && second().orElseThrow().entries() <= clock.entry()) {
            ready.removeFirst();
        }
        if (ready.peekFirst().entries() != first) {
            show(ready.peekFirst());
        }
        dial.show(pose());
        if (!clock.playing()) {
            timer.stop();
            tell();
        }
        workAhead();
    }

    private Optional<ReplayFrame> second() {
        return ready.stream().skip(1).findFirst();
    }

    /** Where rotor and scope tip are on their way from the state that is shown to the next one. */
    private Optional<RotorPose> pose() {
        ReplayFrame here = ready.peekFirst();
        Optional<ReplayFrame> next = second();
        Optional<RotorPose> there = next.flatMap(ReplayFrame::pose);
        if (here.pose().isEmpty() || there.isEmpty()) {
            return here.pose();
        }
        double share = (clock.at() - here.entries()) / (next.get().entries() - here.entries());
        return Optional.of(here.pose().get().towards(there.get(), Math.max(0, Math.min(1, share))));
    }

    private void workAhead() {
        int last = ready.peekLast().entries();
        if (working || ready.size() > AHEAD || last >= clock.length()) {
            return;
        }
        working = true;
        int mine = ++asked;
        int stride = clock.stride();
        int count = Math.max(LEAST_AT_ONCE, Math.min(MOST_AT_ONCE, ready.size()));
        door.latest(
                "replay",
                () -> replay.after(last, count, stride).stream()
                        .map(ReplayFrame::of)
                        .toList(),
                frames -> {
                    if (mine == asked) {
                        working = false;
                        ready.addAll(frames);
                    }
                });
    }

    private void show(ReplayFrame frame) {
        moving = true;
        slider.setValue(frame.entries());
        moving = false;
        said.say(words(frame));
        show.accept(frame);
        dial.show(pose());
        tip.show(frame);
    }

    private String words(ReplayFrame frame) {
        return frame.state()
                .last()
                .map(last -> words.say(
                        "review.entry",
                        last.number(),
                        clock.length(),
                        last.text().isEmpty() ? words.say("review.entry.silent") : last.text(),
                        last.by(),
                        words.time(last.at(), ZoneId.systemDefault())))
                .orElseGet(() -> words.say("review.entry.none", clock.length()));
    }

    private void tell() {
        Texts.say(play, words.say(clock.playing() ? "review.pause" : "review.play"));
        String told = words.say(ReviewKey.PLAY.words()) + " ("
                + KeyNames.of(ReviewKey.PLAY.keys().get(0), words) + ")";
        Texts.tip(play, told);
        play.getAccessibleContext().setAccessibleDescription(told);
    }

    /** Plays no more. */
    void close() {
        timer.stop();
    }
}
