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
    private final StripView view;
    private final DrawnAirfoils drawn;
    private final Scene scene;

    private ScreenStrip(Strip strip, Remarked remarked, StripView view, DrawnAirfoils before) {
        this.strip = strip;
        this.view = view;
        RowCoverage row = strip.coverage();
        drawn = strip.drawn(before, remarked, view.fine());
        List<Group> groups = new ArrayList<>(drawn.groups());
        groups.add(strip.words());
        scene = new Scene(
                view.width(),
                view.height(),
                row.row().name() + " (" + row.row().id() + ") unrolled",
                row.row().count() + " " + row.row().kind().airfoil() + "s from left to right, root lowest",
                groups);
    }

    /**
     * The strip of a row.
     *
     * @param row id of a row of the engine
     */
    public static ScreenStrip of(Coverage coverage, String row, StripView view) {
        return new ScreenStrip(strip(coverage.row(row), view), Remarked.of(coverage, row), view, DrawnAirfoils.NONE);
    }

    /** The strip of the same or another row, or looked at otherwise. */
    public ScreenStrip after(Coverage coverage, String id, StripView next) {
        RowCoverage row = coverage.row(id);
        boolean inPlace = row.row().equals(strip.coverage().row()) && next.equals(view);
        return new ScreenStrip(strip(row, next), Remarked.of(coverage, id), next, inPlace ? drawn : DrawnAirfoils.NONE);
    }

    private static Strip strip(RowCoverage row, StripView view) {
        return Strip.onScreen(
                row, new Point(MARGIN, MARGIN), view.width() - 2 * MARGIN, view.height() - 2 * MARGIN, view.words());
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
