package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rows of cells on a screen, laid out in one of several ways, that can be asked what lies where: the answers come from the
 * same geometry as the scene.
 *
 * <p>Immutable. {@link #after} draws only the airfoils that look otherwise than before, and keeps the groups of the
 * others, so whoever paints can tell by them what has changed. Finding a cell costs a look at each row.
 */
public final class ScreenPicture {

    /** From the middle of its sign to its corners, mm. */
    private static final double DAMAGE = 1.3;

    private final ScreenLayout layout;
    private final double fine;
    private final List<DrawnAirfoils> drawn;
    private final Scene scene;

    private ScreenPicture(ScreenLayout layout, Coverage coverage, ScreenView view, Optional<ScreenPicture> before) {
        this.layout = layout;
        this.fine = view.fine();
        this.drawn = new ArrayList<>();
        List<Group> groups = new ArrayList<>();
        for (RowPlace row : layout.rows()) {
            DrawnAirfoils now = row.drawn(
                    before.filter(picture -> picture.fine == fine)
                            .map(picture -> picture.drawnAs(row))
                            .orElse(DrawnAirfoils.NONE),
                    Remarked.of(coverage, row.coverage().row().id(), Remark.What.STATED),
                    fine);
            drawn.add(now);
            groups.addAll(now.groups());
        }
        layout.rows().forEach(row -> groups.add(damaged(coverage, row)));
        groups.addAll(layout.words());
        String figures = view.figures()
                ? ". " + new ShareFigures(coverage.headline(coverage.leading()), view.words()).line()
                : "";
        scene = new Scene(view.width(), view.height(), layout.title(), layout.summary() + figures, groups);
    }

    /** The picture of a coverage. */
    public static ScreenPicture of(ScreenKind kind, Coverage coverage, ScreenView view) {
        return new ScreenPicture(kind.layout(coverage, view), coverage, view, Optional.empty());
    }

    /** The picture of another coverage of the same engine, or laid out or looked at otherwise. */
    public ScreenPicture after(ScreenKind kind, Coverage coverage, ScreenView view) {
        return new ScreenPicture(kind.layout(coverage, view), coverage, view, Optional.of(this));
    }

    /** Over all airfoils, for it is larger than the least of them. */
    private static Group damaged(Coverage coverage, RowPlace row) {
        String id = row.coverage().row().id();
        Remarked found = Remarked.of(coverage, id, Remark.What.FOUND);
        List<Item> items = new ArrayList<>();
        if (!found.remarks().isEmpty()) {
            for (int n = 1; n <= row.coverage().row().count(); n++) {
                for (int zone = 0; zone < row.coverage().zoning().size(); zone++) {
                    if (found.has(n, zone)) {
                        items.add(AirfoilDrawing.damage(
                                row.patch(new Cell(id, n, zone)).middle(), DAMAGE));
                    }
                }
            }
        }
        return Group.of(items);
    }

    /** How a row was drawn here, if it lay in the same place. */
    private DrawnAirfoils drawnAs(RowPlace row) {
        for (int i = 0; i < drawn.size(); i++) {
            if (layout.rows().get(i).liesLike(row)) {
                return drawn.get(i);
            }
        }
        return DrawnAirfoils.NONE;
    }

    /** What is drawn. */
    public Scene scene() {
        return scene;
    }

    /** The cell that a place on the sheet lies in; empty where there is none. */
    public Optional<Cell> cellAt(Point place) {
        return layout.rows().stream().flatMap(row -> row.cellAt(place).stream()).findFirst();
    }

    /** Where a cell is drawn; empty if it is not in this picture. */
    public Optional<Patch> patch(Cell cell) {
        return layout.rows().stream().filter(row -> row.has(cell)).findFirst().map(row -> row.patch(cell));
    }

    /** The cell from which to start walking; empty if there is none. */
    public Optional<Cell> first() {
        return layout.rows().stream()
                .findFirst()
                .map(row -> new Cell(row.coverage().row().id(), 1, 0));
    }

    /** The next cell on a walk; the same one where there is none that way. */
    public Cell next(Cell from, MapStep step) {
        return layout.next(from, step);
    }
}
