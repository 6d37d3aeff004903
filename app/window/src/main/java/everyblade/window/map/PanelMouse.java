package everyblade.window.map;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** The mouse over a panel: moving points, a click selects, dragging moves, the wheel enlarges. */
final class PanelMouse extends MouseAdapter {

    /** A hand in a glove moves so far while it clicks, units. */
    private static final int STILL = 5;

    private static final double PER_NOTCH = 1.2;

    private final CellPanel panel;
    private Optional<MouseEvent> pressed = Optional.empty();
    private Optional<MouseEvent> dragged = Optional.empty();

    private PanelMouse(CellPanel panel) {
        this.panel = panel;
    }

    static void on(CellPanel panel) {
        PanelMouse mouse = new PanelMouse(panel);
        panel.addMouseListener(mouse);
        panel.addMouseMotionListener(mouse);
        panel.addMouseWheelListener(mouse);
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        panel.hover(panel.cellAt(event.getX(), event.getY()));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        panel.hover(Optional.empty());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        panel.requestFocusInWindow();
        pressed = Optional.of(event).filter(SwingUtilities::isLeftMouseButton);
        dragged = Optional.empty();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        pressed.ifPresent(start -> {
            if (dragged.isPresent() || start.getPoint().distance(event.getPoint()) > STILL) {
                MouseEvent last = dragged.orElse(start);
                panel.pan(event.getX() - last.getX(), event.getY() - last.getY());
                dragged = Optional.of(event);
            }
        });
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (pressed.isPresent() && dragged.isEmpty()) {
            MouseEvent start = pressed.get();
            panel.cellAt(start.getX(), start.getY()).ifPresent(panel::choose);
        }
        pressed = Optional.empty();
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        panel.zoom(Math.pow(PER_NOTCH, -event.getPreciseWheelRotation()), event.getX(), event.getY());
    }
}
