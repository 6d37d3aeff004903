package everyblade.window;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.session.JobState;
import everyblade.session.Keeping;
import everyblade.window.map.CellAt;
import everyblade.window.map.CellPanel;
import everyblade.window.view.Act;
import everyblade.window.view.Choices;
import everyblade.window.view.Shortcut;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Where everything is: the row in view as it stands now, which part of it is watched, what was kept last. */
final class ViewPanel {

    private static final int LAST = 6;
    /** Where letters are large, the wheel needs the room of the others. */
    private static final int LAST_LARGE = 3;

    private static final int GLOVES = 54;

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel panel = new Card(new MigLayout(
            "insets 6 10 6 10, fill, wrap, hidemode 3, gapy 3",
            "[0:0:, grow, fill]",
            Looks.large()
                    ? "[][grow, fill][][]4[][shrinkprio 200]"
                    : "[][grow, fill, shrinkprio 200][][][]6[][shrinkprio 150]"));
    private final CellPanel wheel = new CellPanel(ScreenKind.WHEEL);
    private final JLabel row = new JLabel();
    private final JLabel tip = new JLabel();
    private final JLabel pad = new JLabel();
    private final Map<Act, JToggleButton> watching = new EnumMap<>(Act.class);
    private final List<JLabel> last = new ArrayList<>();

    ViewPanel(Words words, Supplier<Choices> choices, Consumer<Act> act) {
        this.words = words;
        this.choices = choices;
        wheel.setName("wheel");
        wheel.speak(MapWords.of(words));
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[]push[]"));
        head.setOpaque(false);
        head.add(Texts.bold(row, 1.1f), "wmin 0");
        head.add(faint(words.say("where.inView")));
        panel.add(head, "wmin 0");
        panel.add(wheel, "grow, wmin 0, hmin 96");
        panel.add(Texts.bold(tip, 1), "wmin 0");
        if (!Looks.large()) { // else it is told with the place of the tip
            panel.add(pad, "wmin 0");
        }
        panel.add(watch(act), "wmin 0");
        panel.add(Texts.bold(Texts.label(words.say("where.lastKept")), 1));
        JPanel kept = new WholeLines();
        for (int i = 0; i < (Looks.large() ? LAST_LARGE : LAST); i++) {
            JLabel line = Texts.label(" ");
            line.setName("kept " + i);
            last.add(line);
            kept.add(line);
        }
        panel.add(kept, "wmin 0");
        restyle();
    }

    private static JLabel faint(String text) {
        return Texts.faint(Texts.label(text));
    }

    /** Which part is watched, as one switch. */
    private JComponent watch(Consumer<Act> act) {
        JPanel one =
                new JPanel(new MigLayout("insets 0, fill, gap 4", "[grow, fill, sizegroup][grow, fill][grow, fill]"));
        one.setOpaque(false);
        for (Act part : List.of(Act.WATCH_ROOT, Act.WATCH_TIP, Act.WATCH_ALL)) {
            JToggleButton button = Texts.toggle("", false);
            button.setName("act " + part);
            button.setMargin(new java.awt.Insets(2, 2, 2, 2));
            Texts.leaveFocus(button);
            button.addActionListener(pressed -> {
                button.setSelected(!button.isSelected()); // what is watched shows once it is kept
                act.accept(part);
            });
            button.getAccessibleContext()
                    .setAccessibleDescription(words.say(Shortcut.of(part).words()));
            watching.put(part, button);
            one.add(button, "wmin 0, hmin " + (choices.get().gloves() ? GLOVES : Looks.USUAL_TARGET) + "px, sizegroup");
        }
        return one;
    }

    JComponent component() {
        return panel;
    }

    /** Tells of every cell that a person selects here. */
    void onSelect(Consumer<CellAt> listener) {
        wheel.onSelect(listener);
    }

    /** Shows what the next step would close. */
    void foresee(List<CellAt> cells) {
        wheel.foresee(cells);
    }

