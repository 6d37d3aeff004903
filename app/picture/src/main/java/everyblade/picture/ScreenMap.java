package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Shape.Patch;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The map for a screen: all rows as rings about one axis, in the order in which the air passes them, the first
 * innermost; the enlarged one a second time, large round all of them.
 *
 * <p>Immutable. {@link #after} draws only the airfoils that look otherwise than before, and keeps the groups of the
 * others, so whoever paints can tell by them what has changed. Finding a cell costs a look at each ring.
 */
public final class ScreenMap implements CellPicture {

    private final ScreenView view;
    private final RingPlan plan;
    private final List<Ring> rings;
    private final Optional<Ring> large;
    private final List<DrawnAirfoils> drawn;
    private final Scene scene;
    private final Corners corners;

    private ScreenMap(Coverage coverage, MapFacts facts, ScreenView view, Optional<ScreenMap> before) {
        this.view = view;
        corners = Corners.of(coverage, facts, view);
        List<RowCoverage> rows = coverage.rows();
        plan = RingPlan.of(view, corners.radius(), rows.size());
        rings = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            rings.add(plan.ring(rows.get(i), standing(coverage, rows.get(i)), i));
        }
        large = view.enlarged()
                .map(id -> rows.stream()
                        .filter(row -> row.row().id().equals(id))
                        .findFirst()
                        .orElseThrow(
                                () -> new IllegalArgumentException("there is no row " + id + " in " + facts.model())))
                .map(row -> plan.large(row, standing(coverage, row)));
        drawn = new ArrayList<>();
        List<Group> groups = new ArrayList<>();
        List<Ring> all = Stream.concat(rings.stream(), large.stream()).toList();
        for (int i = 0; i < all.size(); i++) {
            Ring ring = all.get(i);
            DrawnAirfoils one = ring.drawn(
                    before.map(map -> map.drawnAs(ring)).orElse(DrawnAirfoils.NONE),
                    Remarked.of(coverage, ring.coverage().row().id()),
                    view.fine());
            drawn.add(one);
            groups.addAll(one.groups());
        }
        groups.addAll(new RingWords(plan, coverage, view).of(rings, large));
        scene = new Scene(
                view.width(),
                view.height(),
                "Coverage map of " + facts.model() + ", serial " + facts.serial(),
                rows.size() + " rows as rings, "
                        + MapWords.ENGLISH.facing(view.style().facing()),
                groups);
    }

    /**
     * The map of a coverage.
     *
     * @throws IllegalArgumentException if the engine has no row of the enlarged id
     */
    public static ScreenMap of(Coverage coverage, MapFacts facts, ScreenView view) {
        return new ScreenMap(coverage, facts, view, Optional.empty());
    }

    /** The map of another coverage of the same engine, or looked at otherwise. */
    public ScreenMap after(Coverage coverage, MapFacts facts, ScreenView next) {
        return new ScreenMap(coverage, facts, next, Optional.of(this).filter(map -> map.view.fine() == next.fine()));
    }

    private Standing standing(Coverage coverage, RowCoverage row) {
        Standing now = Standing.of(coverage.situation(), row.row());
        return !view.turning() && row.row().kind() == RowKind.ROTOR ? now.onTop() : now;
    }

    /** How a ring was drawn here, if it lay in the same place. */
    private DrawnAirfoils drawnAs(Ring ring) {
        for (int i = 0; i < drawn.size(); i++) {
            Ring mine = i < rings.size() ? rings.get(i) : large.orElseThrow();
            if (mine.liesLike(ring)) {
                return drawn.get(i);
            }
        }
        return DrawnAirfoils.NONE;
    }

    @Override
    public Scene scene() {
        return scene;
    }

    @Override
    public Scene margin() {
        return new Scene(view.width(), view.height(), "", "", corners.groups());
    }

    @Override
    public boolean covers(Point place) {
        return corners.cover(place);
    }

    @Override
    public Optional<Cell> cellAt(Point place) {
        return Stream.concat(large.stream(), rings.stream())
                .flatMap(ring -> ring.cellAt(place).stream())
                .findFirst();
    }

    @Override
    public List<Patch> patches(Cell cell) {
        return Stream.concat(large.stream(), rings.stream())
                .filter(ring -> ring.has(cell))
                .map(ring -> ring.plan().patch(cell.zone(), ring.patch(cell.airfoil())))
                .toList();
    }

    @Override
    public Optional<Cell> first() {
        return Stream.concat(large.stream(), rings.stream())
                .findFirst()
                .map(ring -> new Cell(ring.coverage().row().id(), 1, 0));
    }

    @Override
    public Cell next(Cell from, Step step) {
        return new RingWalk(rings).next(from, step);
    }
}
