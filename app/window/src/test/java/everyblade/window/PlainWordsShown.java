package everyblade.window;

import everyblade.session.PseudoLanguage;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import javax.swing.text.JTextComponent;

/** The texts of screens in a language of which every letter is marked that have plain words all the same. */
final class PlainWordsShown {

    private final Path folder;
    private final Set<String> known;
    private final Set<String> plain = new TreeSet<>();

    /**
     * None yet.
     *
     * @param folder whose path does not count
     * @param known words that are the same in every language
     */
    PlainWordsShown(Path folder, Set<String> known) {
        this.folder = folder;
        this.known = known;
    }

    /** What was found. */
    Set<String> plain() {
        return plain;
    }

    /** Reads all that a screen shows, tells where a pointer rests, and has read out. */
    void look(JComponent screen) {
        Offscreen.on(() -> {
            Rehearsal.lay(screen, Offscreen.SIZE);
            Offscreen.all(screen).forEach(this::read);
            return true;
        });
    }

    private void read(Component component) {
        if (component instanceof JComponent swing) {
            read(swing.getToolTipText());
        }
        if (component.getAccessibleContext() != null) {
            read(component.getAccessibleContext().getAccessibleName());
            read(component.getAccessibleContext().getAccessibleDescription());
        }
        if (component instanceof JLabel label) {
            read(label.getText());
        } else if (component instanceof AbstractButton button) {
            read(button.getText());
        } else if (component instanceof JTextComponent text && !text.isEditable()) {
            read(text.getText());
        } else if (component instanceof JList<?> list) {
            readCells(list);
        } else if (component instanceof JComboBox<?> box) {
            readChoices(box);
        }
    }

    /** What a list shows is drawn by one component, cell after cell. */
    private <T> void readCells(JList<T> list) {
        for (int i = 0; i < list.getModel().getSize(); i++) {
            T value = list.getModel().getElementAt(i);
            readAll(list.getCellRenderer().getListCellRendererComponent(list, value, i, false, false));
        }
    }

    private <T> void readChoices(JComboBox<T> box) {
        JList<T> list = new JList<>(box.getModel());
        ListCellRenderer<? super T> renderer = box.getRenderer();
        for (int i = 0; i < box.getItemCount(); i++) {
            readAll(renderer.getListCellRendererComponent(list, box.getItemAt(i), i, false, false));
        }
    }

    private void readAll(Component cell) {
        (cell instanceof Container holding ? Offscreen.all(holding) : Stream.of(cell)).forEach(this::read);
    }

    private void read(String text) {
        if (text != null
                && !PseudoLanguage.plainWords(text.replace(folder.toString(), ""), known)
                        .isEmpty()) {
            plain.add(text);
        }
    }
}
