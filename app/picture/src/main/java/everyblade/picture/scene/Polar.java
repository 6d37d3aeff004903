package everyblade.picture.scene;

/**
 * A row as a ring: degrees of clock angle along it, 12 o'clock on top, and millimetres from the axis across it.
 *
 * <p>Clock angles are those seen from aft looking forward. So they run clockwise on the sheet, unless the picture is
 * mirrored to show the same engine from ahead.
 *
 * @param centre where the axis meets the sheet
 * @param mirrored whether clock angles run the other way on the sheet
 */
public record Polar(Point centre, boolean mirrored) implements Frame {

    @Override
    public Point at(double along, double across) {
        // StrictMath, for a picture must not depend on the machine it was made on.
        double angle = StrictMath.toRadians(onSheet(along));
        return centre.plus(across * StrictMath.sin(angle), -across * StrictMath.cos(angle));
    }

    @Override
    public double along(Point place) {
        double onSheet = StrictMath.toDegrees(StrictMath.atan2(place.x() - centre.x(), centre.y() - place.y()));
        double clock = mirrored ? -onSheet : onSheet;
        return clock < 0 ? clock + 360 : clock;
    }

    @Override
    public double across(Point place) {
        return StrictMath.hypot(place.x() - centre.x(), place.y() - centre.y());
    }

    @Override
    public double scale(double across) {
        return across * StrictMath.PI / 180;
    }

    /** Where a clock angle lies on the sheet: degrees clockwise from the top, not reduced to a turn. */
    public double onSheet(double clock) {
        return mirrored ? -clock : clock;
    }
}
