package everyblade.picture.scene;

import java.util.List;

/** What can lie on a sheet. */
public sealed interface DrawnShape {

    /**
     * A rectangle of a frame: on a ring, a sector of it.
     *
     * @param frame whose coordinates the others are in
     * @param from least place along the row
     * @param to greatest place along the row; on a ring at most a turn after {@code from}
     * @param low least height across the row
     * @param high greatest height across the row
     */
    record Patch(Frame frame, double from, double to, double low, double high) implements DrawnShape {

        /** How long it is at half its height, mm. */
        public double length() {
            return (to - from) * frame.scale((low + high) / 2);
        }

        /** How high it is, mm. */
        public double height() {
            return high - low;
        }

        /** Its middle. */
        public Point middle() {
            return at(0.5, 0.5);
        }

        /** A place in it, both shares from 0 to 1. */
        public Point at(double alongShare, double acrossShare) {
            return frame.at(from + (to - from) * alongShare, low + (high - low) * acrossShare);
        }

        /** What is left of it so many mm from its edges; at least its middle. */
        public Patch within(double edge) {
            double along = Math.min(0.5, edge / length());
            double across = Math.min(0.5, edge / height());
            return part(along, 1 - along, across, 1 - across);
        }

        /** A part of it, all shares from 0 to 1. */
        public Patch part(double fromShare, double toShare, double lowShare, double highShare) {
            return new Patch(
                    frame,
                    from + (to - from) * fromShare,
                    from + (to - from) * toShare,
                    low + (high - low) * lowShare,
                    low + (high - low) * highShare);
        }
    }

    /** Open lines, each through two or more places. */
    record Strokes(List<List<Point>> lines) implements DrawnShape {

        public Strokes {
            lines = lines.stream().map(List::copyOf).toList();
        }

        /** One straight line. */
        public static Strokes line(Point from, Point to) {
            return new Strokes(List.of(List.of(from, to)));
        }
    }

    /** A closed line through three or more places. */
    record Polygon(List<Point> corners) implements DrawnShape {

        public Polygon {
            corners = List.copyOf(corners);
        }

        /** An upright rectangle. */
        public static Polygon box(double x, double y, double width, double height) {
            return new Polygon(List.of(
                    new Point(x, y),
                    new Point(x + width, y),
                    new Point(x + width, y + height),
                    new Point(x, y + height)));
        }
    }

    /** Round dots of one size. */
    record Dots(List<Point> centres, double radius) implements DrawnShape {

        public Dots {
            centres = List.copyOf(centres);
        }
    }

    /**
     * One line of text.
     *
     * @param at where its anchor stands on the base line
     * @param words what it says
     * @param size height of its font, mm
     * @param anchor which part of it stands at {@code at}
     * @param angle degrees by which it is turned clockwise about {@code at}
     */
    record Text(Point at, String words, double size, Anchor anchor, double angle) implements DrawnShape {

        /** Upright text. */
        public static Text upright(Point at, String words, double size, Anchor anchor) {
            return new Text(at, words, size, anchor, 0);
        }

        /** How long it is, mm. */
        public double length() {
            return Lettering.length(words, size);
        }
    }

    /** Which part of a text stands at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END;

        /** Share of the text that lies before its place. */
        public double share() {
            return ordinal() / 2.0;
        }
    }
}
