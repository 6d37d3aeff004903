package everyblade.desktop.window;

import everyblade.desktop.view.Act;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.Shortcut;
import everyblade.desktop.words.Words;
import java.awt.Component;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The acts as large buttons, each with its key written on it. */
final class ActPanel {

    private static final int LONGEST_LINE = 10;

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel panel = new JPanel();
    private final Map<Act, JButton> buttons = new EnumMap<>(Act.class);

    ActPanel(Words words, Supplier<Choices> choices, Consumer<Act> act) {
        this.words = words;
        this.choices = choices;
        for (Act one : Act.values()) {
            JButton button = new JButton();
            button.setName("act " + one);
            button.setFocusable(false);
            button.setMargin(new java.awt.Insets(2, 2, 2, 2));
            button.addActionListener(pressed -> act.accept(one));
            buttons.put(one, button);
        }
        lay();
    }

    private void lay() {
        int target = Looks.target(choices.get());
        panel.removeAll();
        panel.setLayout(new MigLayout("insets 0, gap 4, fillx", "[grow, fill, sizegroup]", "[fill]"));
        buttons.forEach((act, button) -> {
            letter(button, act);
            Texts.tip(button, words.say(Shortcut.of(act).words()));
            button.getAccessibleContext().setAccessibleName(words.say(name(act)));
            button.getAccessibleContext()
                    .setAccessibleDescription(words.say(Shortcut.of(act).words()));
            panel.add(button, "wmin " + target + ", hmin " + target);
        });
        panel.revalidate();
    }

    /** The name in one line or two, and the shortest of its keys below. Plain labels: HTML in a button never rests. */
    private void letter(JButton button, Act act) {
        button.removeAll();
        button.setLayout(new MigLayout("insets 0, gap 0, wrap, fill", "[grow, center]", "push[]0[]0[]push"));
        String name = words.say(name(act));
        int space = name.length() > LONGEST_LINE ? name.lastIndexOf(' ') : -1;
        if (space > 0) {
            button.add(Texts.label(name.substring(0, space)));
        }
        button.add(Texts.label(name.substring(space + 1)));
        String key = Shortcut.of(act).keys().stream()
                .map(one -> KeyNames.of(one, words))
                .min(Comparator.comparing(String::length))
                .orElseThrow();
        JLabel keyLabel = Texts.label(key);
        keyLabel.putClientProperty("FlatLaf.style", "font: 85%");
        button.add(keyLabel);
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

    /** Lays the buttons out anew for hands with or without gloves. */
    void resize() {
        lay();
    }
}
