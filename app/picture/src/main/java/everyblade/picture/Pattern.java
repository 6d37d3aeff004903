package everyblade.picture;

import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a cell is covered with, so that its state can be told without colour.
 *
 * <p>Lines and dots lie on a grid that divides the cell evenly. Cells of one row are alike, so hatching runs on from one
 * to the next without a seam, and nothing needs to be clipped.
 */
public enum Pattern {
    /** Nothing. */
    EMPTY,
    /** All of it. */
    SOLID,
    /** Most of it, from its foot up. */
    FILLED_UP,
    /** Lines one way. */
    HATCH,
    /** Lines both ways. */
    CROSS,
    /** Dots. */
    DOTS,
    /** Lines along the row. */
    BARS,
    /** Lines across the row. */
    SLITS;

    /** How far up that is, share of the cell: what is seen as far as it can be is to look done, but not seen. */
    static final double MOST = 0.72;

    /** Degrees of a ring that a straight line may span. */
    private static final double STRAIGHT = 4;

    /**
     * The shape that covers a cell; empty if nothing does.
     *
     * @param spacing mm between lines or dots, at least about so much
     */
    public Optional<DrawnShape> on(Patch patch, double spacing) {
        int along = Math.max(1, (int) (patch.length() / spacing));
        int across = Math.max(1, (int) (patch.height() / spacing));
        return switch (this) {
            case EMPTY -> Optional.empty();
            case SOLID -> Optional.of(patch);
            case FILLED_UP -> Optional.of(patch.part(0, 1, 0, MOST));
            case HATCH -> Optional.of(new Strokes(diagonals(patch, along, across, false)));
            case CROSS -> {
                List<List<Point>> lines = diagonals(patch, along, across, false);
                lines.addAll(diagonals(patch, along, across, true));
                yield Optional.of(new Strokes(lines));
            }
            case DOTS -> Optional.of(dots(patch, along, across));
            case BARS -> {
                List<List<Point>> lines = new ArrayList<>();
                for (int j = 0; j < across; j++) {
                    lines.add(line(patch, 0, (j + 0.5) / across, 1, (j + 0.5) / across));
                }
                yield Optional.of(new Strokes(lines));
            }
            case SLITS -> {
                List<List<Point>> lines = new ArrayList<>();
                for (int i = 0; i < along; i++) {
                    lines.add(line(patch, (i + 0.5) / along, 0, (i + 0.5) / along, 1));
                }
                yield Optional.of(new Strokes(lines));
            }
        };
    }

    /** Whether its lines have a width of their own; otherwise it is filled. */
    boolean isLined() {
        return this == HATCH || this == CROSS || this == BARS || this == SLITS;
    }

    private static List<List<Point>> diagonals(Patch patch, int along, int across, boolean falling) {
        List<List<Point>> lines = new ArrayList<>();
        for (int k = 1 - across; k < along; k++) {
            double low = Math.max(0, -k);
            double high = Math.min(across, along - k);
            double from = (k + low) / along;
            double to = (k + high) / along;
            lines.add(
                    falling
                            ? line(patch, 1 - from, low / across, 1 - to, high / across)
                            : line(patch, from, low / across, to, high / across));
        }
        return lines;
    }

    private static Dots dots(Patch patch, int along, int across) {
        List<Point> centres = new ArrayList<>();
        for (int i = 0; i < along; i++) {
            for (int j = 0; j < across; j++) {
                centres.add(patch.at((i + 0.5) / along, (j + 0.5) / across));
            }
        }
        return new Dots(centres, 0.24 * Math.min(patch.length() / along, patch.height() / across));
    }

    /** A line that is straight in the frame of the patch. */
    private static List<Point> line(Patch patch, double along0, double across0, double along1, double across1) {
        double degrees = patch.frame() instanceof Flat ? 0 : Math.abs(along1 - along0) * (patch.to() - patch.from());
        int pieces = Math.max(1, (int) Math.ceil(degrees / STRAIGHT));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            double share = (double) i / pieces;
            points.add(patch.at(along0 + (along1 - along0) * share, across0 + (across1 - across0) * share));
        }
        return points;
    }
}
