package everyblade.window.map;

import everyblade.picture.ScreenPicture;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Ink;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;

/**
 * What is not seen yet and would be by the next step: a dashed line round all of it, so that no cell looks seen before it is.
 * Drawn once for a picture, since it is painted again at each move of the mouse.
 */
final class Ghost {

    private static final float LINE = 1.6f;
    private static final float EDGE = 1.2f;
    /** Where two cells meet, neither covers its smooth edge. */
    private static final float SEAM = 1;

    private static final float[] DASHES = {3, 2};

    private List<Cell> cells = List.of();
    private Optional<Drawn> drawn = Optional.empty();

    /** What a drawing hangs on. */
    private record Key(
            List<Cell> cells,
            Optional<ScreenPicture> picture,
            Lens lens,
            ScenePainter painter,
            int width,
            int height,
            double scale) {}

    private record Drawn(Key key, BufferedImage image) {}

    /** Shows these cells from now on; gives whether that is a change. */
    boolean show(List<Cell> next) {
        boolean other = !next.equals(cells);
        cells = List.copyOf(next);
        return other;
    }

    /** Paints it over a component of this size. */
    void paint(Graphics2D graphics, Stage stage, int width, int height) {
        List<Shape> shapes =
                cells.stream().flatMap(cell -> stage.outline(cell).stream()).toList();
        if (shapes.isEmpty()) {
            return;
        }
        double scale = graphics.getTransform().getScaleX();
        Key key = new Key(cells, stage.picture(), stage.lens(), stage.painter(), width, height, scale);
        if (drawn.filter(before -> before.key().equals(key)).isEmpty()) {
            drawn = Optional.of(new Drawn(key, image(shapes, key)));
        }
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.scale(1 / scale, 1 / scale);
            g.drawImage(drawn.get().image(), 0, 0, null);
        } finally {
            g.dispose();
        }
    }

    /** Lines round each cell of which the part that lies on cells is taken away again: what is left runs round them all. */
    private static BufferedImage image(List<Shape> shapes, Key key) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(key.width() * key.scale()),
                (int) Math.ceil(key.height() * key.scale()),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.transform(AffineTransform.getScaleInstance(key.scale(), key.scale()));
            g.setColor(key.painter().colour(Ink.PAPER));
            g.setStroke(new BasicStroke(2 * (LINE + EDGE), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
            shapes.forEach(g::draw);
            g.setColor(key.painter().colour(Ink.LINE));
            g.setStroke(new BasicStroke(2 * LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES, 0));
            shapes.forEach(g::draw);
            g.setComposite(AlphaComposite.Clear);
            g.setStroke(new BasicStroke(SEAM));
            shapes.forEach(g::fill);
            shapes.forEach(g::draw);
        } finally {
            g.dispose();
        }
        return image;
    }
}
