package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Shape.Patch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One row unrolled, for a screen. Immutable; {@link #after} keeps the groups of airfoils that look as before.
 */
public final class ScreenStrip implements CellPicture {

    private static final double MARGIN = 2;

    private final Strip strip;
    private final double fine;
    private final DrawnAirfoils drawn;
    private final Scene scene;

    private ScreenStrip(
            Strip strip, Remarked remarked, double fine, DrawnAirfoils before, double width, double height) {
        this.strip = strip;
        this.fine = fine;
        RowCoverage row = strip.coverage();
        drawn = strip.drawn(before, remarked, fine);
        List<Group> groups = new ArrayList<>(drawn.groups());
        groups.add(strip.words());
        scene = new Scene(
                width,
                height,
                row.row().name() + " (" + row.row().id() + ") unrolled",
                row.row().count() + " " + row.row().kind().airfoil() + "s from left to right, root lowest",
                groups);
    }

    /**
     * The strip of a row.
     *
     * @param row id of a row of the engine
     * @param width of the sheet, mm
     * @param height of the sheet, mm
     * @param fine mm below which a cell is too small for a pattern to be told
     */
    public static ScreenStrip of(Coverage coverage, String row, double width, double height, double fine) {
        return new ScreenStrip(
                strip(coverage.row(row), width, height),
                Remarked.of(coverage, row),
                fine,
                DrawnAirfoils.NONE,
                width,
                height);
    }

    /** The strip of the same or another row, or on another sheet. */
    public ScreenStrip after(Coverage coverage, String id, double width, double height, double nowFine) {
        RowCoverage row = coverage.row(id);
        Strip next = strip(row, width, height);
        boolean inPlace = row.row().equals(strip.coverage().row())
                && width == scene.width()
                && height == scene.height()
                && nowFine == fine;
        return new ScreenStrip(
                next, Remarked.of(coverage, id), nowFine, inPlace ? drawn : DrawnAirfoils.NONE, width, height);
    }

    private static Strip strip(RowCoverage row, double width, double height) {
        return Strip.onScreen(row, new Point(MARGIN, MARGIN), width - 2 * MARGIN, height - 2 * MARGIN);
    }

    @Override
    public Scene scene() {
        return scene;
    }

    @Override
    public Scene margin() {
        return new Scene(scene.width(), scene.height(), "", "", List.of());
    }

    @Override
    public boolean covers(Point place) {
        return false;
    }

    @Override
    public Optional<Cell> cellAt(Point place) {
        return strip.cellAt(place);
    }

    @Override
    public List<Patch> patches(Cell cell) {
        return has(cell) ? List.of(strip.plan().patch(cell.zone(), strip.patch(cell.airfoil()))) : List.of();
    }

    private boolean has(Cell cell) {
        RowCoverage row = strip.coverage();
        return cell.row().equals(row.row().id())
                && cell.airfoil() >= 1
                && cell.airfoil() <= row.row().count()
                && cell.zone() >= 0
                && cell.zone() < row.zoning().size();
    }

    @Override
    public Optional<Cell> first() {
        return Optional.of(new Cell(strip.coverage().row().id(), 1, 0));
    }

    @Override
    public Cell next(Cell from, Step step) {
        int count = strip.coverage().row().count();
        int airfoils =
                step == Step.RIGHT || step == Step.NEXT ? 1 : step == Step.LEFT || step == Step.PREVIOUS ? -1 : 0;
        int airfoil = Math.floorMod(from.airfoil() - 1 + airfoils, count) + 1;
        ZonePlan plan = strip.plan();
        int up = step == Step.UP ? 1 : step == Step.DOWN ? -1 : 0;
        int band = plan.places().get(from.zone()).band() + up;
        int within = Math.max(0, Math.min(plan.bands() - 1, band));
        return new Cell(from.row(), airfoil, plan.zone(0, within));
    }
}
