package everyblade.window;

import everyblade.window.view.Framing;
import everyblade.window.view.Marks;
import everyblade.window.view.Marks.Tool;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;

/**
 * Keys and mouse of a picture. Arrows move the chosen point, ten picture elements at a time with Shift; with no point chosen
 * they move the picture. The mouse draws the line of the tool that was taken up, moves points, and else the picture.
 */
final class PictureHands extends MouseAdapter implements FocusListener {

    private static final double STEP = 1.25;
    private static final int PAN = 40;
    private static final int FAR = 10;
    /** So near a point is meant, pixels of the screen; the usual target of a mouse, and of a finger on a picture. */
    private static final int NEAR = 14;

    private final PictureCanvas canvas;
    private Optional<Tool> drawing = Optional.empty();
    private int lastX;
    private int lastY;
    private double firstX;
    private double firstY;
    private boolean moving;

    PictureHands(PictureCanvas canvas) {
        this.canvas = canvas;
    }

    /** Listens; Escape leads back once no point is chosen. */
    void install(Runnable back) {
        canvas.addMouseListener(this);
        canvas.addMouseMotionListener(this);
        canvas.addMouseWheelListener(this);
        canvas.addFocusListener(this);
        Keys.on(canvas, "typed +", () -> canvas.zoom(STEP));
        Keys.on(canvas, "typed -", () -> canvas.zoom(1 / STEP));
        Keys.on(canvas, "typed 0", canvas::fit);
        for (String key : new String[] {"typed k", "typed K"}) {
            Keys.on(canvas, key, () -> take(Tool.KNOWN));
        }
        for (String key : new String[] {"typed s", "typed S"}) {
            Keys.on(canvas, key, () -> take(Tool.SIZE));
        }
        Keys.on(canvas, "SPACE", () -> canvas.mark(canvas.marks().next()));
        Keys.on(canvas, "ESCAPE", () -> {
            drawing = Optional.empty();
            if (canvas.marks().isChosen()) {
                canvas.mark(canvas.marks().released());
            } else {
                back.run();
            }
        });
        arrow("LEFT", -1, 0);
        arrow("RIGHT", 1, 0);
        arrow("UP", 0, -1);
        arrow("DOWN", 0, 1);
    }

    /** Takes a tool up: its points are moved by arrows, or drawn anew with the mouse. */
    void take(Tool tool) {
        drawing = canvas.marks().line(tool).isPresent() ? Optional.empty() : Optional.of(tool);
        canvas.take(tool);
    }

    private void arrow(String key, int right, int down) {
        Keys.on(canvas, key, () -> step(right, down));
        Keys.on(canvas, "shift " + key, () -> step(FAR * right, FAR * down));
    }

    private void step(int right, int down) {
        if (canvas.marks().isChosen()) {
            canvas.mark(canvas.marks().moved(right, down));
            canvas.framing().ifPresent(this::follow);
        } else {
            canvas.framing().ifPresent(frame -> canvas.frame(frame.moved(-PAN * right, -PAN * down)));
        }
    }

    /** Keeps the chosen point in sight. */
    private void follow(Framing frame) {
        canvas.marks().place().ifPresent(at -> {
            double x = frame.across(at[0]);
            double y = frame.down(at[1]);
            double right = x - Math.max(PAN, Math.min(canvas.getWidth() - PAN, x));
            double down = y - Math.max(PAN, Math.min(canvas.getHeight() - PAN, y));
            if ((right != 0 || down != 0) && !frame.equals(Framing.whole(frame.room()))) {
                canvas.frame(frame.moved(-right, -down));
            }
        });
    }

    @Override
    public void mousePressed(MouseEvent press) {
        canvas.requestFocusInWindow();
        lastX = press.getX();
        lastY = press.getY();
        canvas.framing()
                .filter(frame -> SwingUtilities.isLeftMouseButton(press))
                .ifPresent(frame -> {
                    firstX = frame.x(press.getX());
                    firstY = frame.y(press.getY());
                    Marks near = canvas.marks().nearest(firstX, firstY, NEAR / frame.zoom());
                    moving = near.isChosen() && drawing.isEmpty();
                    if (moving) {
                        canvas.mark(near);
                    }
                });
    }

    @Override
    public void mouseDragged(MouseEvent drag) {
        canvas.framing().ifPresent(frame -> {
            double x = frame.x(drag.getX());
            double y = frame.y(drag.getY());
            if (drawing.isPresent() && SwingUtilities.isLeftMouseButton(drag)) {
                canvas.mark(canvas.marks().with(drawing.get(), firstX, firstY, x, y));
            } else if (moving) {
                canvas.mark(canvas.marks().movedTo(x, y));
            } else {
                canvas.frame(frame.moved(drag.getX() - lastX, drag.getY() - lastY));
            }
        });
        lastX = drag.getX();
        lastY = drag.getY();
    }

    @Override
    public void mouseReleased(MouseEvent release) {
        boolean drawn = drawing.isPresent()
                && canvas.framing()
                        .filter(frame -> frame.x(release.getX()) != firstX || frame.y(release.getY()) != firstY)
                        .isPresent();
        if (drawn) {
            drawing = Optional.empty();
        }
        moving = false;
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent wheel) {
        canvas.framing()
                .ifPresent(frame -> canvas.frame(
                        frame.zoomed(Math.pow(STEP, -wheel.getPreciseWheelRotation()), wheel.getX(), wheel.getY())));
    }

    @Override
    public void focusGained(FocusEvent gained) {
        canvas.repaint();
    }

    @Override
    public void focusLost(FocusEvent lost) {
        canvas.repaint();
    }
}
