package everyblade.window;

import everyblade.picture.Legend;
import everyblade.picture.MapWords;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.function.Supplier;

/** What the looks of cells mean, across a card; as high as its width makes it. */
final class LegendLine extends Painted {

    private static final long serialVersionUID = 1;

    private static final double NATURAL = 96 / 25.4;
    private static final double GROWS = 0.4;

    private final transient MapWords mapWords;
    private final transient Supplier<Theme> theme;

    LegendLine(MapWords mapWords, Supplier<Theme> theme) {
        this.mapWords = mapWords;
        this.theme = theme;
        setName("legend");
        Texts.name(this, mapWords.say("group.legend"));
        describe(Legend.named(1, mapWords).summary());
    }

    /** It grows less than what is read while working: else it would take the room of what it explains. */
    private static double scale() {
        return NATURAL * (1 + GROWS * (Looks.text() - 1));
    }

    private Scene scene() {
        return Legend.named(Math.max(1, getWidth()) / scale(), mapWords);
    }

    @Override
    public Dimension getPreferredSize() {
        int room = getParent() == null
                ? 0
                : getParent().getWidth()
                        - getParent().getInsets().left
                        - getParent().getInsets().right;
        int width = getWidth() > 0 ? getWidth() : room;
        return new Dimension(0, (int) Math.ceil(
                Legend.named(Math.max(1, width) / scale(), mapWords).height() * scale()));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(scale(), scale());
        ScenePainter.of(theme.get()).paint(scene(), g);
        g.dispose();
    }
}
