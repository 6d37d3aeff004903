package everyblade.window;

import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.window.view.Act;
import everyblade.window.view.Choices;
import everyblade.window.view.Shortcut;
import everyblade.words.Words;
import java.awt.Component;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The acts as large buttons in groups (turned, counted, found, taken back), each with its key written on it. */
final class ActPanel {

    private static final List<List<Act>> GROUPS = List.of(
            List.of(Act.AGAIN, Act.ONE_ON, Act.ROUND, Act.LOOK),
            List.of(Act.HERE, Act.SLIP),
            List.of(Act.FIND, Act.RECHECK, Act.PHOTO),
            List.of(Act.UNDO, Act.REDO));

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel panel = new JPanel();
    private final Map<Act, JButton> buttons = new EnumMap<>(Act.class);
    private final JLabel filedOn = new JLabel();

    ActPanel(Words words, Supplier<Choices> choices, Consumer<Act> act) {
        this.words = words;
        this.choices = choices;
        GROUPS.forEach(group -> group.forEach(one -> {
            JButton button = new JButton();
            button.setName("act " + one);
            Texts.leaveFocus(button);
            button.setMargin(new java.awt.Insets(2, 2, 2, 2));
            button.addActionListener(pressed -> act.accept(one));
            buttons.put(one, button);
        }));
        lay();
    }

    private void lay() {
        int target = Looks.target(choices.get());
        panel.removeAll();
        panel.setLayout(new MigLayout("insets 0, gap 4, fillx", "", "[fill]"));
        for (List<Act> group : GROUPS) {
            for (Act act : group) {
                JButton button = buttons.get(act);
                letter(button, act);
                Texts.tip(button, words.say(Shortcut.of(act).words()));
                button.getAccessibleContext().setAccessibleName(words.say(name(act)));
                button.getAccessibleContext()
                        .setAccessibleDescription(words.say(Shortcut.of(act).words()));
                boolean begins = act == group.get(0) && group != GROUPS.get(0);
                panel.add(
                        button,
                        "growx, pushx, wmin " + target + "px, hmin " + target + "px"
                                + (begins ? ", gapbefore 16" : ""));
            }
        }
        panel.revalidate();
    }

    /** The name, and the shortest of its keys below. Plain labels: HTML in a button never rests. */
    private void letter(JButton button, Act act) {
        button.removeAll();
        button.setLayout(new MigLayout("insets 0, gap 0, wrap, fill", "[grow, center]", "push[]1[]0[]0[]push"));
        boolean high = choices.get().gloves();
        boolean low = act == Act.FIND && !high;
        JLabel sign = new JLabel(sign(act));
        if (high && !Looks.large()) {
            button.add(sign);
        }
        JLabel name = Texts.label(words.say(name(act)));
        name.putClientProperty("FlatLaf.style", Looks.large() ? "font: 82%" : null);
        button.add(name, act == Act.FIND && (low || !Looks.large()) ? "wmin 0, split 2, gapright 4" : "wmin 0");
        if (act == Act.FIND) {
            filedOn.setName("filed on");
            filedOn.putClientProperty("FlatLaf.style", "font: bold 85%");
            button.add(filedOn, "wmin 0");
        }
        String key = Shortcut.of(act).keys().stream()
                .map(one -> KeyNames.of(one, words))
                .min(Comparator.comparing(String::length))
                .orElseThrow();
        JLabel keyLabel = Texts.label(key);
        keyLabel.putClientProperty("FlatLaf.style", "font: 85%");
        if (!high && !Looks.large()) {
            button.add(sign, "split 2, gapright 4");
        }
        button.add(keyLabel);
    }

    private static ButtonSign sign(Act act) {
        return switch (act) {
            case AGAIN -> ButtonSign.AGAIN;
            case ONE_ON -> ButtonSign.ONE_ON;
            case ROUND -> ButtonSign.ROUND;
            case LOOK, WATCH_ROOT, WATCH_TIP, WATCH_ALL -> ButtonSign.LOOK;
            case HERE -> ButtonSign.HERE;
            case SLIP -> ButtonSign.SLIP;
            case FIND -> ButtonSign.FIND;
            case RECHECK -> ButtonSign.RECHECK;
            case PHOTO -> ButtonSign.PHOTO;
            case UNDO -> ButtonSign.UNDO;
            case REDO -> ButtonSign.REDO;
        };
    }

    private static String name(Act act) {
        return "act." + act.name().toLowerCase(Locale.ROOT);
    }

    JComponent component() {
        return panel;
    }

    void show(JobState state) {
        buttons.values().forEach(button -> {
            button.setEnabled(state.open());
            for (Component label : button.getComponents()) {
                label.setEnabled(state.open());
            }
        });
    }

    /** Names on its button what a finding is filed on: the selected cell's airfoil, else the row. */
    void fileOn(String row, Optional<CellAt> cell) {
        Texts.say(
                filedOn,
                words.say("act.on", row + cell.map(at -> " " + at.airfoil()).orElse("")));
    }

    /** Lays the buttons out anew for hands with or without gloves. */
    void resize() {
        lay();
    }
}
