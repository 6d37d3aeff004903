package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollBar;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What those hear who do not see the window, where keys reach, and what eyes can tell apart. */
class ReadOutTest extends WithAJob {

    /** WCAG 2.1, success criteria 1.4.3 (words) and 1.4.11 (what shows the focus). */
    private static final double WORDS = 4.5;

    private static final double SIGNS = 3;

    @BeforeEach
    void goOn() {
        workshop.picture("a.png");
        List.of("turn on 60", "nick 3 tip 0.8", "photo a.png of 3 tip", "turn on 30", "here 9")
                .forEach(entry -> session.enter(entry, true, Workshop.ENGLISH));
    }

    private static AccessibleContext spoken(Offscreen screen, String name) {
        return ((Accessible) Offscreen.find(screen.screen().component(), JComponent.class, name))
                .getAccessibleContext();
    }

    @ParameterizedTest
    @CsvSource({"false,map", "true,map", "false,wheel", "true,wheel"})
    void ringsStripsAndWheelSayWhatTheyAreAndTheSelectedCellInWords(boolean strips, String name) {
        Offscreen screen = screen(Choices.first(Locale.ENGLISH).strips(strips));
        Offscreen.on(() -> {
            screen.screen().stages().select(new CellAt("r", 3, 1));
            Offscreen.find(screen.screen().component(), everyblade.window.map.CellPanel.class, "wheel")
                    .select(new CellAt("r", 3, 1));
            return true;
        });

        assertThat(spoken(screen, name).getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
        assertThat(spoken(screen, name).getAccessibleName()).isNotBlank();
        assertThat(spoken(screen, name).getAccessibleDescription())
                .startsWith("Selected: blade 3 of r, tip: ")
                .contains("damaged");
    }

    @Test
    void aPictureSaysWhichItIsAndWhatIsKnownOfIt() {
        Offscreen screen = screen();
        Offscreen.on(() -> {
            screen.screen().middle().turnPictures();
            return true;
        });

        AccessibleContext picture = spoken(screen, "picture");
        assertThat(picture.getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
        assertThat(picture.getAccessibleName()).isNotBlank();
        assertThat(picture.getAccessibleDescription()).contains("a.png");
    }

    @Test
    void everyLineOfTheRowsSaysItsRowItsShareAndHowFarItIs() {
        Offscreen screen = screen();
        List<String> lines = Offscreen.on(() -> {
            JList<?> rows = Offscreen.find(screen.screen().component(), JList.class, "rows");
            return Stream.iterate(0, at -> at < rows.getModel().getSize(), at -> at + 1)
                    .map(at -> rows.getAccessibleContext()
                            .getAccessibleChild(at)
                            .getAccessibleContext()
                            .getAccessibleName())
                    .toList();
        });

        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("Rotor (r), ").contains("%");
        assertThat(lines.get(1)).isEqualTo("Vanes (v), 0 %, not begun");
    }

    private static Stream<Component> shown(Container root) {
        return Offscreen.all(root).filter(ReadOutTest::isShown);
    }

    private static boolean isShown(Component one) {
        for (Component at = one; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return one.getWidth() > 0 && one.getHeight() > 0;
    }

    /** Those that a person presses, not the parts of a scroll bar or of a tab. */
    private static Stream<AbstractButton> buttons(Container root) {
        return shown(root)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(one -> SwingUtilities.getAncestorOfClass(JScrollBar.class, one) == null)
                .filter(one ->
                        SwingUtilities.getAncestorOfClass(JTabbedPane.class, one) == null || one.getName() != null)
                .filter(one -> one.getName() != null);
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 150})
    void everyButtonHasANameAndIsReachedByKeys(int text) {
        Offscreen screen = screen(Choices.first(Locale.ENGLISH).text(text));
        Offscreen.on(() -> {
            JComponent root = screen.screen().component();
            assertThat(buttons(root)).hasSizeGreaterThan(15).allSatisfy(button -> {
                assertThat(button.getAccessibleContext().getAccessibleName())
                        .as(button.getName())
                        .isNotBlank();
                assertThat(button.isFocusable()).as(button.getName()).isTrue();
            });
            return true;
        });
    }

    @Test
    void everythingThatTakesWordsOrChoicesHasAName() {
        Offscreen screen = screen();
        Offscreen.on(() -> {
            JComponent root = screen.screen().component();
            assertThat(shown(root)
                            .filter(one -> one instanceof JList
                                    || one instanceof JTabbedPane
                                    || one instanceof JTextComponent field && field.isEditable()))
                    .hasSizeGreaterThanOrEqualTo(3)
                    .allSatisfy(one -> assertThat(
                                    ((Accessible) one).getAccessibleContext().getAccessibleName())
                            .as("%s", one)
                            .isNotBlank());
            return true;
        });
    }

    @Test
    void pressingWithAPointerLeavesTheFocusInTheEntryLine() {
        Offscreen screen = screen();
        JButton look = Offscreen.find(screen.screen().component(), JButton.class, "act LOOK");

        assertThat(look.isRequestFocusEnabled()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"false,false", "true,false", "false,true", "true,true"})
    void wordsCanBeReadOnTheirGround(boolean dark, boolean strips) {
        Offscreen screen = screen(Choices.first(Locale.ENGLISH).dark(dark).strips(strips));
        Offscreen.on(() -> {
            JComponent root = screen.screen().component();
            Rehearsal.lay(root, new Dimension(1920, 1000));
            List<Component> words = shown(root)
                    .filter(one -> !words(one).isBlank())
                    .filter(Component::isEnabled)
                    .toList();
            assertThat(words)
                    .hasSizeGreaterThan(30)
                    .allSatisfy(one -> assertThat(contrast(one.getForeground(), ground(one)))
                            .as("%s on %s", one, ground(one))
                            .isGreaterThanOrEqualTo(WORDS));
            return true;
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whatHasTheFocusIsSeen(boolean dark) {
        Offscreen.on(() -> {
            Looks.use(Choices.first(Locale.ENGLISH).dark(dark));
            for (String frame : List.of(
                    "Component.focusedBorderColor", "Button.focusedBorderColor", "Button.default.focusedBorderColor")) {
                for (String ground : List.of("Panel.background", "List.background")) {
                    assertThat(contrast(UIManager.getColor(frame), UIManager.getColor(ground)))
                            .as(frame + " on " + ground)
                            .isGreaterThanOrEqualTo(SIGNS);
                }
            }
            return true;
        });
    }

    private static String words(Component one) {
        String text = one instanceof JLabel label
                ? label.getText()
                : one instanceof JTextArea area
                        ? area.getText()
                        : one instanceof AbstractButton button ? button.getText() : "";
        return text == null ? "" : text;
    }

    /** What lies under the words of a component. */
    private static Color ground(Component words) {
        if (words instanceof AbstractButton button && button.isSelected()) {
            return UIManager.getColor("ToggleButton.selectedBackground");
        }
        for (Component at = words; at != null; at = at.getParent()) {
            if (at.isOpaque() || at instanceof AbstractButton) {
                return at.getBackground();
            }
        }
        throw new AssertionError("nothing lies under " + words);
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** Relative luminance as WCAG 2.1 defines it. */
    private static double luminance(Color of) {
        return 0.2126 * linear(of.getRed()) + 0.7152 * linear(of.getGreen()) + 0.0722 * linear(of.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
