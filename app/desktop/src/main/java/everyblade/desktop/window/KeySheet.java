package everyblade.desktop.window;

import everyblade.desktop.view.Shortcut;
import everyblade.desktop.words.Words;
import java.awt.Component;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Every key on one sheet. */
final class KeySheet {

    private final Words words;

    KeySheet(Words words) {
        this.words = words;
    }

    void show(Component parent) {
        JOptionPane.showMessageDialog(parent, component(), words.say("key.keys"), JOptionPane.PLAIN_MESSAGE);
    }

    JComponent component() {
        JPanel sheet = new JPanel(
                new MigLayout("insets 8, wrap 4", "[150!, fill]10[330!, fill]20[150!, fill]10[330!, fill]", "[]3[]"));
        for (Shortcut.Place place : Shortcut.Place.values()) {
            sheet.add(
                    Texts.bold(new JLabel(words.say("place." + place.name().toLowerCase(Locale.ROOT))), 1.1f),
                    "span 4, gaptop 6");
            int count = 0;
            for (Shortcut shortcut : Shortcut.values()) {
                if (shortcut.place() == place) {
                    String keys = shortcut.keys().stream()
                            .map(key -> KeyNames.of(key, words))
                            .collect(Collectors.joining(" / "));
                    Paragraph pressed = new Paragraph(1f);
                    pressed.say(keys);
                    sheet.add(pressed, "wmin 0");
                    sheet.add(new Paragraph(words.say(shortcut.words())), "wmin 0");
                    count++;
                }
            }
            if (count % 2 == 1) {
                sheet.add(new JLabel(""), "span 2");
            }
        }
        return sheet;
    }
}
