package everyblade.window.view;

/**
 * Which part of a picture shows, and how large: a place of the picture lies on the screen at {@code left + zoom · x},
 * {@code top + zoom · y}. Never so far out that the picture is smaller than fits, never so far in that nothing is left to
 * tell the place by.
 *
 * @param zoom pixels of the screen for each picture element, above 0
 * @param left of the picture on the screen, pixels
 * @param top of the picture on the screen, pixels
 * @param room what shows the picture
 */
public record Framing(double zoom, double left, double top, Room room) {

    private static final double MOST = 16;
    /** So much of the picture always stays in sight, pixels. */
    private static final double KEPT = 40;

    /**
     * Sizes that belong together.
     *
     * @param width of the screen's part, pixels
     * @param height of the screen's part, pixels
     * @param wide picture elements across
     * @param high picture elements down
     */
    public record Room(int width, int height, int wide, int high) {

        private double fitting() {
            return Math.min((double) Math.max(1, width) / wide, (double) Math.max(1, height) / high);
        }
    }

    /** The whole picture in the middle. */
    public static Framing whole(Room room) {
        double zoom = room.fitting();
        return new Framing(
                zoom, (room.width() - zoom * room.wide()) / 2, (room.height() - zoom * room.high()) / 2, room);
    }

    /** So many times as large; what is at this place of the screen stays there. */
    public Framing zoomed(double factor, double x, double y) {
        double least = room.fitting();
        double next = Math.max(least, Math.min(Math.max(MOST, least), zoom * factor));
        if (next == least) {
            return whole(room);
        }
        double ratio = next / zoom;
        return new Framing(next, x - ratio * (x - left), y - ratio * (y - top), room).kept();
    }

    /** The same, round the middle of the screen's part. */
    public Framing zoomed(double factor) {
        return zoomed(factor, room.width() / 2.0, room.height() / 2.0);
    }

    /** Moved on the screen, pixels. */
    public Framing moved(double right, double down) {
        return new Framing(zoom, left + right, top + down, room).kept();
    }

    private Framing kept() {
        return new Framing(
                zoom,
                Math.max(KEPT - zoom * room.wide(), Math.min(room.width() - KEPT, left)),
                Math.max(KEPT - zoom * room.high(), Math.min(room.height() - KEPT, top)),
                room);
    }

    /** The same part of the picture after the screen's part has got another size. */
    public Framing in(int width, int height) {
        Room other = new Room(width, height, room.wide(), room.high());
        boolean whole = equals(whole(room));
        return whole || zoom < other.fitting() ? whole(other) : new Framing(zoom, left, top, other).kept();
    }

    /** Where a place of the picture lies on the screen, from the left. */
    public double across(double x) {
        return left + zoom * x;
    }

    /** Where a place of the picture lies on the screen, from the top. */
    public double down(double y) {
        return top + zoom * y;
    }

    /** Which place of the picture lies there, from its left. */
    public double x(double across) {
        return (across - left) / zoom;
    }

    /** Which place of the picture lies there, from its top. */
    public double y(double down) {
        return (down - top) / zoom;
    }
}
