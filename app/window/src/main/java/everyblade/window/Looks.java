package everyblade.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import everyblade.picture.scene.Colour;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.view.Choices;
import everyblade.window.view.Shortcut;
import java.awt.Color;
import java.awt.Font;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.InputMap;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/**
 * The look of the window: the inks of the map for everything else too, so that a colour means one thing on the whole
 * screen; and how large things are.
 */
final class Looks {

    /** What is asked most is to be read from a metre: units of the window, 96 to the inch. */
    private static final int FONT = 14;

    /** Where a style finds the colour of words of less weight. */
    static final String FAINT = "Everyblade.faint";

    /** 19 mm at 96 dots per inch. */
    static final int GLOVE_TARGET = 72;

    static final int USUAL_TARGET = 34;

    private static final double LARGE = 1.25;

    private static final double LETTERS_SHARE = 0.35;

    private Looks() {}

    /** The theme of these choices. */
    static Theme theme(Choices choices) {
        return choices.dark() ? Theme.DARK : Theme.LIGHT;
    }

    /** Makes all windows look so; those that are open too. */
    static void use(Choices choices) {
        Theme theme = theme(choices);
        FlatLaf.setGlobalExtraDefaults(Map.of(
                "@background",
                theme == Theme.LIGHT ? "#f1f3f5" : "#1a222b",
                "@foreground",
                theme.colour(Ink.LINE).hex(),
                "@accentColor",
                theme.colour(Ink.SEEN).hex(),
                "@componentBackground",
                theme.colour(Ink.PAPER).hex(),
                FAINT,
                theme.colour(Ink.FAINT).hex(),
                "TextField.placeholderForeground",
                theme.colour(Ink.FAINT).hex()));
        UIManager.put("defaultFont", null); // else what was chosen before passes for what the system wants
        if (choices.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        float text = choices.text() == Choices.AS_THE_SYSTEM ? UIScale.getUserScaleFactor() : choices.text() / 100f;
        Font font = UIManager.getFont("defaultFont");
        UIManager.put("defaultFont", font.deriveFont(text * FONT));
        UIManager.put("ToolTip.background", colour(theme, Ink.PAPER));
        leaveKeys();
        PlainText.install();
        FlatLaf.updateUI();
    }

    /** Lists, what scrolls them and what divides the window leave the keys of the window and of the map to it. */
    private static void leaveKeys() {
        for (String map : List.of("List.focusInputMap", "ScrollPane.ancestorInputMap", "SplitPane.ancestorInputMap")) {
            InputMap keys = (InputMap) UIManager.get(map);
            Stream<Shortcut> ofTheWindow =
                    Arrays.stream(Shortcut.values()).filter(one -> one.place() == Shortcut.Place.WINDOW);
            Stream.concat(ofTheWindow, JobScreen.OF_A_CELL.stream().map(Shortcut::of))
                    .flatMap(shortcut -> shortcut.keys().stream())
                    .forEach(key -> keys.remove(KeyStroke.getKeyStroke(key)));
        }
    }

    /** How much larger than usual letters are, and what a layout makes as wide and high as words need; from 1. */
    static double text() {
        return UIScale.getUserScaleFactor();
    }

    /** Whether letters are so large that words in rows of buttons must be short. */
    static boolean large() {
        return text() > LARGE;
    }

    /** So many units, larger as letters are. */
    static int scaled(int units) {
        return (int) Math.round(units * text());
    }

    /** Least size of a target for a hand, which does not grow with letters: units of the window, which a layout calls px. */
    static int target(Choices choices) {
        return choices.gloves() ? GLOVE_TARGET : USUAL_TARGET;
    }

    /** The colour of an ink for letters, which need more contrast than areas do. */
    static Color letters(Theme theme, Ink ink) {
        Colour of = theme.colour(ink);
        Colour line = theme.colour(Ink.LINE);
        return new Color(mixed(of.red(), line.red()), mixed(of.green(), line.green()), mixed(of.blue(), line.blue()));
    }

    private static int mixed(int of, int with) {
        return (int) Math.round(of + LETTERS_SHARE * (with - of));
    }

    static Color colour(Theme theme, Ink ink) {
        Colour colour = theme.colour(ink);
        return new Color(colour.red(), colour.green(), colour.blue());
    }
}
