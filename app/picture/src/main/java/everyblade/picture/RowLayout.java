package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import java.util.List;

/** The row that a person looks into alone, else the first one: unrolled over the whole sheet, each finding with its sign. */
final class RowLayout implements ScreenLayout {

    private static final double NAMES_SHARE = 0.25;
    private static final double EDGE = 1;
    private static final double LETTERS = 2.6;

    private final Coverage coverage;
    private final ScreenView view;
    private final RowStrip strip;

    RowLayout(Coverage coverage, ScreenView view) {
        this.coverage = coverage;
        this.view = view;
        RowCoverage row =
                coverage.row(view.chosen().orElse(coverage.rows().get(0).row().id()));
        double foot = view.foot();
        strip = RowStrip.opened(
                row,
                new Point(EDGE, EDGE),
                view.width() - 2 * EDGE,
                Math.max(1, view.height() - foot - 2 * EDGE),
                Math.min(NAMES_SHARE * view.width(), names(row)),
                view.words());
    }

    /** What the longest name of a zone takes, mm. */
    private double names(RowCoverage row) {
        return 2 * EDGE
                + row.zoning().names().stream()
                        .mapToDouble(name -> Lettering.length(view.words().zone(name), LETTERS) * Lettering.SLACK)
                        .max()
                        .orElse(0);
    }

    @Override
    public List<RowStrip> rows() {
        return List.of(strip);
    }

    @Override
    public List<Group> words() {
        return List.of(
                strip.words(),
                Signs.of(coverage, strip.coverage().row().id()).beside(strip, LETTERS, view.words()),
                view.legendAtFoot());
    }

    @Override
    public Cell next(Cell from, MapStep step) {
        return switch (step) {
            case RIGHT, NEXT -> strip.beside(from, 1);
            case LEFT, PREVIOUS -> strip.beside(from, -1);
            case UP -> strip.over(from, 1).orElse(from);
            case DOWN -> strip.over(from, -1).orElse(from);
        };
    }

    @Override
    public String title() {
        RowCoverage row = strip.coverage();
        return view.words()
                .say(
                        "row.title",
                        row.row().name(),
                        row.row().id(),
                        row.row().count(),
                        view.words().some(row.row(), row.row().count()));
    }

    @Override
    public String summary() {
        return view.words().say("screen.strips.order");
    }
}
