package everyblade.desktop.window;

import everyblade.core.entry.Kind;
import everyblade.desktop.words.Words;
import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** Kinds of findings in the person's language, with the word that entries use. */
final class KindCells extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1;

    private final transient Words words;

    KindCells(Words words) {
        this.words = words;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean isSelected, boolean focus) {
        String word = ((Kind) value).word();
        String told = words.say("kind." + word);
        return super.getListCellRendererComponent(
                list, told.equals(word) ? word : told + " (" + word + ")", index, isSelected, focus);
    }
}
