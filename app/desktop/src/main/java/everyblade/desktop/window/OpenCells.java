package everyblade.desktop.window;

import everyblade.desktop.view.OpenLine;
import everyblade.desktop.words.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;

/** Lines of the closing list, each as high as its words at the width of the list. */
final class OpenCells implements ListCellRenderer<OpenLine> {

    private static final Insets ROOM = new Insets(4, 6, 6, 6);

    private final Words words;
    private final JTextArea text = new JTextArea();

    OpenCells(Words words) {
        this.words = words;
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setOpaque(true);
        text.setBorder(BorderFactory.createEmptyBorder(ROOM.top, ROOM.left, ROOM.bottom, ROOM.right));
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends OpenLine> list, OpenLine line, int index, boolean selected, boolean focus) {
        text.setText(
                line.kind() + ": " + line.what() + (line.open() ? "\n" + words.say("closing.toDo", line.toDo()) : ""));
        text.setFont(list.getFont());
        text.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        text.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        text.getAccessibleContext().setAccessibleName(text.getText());
        int width = Math.max(100, list.getWidth());
        text.setSize(width, Short.MAX_VALUE);
        text.setPreferredSize(null);
        text.setPreferredSize(new Dimension(width, text.getPreferredSize().height));
        return text;
    }
}
