package everyblade.window;

import everyblade.picture.paint.ReadyScene;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.UIManager;

/**
 * A sheet, or a part of one, as large as there is room for; it can be enlarged and moved by keys and mouse. Another drawing of
 * the same part lies as the last one did, so that a change can be seen at its place.
 */
final class DrawingPanel extends JPanel {

    private static final long serialVersionUID = 1;
    private static final double STEP = 1.25;
    private static final double MOST = 24;
    private static final int MOVE = 40;
    private static final int EDGE = 2;

    private final transient ScenePainter painter;
    private transient Optional<ReadyScene> drawing = Optional.empty();
    private transient Rectangle2D part = new Rectangle2D.Double(0, 0, 1, 1);
    private String shown = "";
    /** How much larger than as a whole, and which share of the part is in the middle. */
    private double zoom = 1;

    private double middleX = 0.5;
    private double middleY = 0.5;

    /** @param name of what is drawn, for those who do not see it */
    DrawingPanel(Theme theme, String name) {
        painter = ScenePainter.of(theme);
        setBackground(painter.colour(Ink.PAPER));
        setFocusable(true);
        edge("Component.borderColor");
        Texts.name(this, name);
        Keys.on(this, "LEFT", () -> shift(-MOVE, 0));
        Keys.on(this, "RIGHT", () -> shift(MOVE, 0));
        Keys.on(this, "UP", () -> shift(0, -MOVE));
        Keys.on(this, "DOWN", () -> shift(0, MOVE));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                edge("Component.focusColor");
            }

            @Override
            public void focusLost(FocusEvent event) {
                edge("Component.borderColor");
            }
        });
    }

    private void edge(String colour) {
        setBorder(BorderFactory.createLineBorder(UIManager.getColor(colour), EDGE));
    }

    /**
     * Draws this from now on.
     *
     * @param which of it, mm
     */
    void show(Scene scene, Rectangle2D which) {
        drawing = Optional.of(drawing.orElseGet(
                        () -> ReadyScene.of(new Scene(0, 0, "", "", java.util.List.of()), painter))
                .after(scene));
        part = which;
        shown = scene.title();
        getAccessibleContext().setAccessibleDescription(scene.title() + ". " + scene.summary());
        repaint();
    }

    /** Draws the whole of this from now on. */
    void show(Scene scene) {
        show(scene, new Rectangle2D.Double(0, 0, scene.width(), scene.height()));
    }

    /** Draws nothing from now on. */
    void clear() {
        drawing = Optional.empty();
        shown = "";
        getAccessibleContext().setAccessibleDescription("");
        repaint();
    }

    /** The title of what is drawn; empty if nothing is. */
    String shown() {
        return shown;
    }

    void zoomIn() {
        zoom(STEP, getWidth() / 2.0, getHeight() / 2.0);
    }

    void zoomOut() {
        zoom(1 / STEP, getWidth() / 2.0, getHeight() / 2.0);
    }

    /** As a whole. */
    void fit() {
        zoom = 1;
        centre(0.5, 0.5);
    }

    private double scale() {
        double fit =
                Math.min((getWidth() - 2.0 * EDGE) / part.getWidth(), (getHeight() - 2.0 * EDGE) / part.getHeight());
        return zoom * fit;
    }

    /** About a point of the panel that stays. */
    private void zoom(double factor, double x, double y) {
        double before = scale();
        zoom = Math.max(1, Math.min(MOST, zoom * factor));
        double gained = 1 / before - 1 / scale();
        centre(
                middleX + (x - getWidth() / 2.0) * gained / part.getWidth(),
                middleY + (y - getHeight() / 2.0) * gained / part.getHeight());
    }

    private void shift(double dx, double dy) {
        centre(middleX + dx / scale() / part.getWidth(), middleY + dy / scale() / part.getHeight());
    }

    private void centre(double x, double y) {
        double free = 0.5 / zoom;
        middleX = Math.max(free, Math.min(1 - free, x));
        middleY = Math.max(free, Math.min(1 - free, y));
        repaint();
    }

    private AffineTransform view() {
        double scale = scale();
        double x = part.getX() + middleX * part.getWidth();
        double y = part.getY() + middleY * part.getHeight();
        return new AffineTransform(scale, 0, 0, scale, getWidth() / 2.0 - x * scale, getHeight() / 2.0 - y * scale);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (drawing.isEmpty() || getWidth() <= 2 * EDGE || getHeight() <= 2 * EDGE) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.transform(view());
            g.clip(part);
            drawing.get().paint(g, part);
        } finally {
            g.dispose();
        }
    }

    /** The wheel enlarges, dragging moves. */
    private final class Mouse extends MouseAdapter {

        private Point from = new Point();

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            from = event.getPoint();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            shift(from.x - event.getX(), from.y - event.getY());
            from = event.getPoint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            zoom(Math.pow(STEP, -event.getPreciseWheelRotation()), event.getX(), event.getY());
        }
    }
}
