package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.author.TextMark;
import everyblade.words.Words;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.JTextComponent;
import javax.swing.text.View;

/** The text of a model as it was read, with the numbers of its lines; nothing can be typed, and one place can be marked. */
final class ModelText {

    private static final int ASIDE = 24;

    private final JTextArea area = new JTextArea();
    private final JScrollPane scroll = new JScrollPane(area);
    private final Theme theme;
    private Optional<TextMark> mark = Optional.empty();

    ModelText(Words words, Theme theme) {
        this.theme = theme;
        area.setName("author text");
        area.setEditable(false);
        area.setFont(new Font(Font.MONOSPACED, Font.PLAIN, area.getFont().getSize()));
        area.setBackground(Looks.colour(theme, Ink.PAPER));
        area.setForeground(Looks.colour(theme, Ink.LINE));
        Texts.name(area, words.say("author.text"));
        area.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                area.getCaret().setVisible(true); // so that one sees where one is, though nothing can be typed
            }
        });
        leaveKeysToTheWindow(scroll);
        scroll.setRowHeaderView(new Numbers());
    }

    /** Keys by which lists and scroll panes move, and that turn the pages of the drawings here. */
    static void leaveKeysToTheWindow(JScrollPane scroll) {
        for (JComponent one : List.of(scroll, (JComponent) scroll.getViewport().getView())) {
            for (String key : List.of("ctrl PAGE_DOWN", "ctrl PAGE_UP")) {
                one.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), "none");
                one.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
            }
        }
    }

    JComponent component() {
        return scroll;
    }

    void focus() {
        area.requestFocusInWindow();
    }

    /** Shows another text where the last one was scrolled to; the mark goes. */
    void show(String text) {
        if (text.equals(area.getText())) {
            return;
        }
        Rectangle seen = scroll.getViewport().getViewRect();
        unmark();
        area.setText(text);
        area.setCaretPosition(0);
        area.scrollRectToVisible(seen);
        scroll.getRowHeader().revalidate();
        scroll.getRowHeader().repaint();
    }

    /** Marks a place and brings it into view. */
    void mark(TextMark place) {
        unmark();
        mark = Optional.of(place);
        try {
            Color line = Looks.colour(theme, Ink.MAYBE_WASH);
            Color value = Looks.colour(theme, Ink.STEP_2);
            area.getHighlighter()
                    .addHighlight(place.start(), place.end(), new DefaultHighlighter.DefaultHighlightPainter(value));
            area.getHighlighter().addHighlight(place.lineStart(), place.lineEnd(), new WholeLine(line));
            area.setCaretPosition(place.start());
            bringIntoView(area.modelToView2D(place.start()), area.modelToView2D(place.end()));
        } catch (BadLocationException beyondTheText) {
            throw new IllegalStateException(beyondTheText);
        }
        scroll.getRowHeader().repaint();
    }

    /** A third down, and no further to the right than it takes; before the first layout there is nothing to bring. */
    private void bringIntoView(Rectangle2D from, Rectangle2D to) {
        if (from == null || to == null) {
            return;
        }
        Rectangle seen = scroll.getViewport().getViewRect();
        boolean fits = to.getMaxX() + ASIDE < seen.width;
        double x = fits ? 0 : from.getX() - seen.width / 3.0;
        double y = from.getY() - seen.height / 3.0;
        area.scrollRectToVisible(new Rectangle(0, 0, 1, 1)); // so that the next one comes to stand at the upper left
        int right = Math.max(1, Math.min(area.getWidth(), (int) x + seen.width) - Math.max(0, (int) x));
        int below = Math.max(1, Math.min(area.getHeight(), (int) y + seen.height) - Math.max(0, (int) y));
        area.scrollRectToVisible(new Rectangle(Math.max(0, (int) x), Math.max(0, (int) y), right, below));
    }

    private void unmark() {
        mark = Optional.empty();
        area.getHighlighter().removeAllHighlights();
    }

    /** The line that is marked, from 1; 0 if none is. */
    int markedLine() {
        return mark.map(place -> line(place.start()) + 1).orElse(0);
    }

    private int line(int offset) {
        return area.getDocument().getDefaultRootElement().getElementIndex(offset);
    }

    /** Marks a line over its whole width, empty as it may be. */
    private static final class WholeLine extends DefaultHighlighter.DefaultHighlightPainter {

        WholeLine(Color colour) {
            super(colour);
        }

        @Override
        public Shape paintLayer(Graphics g, int from, int to, Shape bounds, JTextComponent text, View view) {
            try {
                Rectangle at = text.modelToView2D(from).getBounds();
                Rectangle line = new Rectangle(0, at.y, text.getWidth(), at.height);
                g.setColor(getColor());
                g.fillRect(line.x, line.y, line.width, line.height);
                return line;
            } catch (BadLocationException gone) {
                return bounds; // the text was changed; the mark goes with it
            }
        }
    }

    /** The numbers of the lines that are in view. */
    private final class Numbers extends JComponent {

        private static final long serialVersionUID = 1;
        private static final int ASIDE = 6;
        private static final int SIGN = 8;

        @Override
        public Dimension getPreferredSize() {
            FontMetrics metrics = area.getFontMetrics(area.getFont());
            String widest =
                    "0".repeat(Math.max(3, Integer.toString(area.getLineCount()).length()));
            return new Dimension(metrics.stringWidth(widest) + 2 * ASIDE + SIGN, area.getPreferredSize().height);
        }

        @Override
        protected void paintComponent(Graphics g) {
            g.setFont(area.getFont());
            FontMetrics metrics = g.getFontMetrics();
            Rectangle clip = g.getClipBounds();
            int height = metrics.getHeight();
            int top = area.getInsets().top;
            int first = Math.max(0, (clip.y - top) / height);
            int last = Math.min(area.getLineCount() - 1, (clip.y + clip.height) / height);
            for (int line = first; line <= last; line++) {
                String number = Integer.toString(line + 1);
                boolean marked = line + 1 == markedLine();
                g.setColor(Looks.colour(theme, marked ? Ink.LINE : Ink.FAINT));
                int x = getWidth() - ASIDE - metrics.stringWidth(number);
                int y = top + line * height + metrics.getAscent();
                g.drawString(number, x, y);
                if (marked) {
                    g.drawString("›", 2, y);
                }
            }
        }
    }
}