    void select(CellAt cell) {
        wheel.select(cell);
    }

    void show(Shown shown) {
        JobState state = shown.state();
        wheel.show(state.coverage());
        Texts.say(
                row,
                state.seat()
                        .map(seat -> seat.row().id() + " · " + seat.row().name())
                        .orElseGet(() -> words.say("where.name")));
        Texts.tip(row, row.getText());
        Texts.name(wheel, shown.where().rotor());
        watched(state);
        boolean switched = watching.values().stream().anyMatch(JToggleButton::isSelected);
        Texts.say(tip, switched ? shown.where().place() : shown.where().tip());
        Texts.tip(
                tip,
                Looks.large()
                        ? shown.where().tip() + " · " + shown.where().pad()
                        : shown.where().tip());
        Texts.say(pad, shown.where().pad().isBlank() ? " " : shown.where().pad());
        Texts.tip(
                pad,
                shown.where().pad().isBlank()
                        ? null
                        : shown.where().pad() + " · " + shown.where().padName());
        kept(state);
        panel.revalidate();
    }

    private void watched(JobState state) {
        Optional<Seat> seat = state.seat();
        Optional<Zoning> zoning = seat.map(
                inUse -> state.situation().engine().zonings().get(inUse.row().id()));
        List<String> spans = zoning.map(Zoning::spans).orElse(List.of());
        boolean divided = spans.size() > 1;
        show(Act.WATCH_ROOT, divided ? MapWords.of(words).zone(spans.get(0)) : words.say("watch.root"));
        show(Act.WATCH_TIP, divided ? MapWords.of(words).zone(spans.get(spans.size() - 1)) : words.say("watch.tip"));
        show(Act.WATCH_ALL, words.say("watch.all"));
        Optional<ZoneSet> now = seat.map(Seat::watching);
        mark(Act.WATCH_ALL, zoning.isPresent() && now.equals(zoning.map(Zoning::all)));
        mark(Act.WATCH_ROOT, divided && now.equals(zoning.map(of -> of.span(0))));
        mark(Act.WATCH_TIP, divided && now.equals(zoning.map(of -> of.span(spans.size() - 1))));
        watching.forEach((part, button) ->
                button.setEnabled(state.open() && seat.isPresent() && (divided || part == Act.WATCH_ALL)));
    }

    private void show(Act part, String name) {
        String key = KeyNames.of(Shortcut.of(part).keys().get(0), words);
        Texts.say(watching.get(part), Looks.large() ? name : name + "  " + key);
        Texts.tip(watching.get(part), words.say(Shortcut.of(part).words()) + " (" + key + ")");
    }

    private void mark(Act part, boolean on) {
        watching.get(part).setSelected(on);
    }

    private void kept(JobState state) {
        List<Logged> entries = state.fold().entries();
        int unsaved = state.keeping() instanceof Keeping.InMemory memory
                ? memory.unsaved().size()
                : 0;
        for (int i = 0; i < last.size(); i++) {
            int at = entries.size() - 1 - i;
            if (at < 0) {
                Texts.say(last.get(i), i == 0 ? words.say("where.nothingKept") : " ");
            } else {
                Logged logged = entries.get(at);
                String text = logged.number() + "  " + logged.text();
                String marked = state.fold().isVoid(logged.number()) ? words.say("log.isVoid", text) : text;
                Texts.say(last.get(i), i < unsaved ? words.say("log.unsaved", marked) : marked);
                Texts.tip(last.get(i), marked);
            }
        }
    }

    /** Shows all as was chosen. */
    void restyle() {
        Choices now = choices.get();
        wheel.letters(Looks.text());
        wheel.style(new MapStyle(
                Looks.theme(now), now.fromAhead() ? Facing.FORWARD_LOOKING_AFT : Facing.AFT_LOOKING_FORWARD));
    }
}
