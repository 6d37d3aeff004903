package everyblade.window;

import everyblade.words.Visible;
import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** Cells of a list of names, ids or paths. */
class VisibleCells extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean isSelected, boolean focus) {
        String told = value == null ? "" : Visible.text(told(value));
        return super.getListCellRendererComponent(list, told, index, isSelected, focus);
    }

    /** What is told of a value. */
    String told(Object value) {
        return String.valueOf(value);
    }
}
