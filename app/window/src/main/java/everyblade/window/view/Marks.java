package everyblade.window.view;

import everyblade.core.finding.measure.PixelLine;
import java.util.Optional;

/**
 * The points that are set in a picture: two for the known length, two for the size; all within the picture, and never two
 * ends of a line at the same place. One of them may be chosen, to be moved.
 *
 * @param known where the known length is
 * @param size what is to be measured
 * @param chosen 0 and 1 for the ends of the known length, 2 and 3 for those of the size, −1 for none
 * @param width of the picture
 * @param height of the picture
 */
public record Marks(Optional<PixelLine> known, Optional<PixelLine> size, int chosen, int width, int height) {

    private static final int NONE = -1;

    /** What a line is for. */
    public enum Tool {
        KNOWN,
        SIZE
    }

    /** None yet. */
    public static Marks none(int width, int height) {
        return new Marks(Optional.empty(), Optional.empty(), NONE, width, height);
    }

    /** The line of a tool. */
    public Optional<PixelLine> line(Tool tool) {
        return tool == Tool.KNOWN ? known : size;
    }

    /** A line from one place to another, its second end chosen; nothing changes if they are the same. */
    public Marks with(Tool tool, double x1, double y1, double x2, double y2) {
        return with(tool, tool.ordinal() * 2 + 1, x(x1), y(y1), x(x2), y(y2));
    }

    private Marks with(Tool tool, int end, double x1, double y1, double x2, double y2) {
        if (x1 == x2 && y1 == y2) {
            return this;
        }
        Optional<PixelLine> line = Optional.of(new PixelLine(x1, y1, x2, y2));
        return tool == Tool.KNOWN
                ? new Marks(line, size, end, width, height)
                : new Marks(known, line, end, width, height);
    }

    /**
     * Takes a tool up: its line as it is, or a level one about this place, with its first end chosen.
     *
     * @param half of a new line's length
     */
    public Marks taken(Tool tool, double x, double y, double half) {
        int first = tool.ordinal() * 2;
        Marks there = line(tool).isPresent() ? this : with(tool, x - half, y, x + half, y);
        return there.line(tool).isPresent() ? new Marks(there.known, there.size, first, width, height) : this;
    }

    /** With the next of the ends chosen that are there; nothing of none. */
    public Marks next() {
        for (int step = 1; step <= 4; step++) {
            int end = (chosen + step) % 4;
            if (line(tool(end)).isPresent()) {
                return new Marks(known, size, end, width, height);
            }
        }
        return this;
    }

    /** With no end chosen. */
    public Marks released() {
        return new Marks(known, size, NONE, width, height);
    }

    /** With the nearest end chosen, if one is so near; else with none. */
    public Marks nearest(double x, double y, double within) {
        int best = NONE;
        double least = within;
        for (int end = 0; end < 4; end++) {
            Optional<double[]> place = end(end);
            if (place.isPresent()) {
                double apart = Math.hypot(place.get()[0] - x, place.get()[1] - y);
                if (apart <= least) {
                    least = apart;
                    best = end;
                }
            }
        }
        return new Marks(known, size, best, width, height);
    }

    /** Whether an end is chosen. */
    public boolean isChosen() {
        return chosen != NONE;
    }

    /** Where the chosen end is: x and y; empty if none is. */
    public Optional<double[]> place() {
        return isChosen() ? end(chosen) : Optional.empty();
    }

    private Optional<double[]> end(int end) {
        return line(tool(end))
                .map(line -> end % 2 == 0 ? new double[] {line.x1(), line.y1()} : new double[] {line.x2(), line.y2()});
    }

    /** The chosen end moved by so much. */
    public Marks moved(double right, double down) {
        return place().map(at -> movedTo(at[0] + right, at[1] + down)).orElse(this);
    }

    /** The chosen end moved to a place. */
    public Marks movedTo(double x, double y) {
        if (!isChosen()) {
            return this;
        }
        Tool tool = tool(chosen);
        PixelLine line = line(tool).orElseThrow();
        return chosen % 2 == 0
                ? with(tool, chosen, x(x), y(y), line.x2(), line.y2())
                : with(tool, chosen, line.x1(), line.y1(), x(x), y(y));
    }

    private static Tool tool(int end) {
        return end < 2 ? Tool.KNOWN : Tool.SIZE;
    }

    private double x(double x) {
        return Math.max(0, Math.min(width, x));
    }

    private double y(double y) {
        return Math.max(0, Math.min(height, y));
    }
}
