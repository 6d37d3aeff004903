package everyblade.desktop.map;

import everyblade.picture.MapScene;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Scene;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;

/** The map: all rows as rings about one axis, and one of them large round the others. */
public final class MapPanel extends CellPanel {

    private static final long serialVersionUID = 1;

    private transient Optional<String> enlarged = Optional.empty();

    /** Shows this row large, or none for null. */
    public void enlarge(String row) {
        enlarged = Optional.ofNullable(row);
        repaint();
    }

    /** Whether airfoils are shown where they stand now, or stay while the scope tip goes round them. */
    public void turnWithRotor(boolean turns) {
        repaint();
    }

    /** Shows things larger. */
    public void zoomIn() {
        repaint();
    }

    /** Shows things smaller. */
    public void zoomOut() {
        repaint();
    }

    /** Shows the whole map. */
    public void fit() {
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        coverage.ifPresent(shown -> {
            Graphics2D g = (Graphics2D) graphics.create();
            Scene scene = MapScene.of(shown, facts.orElseThrow(), enlarged, style);
            double scale = Math.min(getWidth() / scene.width(), getHeight() / scene.height());
            g.scale(scale, scale);
            ScenePainter.of(style.theme()).paint(scene, g);
            g.dispose();
        });
    }
}
