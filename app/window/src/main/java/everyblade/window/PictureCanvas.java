package everyblade.window;

import everyblade.core.finding.measure.PixelLine;
import everyblade.session.photo.PhotoImage;
import everyblade.window.view.Framing;
import everyblade.window.view.Marks;
import everyblade.window.view.Marks.Tool;
import everyblade.words.Words;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.AffineTransform;
import java.util.Optional;

/** A picture with the points that are set in it; what a person does to it comes from {@link PictureHands}. */
final class PictureCanvas extends Painted {

    private static final long serialVersionUID = 1;

    private static final Color GROUND = new Color(0x101418);
    private static final Color WORDS = new Color(0xe8e8e8);
    /** From so many pixels of the screen for each picture element on, these are shown as they are. */
    private static final double SQUARES = 4;
    /** Half of the length of a new line, pixels of the screen. */
    private static final double HALF = 60;

    private final transient Words words;
    private transient Optional<PhotoImage> image = Optional.empty();
    private transient Optional<Framing> framing = Optional.empty();
    private transient Marks marks = Marks.none(1, 1);
    private transient Runnable changed = () -> {};
    private String message = "";

    PictureCanvas(Words words) {
        this.words = words;
        setName("picture");
        setFocusable(true);
        Texts.name(this, words.say("picture.name"));
        setMinimumSize(new java.awt.Dimension(200, 100));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent resized) {
                framing = framing.map(shown -> shown.in(getWidth(), getHeight()));
                repaint();
            }
        });
    }

    /** Is told whenever points were set or moved. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** Shows that there is nothing to show yet, or why there is not. */
    void clear(String why) {
        image = Optional.empty();
        framing = Optional.empty();
        message = why;
        mark(Marks.none(1, 1));
    }

    /** Shows a picture, the whole of it. */
    void show(PhotoImage shown) {
        image = Optional.of(shown);
        mark(Marks.none(shown.width(), shown.height()));
        fit();
    }

    Marks marks() {
        return marks;
    }

    /** What it says instead of a picture. */
    String message() {
        return message;
    }

    Optional<Framing> framing() {
        return framing;
    }

    /** Sets other points. */
    void mark(Marks other) {
        marks = other;
        changed.run();
        repaint();
    }

    /** Shows another part. */
    void frame(Framing other) {
        framing = Optional.of(other);
        repaint();
    }

    /** Shows the whole picture. */
    void fit() {
        image.ifPresent(shown -> frame(Framing.whole(
                new Framing.Room(Math.max(1, getWidth()), Math.max(1, getHeight()), shown.width(), shown.height()))));
    }

    void zoom(double factor) {
        framing.ifPresent(shown -> frame(shown.zoomed(factor)));
    }

    /** Takes up the points of a tool; new ones are set in the middle of what shows. */
    void take(Tool tool) {
        double down = getHeight() / 2.0 + (tool == Tool.KNOWN ? -HALF : HALF) / 2;
        framing.ifPresent(
                shown -> mark(marks.taken(tool, shown.x(getWidth() / 2.0), shown.y(down), HALF / shown.zoom())));
        requestFocusInWindow();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(GROUND);
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        if (image.isPresent() && framing.isPresent()) {
            paint(g, image.get(), framing.get());
        } else {
            g.setColor(WORDS);
            g.drawString(message, 16, 30);
        }
        g.dispose();
    }

    private void paint(Graphics2D g, PhotoImage shown, Framing frame) {
        g.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION,
                frame.zoom() < SQUARES
                        ? RenderingHints.VALUE_INTERPOLATION_BILINEAR
                        : RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
        AffineTransform place = AffineTransform.getTranslateInstance(frame.left(), frame.top());
        place.scale(
                frame.zoom() * shown.width() / shown.image().getWidth(),
                frame.zoom() * shown.height() / shown.image().getHeight());
        g.drawImage(shown.image(), place, null);
        for (Tool tool : Tool.values()) {
            Optional<PixelLine> line = marks.line(tool);
            line.ifPresent(there -> {
                int chosen = marks.chosen() / 2 == tool.ordinal() && marks.isChosen() ? marks.chosen() % 2 : -1;
                MarkPainter.of(tool).paint(g, frame, there, chosen, words);
            });
        }
        g.setColor(WORDS);
        g.drawString(zoom(frame), 12, getHeight() - 12);
        if (hasFocus()) {
            g.setColor(MarkPainter.FOCUS);
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
    }

    private static String zoom(Framing frame) {
        return Math.round(frame.zoom() * 100) + " %";
    }
}
