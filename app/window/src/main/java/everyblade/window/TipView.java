package everyblade.window;

import everyblade.session.JobState;
import everyblade.window.view.ReplayFrame;
import everyblade.window.view.TipSight;
import everyblade.words.Words;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JComponent;

/** What the scope tip has before it, drawn beside the job: while one picture is being drawn, only the newest next is wanted. */
final class TipView extends JComponent {

    private static final long serialVersionUID = 1;
    private static final int SIZE = 132;

    private final transient Words words;
    private final transient Door door;
    private transient Optional<TipSight> sight = Optional.empty();
    private transient Optional<TipSight.Aim> shown = Optional.empty();
    private transient Optional<ReplayFrame> wanted = Optional.empty();
    private transient Optional<BufferedImage> image = Optional.empty();
    private boolean drawing;

    TipView(Words words, Door door) {
        this.words = words;
        this.door = door;
        setName("tip");
        setPreferredSize(new Dimension(SIZE, SIZE));
        Texts.tip(this, words.say("review.tip"));
        Texts.name(this, words.say("review.tip"));
    }

    void open(TipSight newSight) {
        sight = Optional.of(newSight);
    }

    void show(ReplayFrame frame) {
        wanted = Optional.of(frame);
        draw();
    }

    private void draw() {
        if (drawing || sight.isEmpty() || wanted.isEmpty() || wanted.get().aim().equals(shown)) {
            return;
        }
        ReplayFrame frame = wanted.get();
        JobState state = frame.state();
        TipSight from = sight.get();
        drawing = true;
        door.aside(words.say("review.tip.wait"), () -> from.picture(state), picture -> {
            drawing = false;
            shown = frame.aim();
            image = picture;
            repaint();
            draw();
        });
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (image.isPresent()) {
            double scale = Math.min(
                    (double) getWidth() / image.get().getWidth(),
                    (double) getHeight() / image.get().getHeight());
            int wide = (int) (scale * image.get().getWidth());
            int high = (int) (scale * image.get().getHeight());
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(image.get(), (getWidth() - wide) / 2, (getHeight() - high) / 2, wide, high, null);
        } else {
            g.setColor(getForeground());
            String none = words.say("review.tip.none");
            g.drawString(none, (getWidth() - g.getFontMetrics().stringWidth(none)) / 2, getHeight() / 2);
        }
        g.dispose();
    }
}
