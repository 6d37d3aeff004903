package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/**
 * A component with all that is in it, laid out at a size.
 *
 * @param root of what is looked at; on the event thread
 */
record Laid(JComponent root) {

    static Laid out(JComponent root, Dimension size) {
        for (int i = 0; i < 3; i++) {
            Rehearsal.lay(root, size);
        }
        return new Laid(root);
    }

    private Stream<Component> shown() {
        return Offscreen.all(root)
                .filter(one -> one.getParent() != null && one.getWidth() > 0 && one.getHeight() > 0)
                .filter(Laid::shows);
    }

    /** Whether all that holds it is shown and does not scroll. */
    private static boolean shows(Component one) {
        for (Component at = one; at != null; at = at.getParent()) {
            boolean scrolls = at instanceof JViewport port && !port.getSize().equals(port.getViewSize());
            if (!at.isVisible() || scrolls) {
                return false;
            }
        }
        return true;
    }

    /** Everything stands inside of what holds it. */
    void reachesNowhereBeyond() {
        shown().filter(one -> !(one.getParent() instanceof JViewport) && !(one instanceof JScrollPane))
                .filter(one -> SwingUtilities.getAncestorOfClass(JTabbedPane.class, one) == null)
                .forEach(one -> assertThat(new Rectangle(one.getParent().getSize()).contains(one.getBounds()))
                        .as(
                                "%s %s %s in %s",
                                one.getClass().getSimpleName(),
                                words(one).orElse(""),
                                one.getBounds(),
                                one.getParent().getSize())
                        .isTrue());
    }

    /** Each label, button and tab has room for its words, or tells them all where a pointer rests on it. */
    void cutsNoWords() {
        cutsNoWords(20);
    }

    /** The same of a screen on which more than so many things have words. */
    void cutsNoWords(int some) {
        assertThat(shown().filter(one -> words(one).isPresent())).hasSizeGreaterThan(some);
        shown().filter(one -> words(one).isPresent())
                .filter(one -> one.getPreferredSize().width > one.getWidth())
                .forEach(one -> assertThat(((JComponent) one).getToolTipText())
                        .as("%s has %d of %d", words(one), one.getWidth(), one.getPreferredSize().width)
                        .isNotNull()
                        .contains(words(one).orElseThrow().replaceFirst("^\\d+  ", "")));
        Offscreen.all(root)
                .filter(JTabbedPane.class::isInstance)
                .map(JTabbedPane.class::cast)
                .forEach(Laid::cutsNoTab);
    }

    /** What stands side by side does not lie one over the other. */
    void overlapsNowhere() {
        shown().filter(JPanel.class::isInstance)
                .map(JPanel.class::cast)
                .filter(panel -> !(panel.getLayout() instanceof CardLayout))
                .forEach(panel -> {
                    List<Component> inside = Stream.of(panel.getComponents())
                            .filter(one -> one.isVisible() && one.getWidth() > 0 && one.getHeight() > 0)
                            .toList();
                    for (int i = 0; i < inside.size(); i++) {
                        for (int k = i + 1; k < inside.size(); k++) {
                            assertThat(inside.get(i)
                                            .getBounds()
                                            .intersects(inside.get(k).getBounds()))
                                    .as("%s over %s", inside.get(i), inside.get(k))
                                    .isFalse();
                        }
                    }
                });
    }

    /** Each line of a list has room for its words at the list's width. */
    void cutsNoLine(String name) {
        Offscreen.all(root)
                .filter(one -> name.equals(one.getName()) && one.getWidth() > 0)
                .map(one -> (JList<?>) one)
                .forEach(Laid::cutsNoLine);
    }

    private static void cutsNoLine(JList<?> list) {
        for (int i = 0; i < list.getModel().getSize(); i++) {
            JComponent line = line(list, i);
            int width = list.getFixedCellWidth() > 0 ? list.getFixedCellWidth() : list.getWidth();
            Rehearsal.lay(line, new Dimension(width, list.getFixedCellHeight()));
            new Laid(line).reachesNowhereBeyond();
            Offscreen.all(line)
                    .filter(one -> one instanceof JLabel && one.isVisible())
                    .forEach(label -> assertThat(label.getWidth())
                            .as(((JLabel) label).getText())
                            .isGreaterThanOrEqualTo(label.getPreferredSize().width));
        }
    }

    private static <T> JComponent line(JList<T> list, int at) {
        return (JComponent) list.getCellRenderer()
                .getListCellRendererComponent(list, list.getModel().getElementAt(at), at, false, false);
    }

    /** These are in sight, as a whole; what was taken out of the window does not count. */
    void shows(String... names) {
        for (String name : names) {
            Offscreen.all(root).filter(one -> name.equals(one.getName())).forEach(one -> {
                Rectangle place = SwingUtilities.convertRectangle(one.getParent(), one.getBounds(), root);
                boolean scrolls = one.getParent() instanceof JViewport;
                assertThat(one.isVisible() && one.getWidth() > 0 && one.getHeight() > 0)
                        .as(name)
                        .isTrue();
                assertThat(scrolls || new Rectangle(root.getSize()).contains(place))
                        .as(name)
                        .isTrue();
            });
        }
    }

    private static void cutsNoTab(JTabbedPane pane) {
        for (int i = 0; i < pane.getTabCount(); i++) {
            Rectangle tab = pane.getBoundsAt(i);
            int words = pane.getFontMetrics(pane.getFont()).stringWidth(pane.getTitleAt(i));
            assertThat(tab.width).as(pane.getTitleAt(i)).isGreaterThanOrEqualTo(words);
            assertThat(tab.x + tab.width).as(pane.getTitleAt(i)).isLessThanOrEqualTo(pane.getWidth());
        }
    }

    private static Optional<String> words(Component one) {
        String text = one instanceof JLabel label
                ? label.getText()
                : one instanceof AbstractButton button ? button.getText() : "";
        return Optional.ofNullable(text).filter(said -> !said.isBlank());
    }
}
