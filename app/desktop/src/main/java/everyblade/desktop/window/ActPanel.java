package everyblade.desktop.window;

import everyblade.desktop.view.Act;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.Shortcut;
import everyblade.desktop.words.Words;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The acts as large buttons, each with its key written on it. */
final class ActPanel {

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
        panel.setLayout(new MigLayout("insets 0, gap 4, fillx", "[grow, fill, sizegroup]"));
        buttons.forEach((act, button) -> {
            button.setText(label(act));
            button.setToolTipText(words.say(Shortcut.of(act).words()));
            button.getAccessibleContext().setAccessibleName(words.say(name(act)));
            button.getAccessibleContext()
                    .setAccessibleDescription(words.say(Shortcut.of(act).words()));
            panel.add(button, "wmin " + target + ", hmin " + target);
        });
        panel.revalidate();
    }

    private String label(Act act) {
        return "<html><center>" + Texts.escaped(words.say(name(act))) + "<br><small>"
                + Texts.escaped(KeyNames.of(Shortcut.of(act).keys().get(0), words)) + "</small></center></html>";
    }

    private static String name(Act act) {
        return "act." + act.name().toLowerCase(Locale.ROOT);
    }

    JComponent component() {
        return panel;
    }

    void show(JobState state) {
        buttons.values().forEach(button -> button.setEnabled(state.open()));
    }

    /** Lays the buttons out anew for hands with or without gloves. */
    void resize() {
        lay();
    }
}
