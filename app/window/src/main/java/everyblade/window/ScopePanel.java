package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.view.ScopeEye;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** The scope tip's picture, round on black; DRILL stands on it always, and on it what else there is to say. */
final class ScopePanel extends JPanel {

    private static final float LEAST_LETTERS = 10;
    private static final int EDGE = 12;
    private static final long serialVersionUID = 1;
    private static final Color LINE = Looks.colour(Theme.DARK, Ink.LINE);

    private final transient Words words;
    private transient Optional<BufferedImage> image = Optional.empty();
    private transient List<ScopeEye.Spot> spots = List.of();
    private String told = "";

    ScopePanel(Words words) {
        this.words = words;
        setName("scope");
        setBackground(Color.BLACK);
        setFocusable(true);
        setPreferredSize(new Dimension(480, 480));
        getAccessibleContext().setAccessibleName(words.say("drill.scope"));
        getAccessibleContext().setAccessibleDescription(words.say("drill.keys"));
    }

    /** Shows a picture. */
    void show(ScopeEye.Shot shot) {
        BufferedImage shown = image.filter(old -> old.getWidth() == shot.size())
                .orElseGet(() -> new BufferedImage(shot.size(), shot.size(), BufferedImage.TYPE_INT_ARGB));
        shown.setRGB(0, 0, shot.size(), shot.size(), shot.pixels(), 0, shot.size());
        image = Optional.of(shown);
        repaint();
    }

    /** Shows no picture. */
    void dark() {
        image = Optional.empty();
        repaint();
    }

    /** What is said in the middle of the picture; nothing if it is empty. */
    void tell(String text) {
        if (!text.equals(told)) {
            told = text;
            getAccessibleContext().setAccessibleDescription(text.isEmpty() ? words.say("drill.keys") : text);
            repaint();
        }
    }

    /** Rings these places. */
    void ring(List<ScopeEye.Spot> places) {
        spots = List.copyOf(places);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        int side = Math.min(getWidth(), getHeight());
        int left = (getWidth() - side) / 2;
        int top = (getHeight() - side) / 2;
        image.ifPresent(shown -> g.drawImage(shown, left, top, side, side, null));
        g.setStroke(new BasicStroke(2));
        g.setColor(LINE);
        for (ScopeEye.Spot spot : spots) {
            double radius = spot.radius() * side * 1.2 + 6;
            g.draw(new Ellipse2D.Double(
                    left + spot.x() * side - radius, top + spot.y() * side - radius, 2 * radius, 2 * radius));
        }
        g.setFont(getFont().deriveFont(Font.BOLD, getFont().getSize2D() * 1.5f));
        g.drawString(words.say("drill.mark"), 10, 10 + g.getFontMetrics().getAscent());
        g.setFont(getFont().deriveFont(Font.BOLD, getFont().getSize2D() * 1.15f));
        g.setColor(LINE);
        written(g);
        if (isFocusOwner()) {
            g.setColor(Looks.colour(Theme.DARK, Ink.SEEN));
            g.setStroke(new BasicStroke(3));
            g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
        g.dispose();
    }

    /** A line in as many as its width makes of it. */
    private static List<String> broken(String line, FontMetrics metrics, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        for (String word : line.split(" ")) {
            if (part.length() > 0 && SwingUtilities.computeStringWidth(metrics, part + " " + word) > width) {
                lines.add(part.toString());
                part.setLength(0);
            }
            part.append(part.length() == 0 ? "" : " ").append(word);
        }
        lines.add(part.toString());
        return lines;
    }

    /** In the middle while there is no picture, else at its lower edge; smaller where it would not fit under the mark. */
    private void written(Graphics2D g) {
        int above = 10 + 2 * getFontMetrics(getFont()).getHeight();
        List<String> lines = lines(g);
        while (above + lines.size() * g.getFontMetrics().getHeight() > getHeight()
                && g.getFont().getSize2D() > LEAST_LETTERS) {
            g.setFont(g.getFont().deriveFont(g.getFont().getSize2D() - 1));
            lines = lines(g);
        }
        int height = g.getFontMetrics().getHeight();
        int left = getHeight() - lines.size() * height;
        int y = g.getFontMetrics().getAscent() + Math.max(above, image.isPresent() ? left - EDGE : left / 2);
        for (String line : lines) {
            int width = SwingUtilities.computeStringWidth(g.getFontMetrics(), line);
            if (image.isPresent()) {
                g.setColor(new Color(0, 0, 0, 170));
                g.fillRect((getWidth() - width) / 2 - 8, y - g.getFontMetrics().getAscent(), width + 16, height);
                g.setColor(LINE);
            }
            g.drawString(line, (getWidth() - width) / 2, y);
            y += height;
        }
    }

    private List<String> lines(Graphics2D g) {
        return told.lines()
                .flatMap(line -> broken(line, g.getFontMetrics(), getWidth() - 24).stream())
                .toList();
    }
}
