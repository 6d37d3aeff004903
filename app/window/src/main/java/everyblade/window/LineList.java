package everyblade.window;

import everyblade.words.Visible;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;

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
        this(name, text, line -> Optional.empty());
    }

    /**
     * An empty list.
     *
     * @param name of the component
     * @param text what a line says
     * @param glyph what stands at the end of a line
     */
    LineList(String name, Function<T, String> text, Function<T, Optional<Icon>> glyph) {
        setModel(lines);
        setName(name);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Cells<>(text, glyph));
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
        private final Function<T, Optional<Icon>> glyph;
        private final JTextArea area = new JTextArea();
        private final JLabel end = new JLabel();
        private final JPanel both = new JPanel(new BorderLayout());

        Cells(Function<T, String> words, Function<T, Optional<Icon>> glyph) {
            this.words = words;
            this.glyph = glyph;
            both.add(area, BorderLayout.CENTER);
            both.add(end, BorderLayout.EAST);
            end.setVerticalAlignment(SwingConstants.TOP);
            end.setBorder(BorderFactory.createEmptyBorder(7, 2, 5, 8));
            area.setEditable(false); // it only shows
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
            Optional<Icon> shown = glyph.apply(line);
            end.setIcon(shown.orElse(null));
            end.setForeground(area.getForeground());
            int ending = shown.isPresent() ? end.getPreferredSize().width : 0;
            int width = Math.max(LEAST_WIDTH, list.getWidth() - ending);
            area.setSize(width, Short.MAX_VALUE);
            area.setPreferredSize(null);
            area.setPreferredSize(new Dimension(width, area.getPreferredSize().height));
            if (shown.isEmpty()) {
                return area;
            }
            both.add(area, BorderLayout.CENTER);
            both.setBackground(area.getBackground());
            both.getAccessibleContext().setAccessibleName(area.getText());
            return both;
        }
    }
}
