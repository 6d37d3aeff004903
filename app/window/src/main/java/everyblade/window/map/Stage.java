package everyblade.window.map;

import everyblade.picture.ScreenPicture;
import everyblade.picture.paint.Outlines;
import everyblade.picture.paint.ReadyScene;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A picture as it lies on a component: painted, and asked what lies where, through the same {@link Lens}. Lengths are the
 * component's units.
 */
final class Stage {

    private final Layer layer = new Layer();
    private ScenePainter painter = ScenePainter.of(Theme.LIGHT);
    private Optional<ScreenPicture> picture = Optional.empty();
    private ReadyScene scene = nothing();
    private Lens lens = Lens.whole(Lens.NATURAL);

    private ReadyScene nothing() {
        return ReadyScene.of(new Scene(0, 0, "", "", List.of()), painter);
    }

    ScenePainter painter() {
        return painter;
    }

    Optional<ScreenPicture> picture() {
        return picture;
    }

    Lens lens() {
        return lens;
    }

    /** In the colours of a theme from now on. */
    void theme(Theme theme) {
        if (theme != painter.theme()) {
            painter = new ScenePainter(theme, painter.font());
            scene = nothing().after(picture.map(ScreenPicture::scene).orElse(new Scene(0, 0, "", "", List.of())));
            layer.forget();
        }
    }

    /** Lies so from now on; what is shown is to be painted anew. */
    void lens(Lens next) {
        lens = next;
        layer.forget();
    }

    /** Shows this picture from now on; gives what is to be painted again. */
    List<Rectangle> show(ScreenPicture next) {
        picture = Optional.of(next);
        ReadyScene oldScene = scene;
        scene = oldScene.after(next.scene());
        List<Rectangle> touched = new ArrayList<>();
        change(scene.changesSince(oldScene), lens.view(), touched);
        return touched;
    }

    private void change(List<Rectangle2D> places, AffineTransform view, List<Rectangle> touched) {
        for (Rectangle2D place : places) {
            Rectangle2D here = view.createTransformedShape(place).getBounds2D();
            layer.change(here);
            Rectangle rounded = here.getBounds();
            rounded.grow(3, 3);
            touched.add(rounded);
        }
    }

    /** The cell under a point; empty where there is none. */
    Optional<Cell> cellAt(double x, double y) {
        Point2D place = lens.onSheet(x, y);
        return picture.flatMap(shown -> shown.cellAt(new Point(place.getX(), place.getY())));
    }

    /** Where a cell is drawn; empty if it is not. */
    Optional<Shape> outline(Cell cell) {
        return picture.flatMap(shown -> shown.patch(cell))
                .map(patch -> lens.view().createTransformedShape(Outlines.of(patch)));
    }

    /** Paints it all onto a component of this size. */
    void paint(Graphics2D g, int width, int height) {
        layer.paint(g, width, height, painter.colour(Ink.PAPER), new Layer.Sheet(scene, lens.view()));
    }
}
