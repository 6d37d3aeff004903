package everyblade.picture.section;

import everyblade.picture.scene.Point;

/**
 * A rectangle on the sheet into which something is drawn, mm.
 *
 * @param corner upper left
 */
record Box(Point corner, double width, double height) {

    double right() {
        return corner.x() + width;
    }

    double bottom() {
        return corner.y() + height;
    }

    Point middle() {
        return corner.plus(width / 2, height / 2);
    }

    /** What is left within margins. */
    Box inside(double left, double top, double right, double bottom) {
        return new Box(corner.plus(left, top), width - left - right, height - top - bottom);
    }
}
