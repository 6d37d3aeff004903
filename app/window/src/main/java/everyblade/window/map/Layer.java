package everyblade.window.map;

import everyblade.picture.paint.ReadyScene;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * What was painted, kept as an image with a picture element for each of the device, so that it comes back unblurred at
 * any scale. Only what is said to have changed is painted again.
 */
final class Layer {

    /**
     * A scene and how it lies on the component.
     *
     * @param scene what is painted
     * @param view mm to the component's units
     */
    record Sheet(ReadyScene scene, AffineTransform view) {}

    /** Room round a changed place for smooth edges, in picture elements. */
    private static final int EDGE = 2;

    /** Beyond so many places it is cheaper to paint everything once. */
    private static final int MANY = 128;

    private BufferedImage image;
    /** As large as the image, of no lasting content; null until it is needed. */
    private BufferedImage beside;

    private AffineTransform device = new AffineTransform();
    private boolean whole = true;
    private final List<Rectangle2D> changed = new ArrayList<>();

    /** Paints everything anew next time. */
    void forget() {
        whole = true;
        changed.clear();
    }

    /** Paints this place anew next time; in the component's units. */
    void change(Rectangle2D place) {
        if (!whole) {
            changed.add(place);
        }
        if (changed.size() > MANY) {
            forget();
        }
    }

    /** Paints the sheet onto a component of this size. */
    void paint(Graphics2D graphics, int width, int height, Color ground, Sheet sheet) {
        AffineTransform now = graphics.getTransform();
        // Whole picture elements are left to the copying, the rest of one is painted in: then nothing is blurred.
        int left = (int) Math.floor(now.getTranslateX());
        int top = (int) Math.floor(now.getTranslateY());
        AffineTransform wanted = AffineTransform.getTranslateInstance(-left, -top);
        wanted.concatenate(now);
        Rectangle2D covered =
                wanted.createTransformedShape(new Rectangle(width, height)).getBounds2D();
        renew(wanted, (int) Math.ceil(covered.getMaxX()), (int) Math.ceil(covered.getMaxY()));
        refresh(ground, sheet);
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setTransform(AffineTransform.getTranslateInstance(left, top));
            g.drawImage(image, 0, 0, null);
        } finally {
            g.dispose();
        }
    }

    private void renew(AffineTransform wanted, int width, int height) {
        boolean fits = image != null && image.getWidth() == width && image.getHeight() == height;
        if (!fits || !wanted.equals(device)) {
            image = fits
                    ? image
                    : new BufferedImage(Math.max(1, width), Math.max(1, height), BufferedImage.TYPE_INT_RGB);
            beside = fits ? beside : null;
            device = wanted;
            forget();
        }
    }

    private void refresh(Color ground, Sheet sheet) {
        Rectangle all = new Rectangle(image.getWidth(), image.getHeight());
        if (whole) {
            paint(image, all, ground, sheet);
        }
        for (Rectangle2D place : changed) {
            Rectangle part = device.createTransformedShape(place).getBounds();
            part.grow(EDGE, EDGE);
            part = part.intersection(all);
            if (!part.isEmpty()) {
                repaint(part, ground, sheet);
            }
        }
        whole = false;
        changed.clear();
    }

    /**
     * Paints a part as it comes out in the whole. A clip would round some smooth edges otherwise, so all that touches the
     * part is painted uncut beside the image, and only the part is copied.
     */
    private void repaint(Rectangle part, Color ground, Sheet sheet) {
        if (beside == null) {
            beside = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        }
        paint(beside, part, ground, sheet);
        Graphics2D g = image.createGraphics();
        try {
            g.clip(part);
            g.drawImage(beside, 0, 0, null);
        } finally {
            g.dispose();
        }
    }

    /** Paints all that touches a part of an image, on a ground laid there. */
    private void paint(BufferedImage onto, Rectangle part, Color ground, Sheet sheet) {
        Graphics2D g = onto.createGraphics();
        try {
            g.setColor(ground);
            g.fill(part);
            g.transform(device);
            g.transform(sheet.view());
            sheet.scene().paint(g, onSheetOf(part, sheet));
        } finally {
            g.dispose();
        }
    }

    /** The place on the sheet that a part of the image shows, and a little more. */
    private Rectangle2D onSheetOf(Rectangle part, Sheet sheet) {
        Rectangle wide = new Rectangle(part);
        wide.grow(1, 1);
        AffineTransform all = new AffineTransform(device);
        all.concatenate(sheet.view());
        try {
            return all.createInverse().createTransformedShape(wide).getBounds2D();
        } catch (NoninvertibleTransformException flat) {
            return new Rectangle2D.Double();
        }
    }
}
