package everyblade.window;

import everyblade.window.author.AuthorKey;
import everyblade.window.view.ReviewKey;
import everyblade.window.view.Shortcut;
import everyblade.words.Words;
import java.awt.Component;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Every key on one sheet. */
final class KeySheet {

    private final Words words;

    KeySheet(Words words) {
        this.words = words;
    }

    void show(Component parent, JComponent sheet) {
        JOptionPane.showMessageDialog(parent, sheet, words.say("key.keys"), JOptionPane.PLAIN_MESSAGE);
    }

    JComponent component() {
        JPanel sheet = sheet();
        for (Shortcut.Place place : Shortcut.Place.values()) {
            sheet.add(
                    Texts.bold(Texts.label(words.say("place." + place.name().toLowerCase(Locale.ROOT))), 1.1f),
                    "span 4, gaptop 6");
            int count = 0;
            for (Shortcut shortcut : Shortcut.values()) {
                if (shortcut.place() == place) {
                    add(sheet, shortcut.keys(), shortcut.words());
                    count++;
                }
            }
            if (count % 2 == 1) {
                sheet.add(Texts.label(""), "span 2");
            }
        }
        return sheet;
    }

    /** Those of a model author's screen. */
    JComponent ofAuthor() {
        JPanel sheet = sheet();
        for (AuthorKey key : AuthorKey.values()) {
            add(sheet, key.keys(), key.words());
        }
        for (Shortcut shortcut : List.of(Shortcut.LOOK_DARK, Shortcut.KEYS)) {
            add(sheet, shortcut.keys(), shortcut.words());
        }
        return sheet;
    }

    /** Those of a reviewer's screen. */
    JComponent ofReview() {
        JPanel sheet = sheet();
        for (ReviewKey key : ReviewKey.values()) {
            add(sheet, key.keys(), key.words());
        }
        for (Shortcut shortcut : List.of(Shortcut.LOOK_DARK, Shortcut.DENSITY, Shortcut.KEYS)) {
            add(sheet, shortcut.keys(), shortcut.words());
        }
        return sheet;
    }

    private static JPanel sheet() {
        return new JPanel(
                new MigLayout("insets 8, wrap 4", "[150!, fill]10[330!, fill]20[150!, fill]10[330!, fill]", "[]3[]"));
    }

    private void add(JPanel sheet, List<String> keys, String what) {
        String named = keys.stream().map(key -> KeyNames.of(key, words)).collect(Collectors.joining(" / "));
        Paragraph pressed = new Paragraph(1f);
        pressed.say(named);
        sheet.add(pressed, "wmin 0");
        sheet.add(new Paragraph(words.say(what)), "wmin 0");
    }
}
