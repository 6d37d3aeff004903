package everyblade.window;

import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Digits as large buttons, for whoever has no keyboard at hand. */
final class NumberPad {

    private static final List<String> KEYS =
            List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "0", ",", "±", "-", " ", "⌫");

    private final JPanel panel = new JPanel();
    private final Supplier<Choices> choices;
    private final EntryPanel entry;
    private final Words words;

    NumberPad(Words words, Supplier<Choices> choices, EntryPanel entry) {
        this.words = words;
        this.choices = choices;
        this.entry = entry;
        panel.setVisible(false);
        lay();
    }

    private void lay() {
        int target = Looks.target(choices.get());
        panel.removeAll();
        panel.setLayout(new MigLayout("insets 0, gap 4, fillx", "[grow, fill, sizegroup]"));
        for (String key : KEYS) {
            JButton button = Texts.button(key.equals(" ") ? "␣" : key);
            button.setName("digit " + key);
            Texts.leaveFocus(button);
            button.getAccessibleContext()
                    .setAccessibleName(
                            key.equals(" ")
                                    ? words.say("digit.space")
                                    : key.equals("⌫") ? words.say("digit.back") : key);
            button.addActionListener(pressed -> entry.key(key.equals("⌫") ? "" : key));
            panel.add(button, "wmin " + target + ", hmin " + target);
        }
        panel.revalidate();
    }

    JComponent component() {
        return panel;
    }

    boolean isShown() {
        return panel.isVisible();
    }

    /** Shows or hides the digits. */
    void toggle() {
        panel.setVisible(!panel.isVisible());
    }

    /** Lays the buttons out anew for hands with or without gloves. */
    void resize() {
        lay();
    }
}
