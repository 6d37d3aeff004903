package everyblade.window;

import everyblade.words.Visible;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;

/** A list whose lines break where its width makes them, each as high as its words are. */
final class LineList<T> extends JList<T> {

    private static final long serialVersionUID = 1;
    private static final int LEAST_WIDTH = 100;

    private final DefaultListModel<T> lines = new DefaultListModel<>();

    /**
     * An empty list.
     *
     * @param name of the component
     * @param text what a line says
     */
    LineList(String name, Function<T, String> text) {
        setModel(lines);
        setName(name);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Cells<>(text));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent resized) {
                // A list keeps the heights of its lines until it is told that they changed.
                setFixedCellHeight(1);
                setFixedCellHeight(-1);
            }
        });
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    /** The list with what is needed to scroll it. */
    JScrollPane scrolled() {
        return new JScrollPane(this, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    }

    /** Shows these; the line stays chosen that stands where the chosen one did. */
    void show(List<T> shown) {
        if (shown.equals(Collections.list(lines.elements()))) {
            return;
        }
        int chosen = getSelectedIndex();
        lines.clear();
        lines.addAll(shown);
        if (chosen >= 0 && !shown.isEmpty()) {
            setSelectedIndex(Math.min(chosen, shown.size() - 1));
            ensureIndexIsVisible(getSelectedIndex());
        }
    }

    private static final class Cells<T> implements ListCellRenderer<T> {

        private final Function<T, String> words;
        private final JTextArea area = new JTextArea();

        Cells(Function<T, String> words) {
            this.words = words;
            area.setLineWrap(true);
            area.setWrapStyleWord(true);
            area.setOpaque(true);
            area.setBorder(BorderFactory.createEmptyBorder(4, 6, 5, 6));
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends T> list, T line, int index, boolean selected, boolean focus) {
            area.setText(Visible.text(words.apply(line)));
            area.setFont(list.getFont());
            area.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
            area.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
            area.getAccessibleContext().setAccessibleName(area.getText());
            int width = Math.max(LEAST_WIDTH, list.getWidth());
            area.setSize(width, Short.MAX_VALUE);
            area.setPreferredSize(null);
            area.setPreferredSize(new Dimension(width, area.getPreferredSize().height));
            return area;
        }
    }
}
