package everyblade.core.sight;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * A row that is looked at, and all that may stand between it and a scope tip. Never changes; what it needs for fast answers is
 * built once, when it is made.
 */
public final class SightScene {

    private final Ring row;
    private final Zoning zoning;
    private final Facets facets;
    private final List<RingShade> turning;
    private final List<RingShade> fixed;
    private final List<Wall> walls;
    private final List<Mesh> swept;
    private final Revolved revolved;

    private SightScene(
            Ring row,
            Zoning zoning,
            Facets facets,
            List<RingShade> turning,
            List<RingShade> fixed,
            List<Wall> walls,
            List<Mesh> swept) {
        this.row = row;
        this.zoning = zoning;
        this.facets = facets;
        this.turning = List.copyOf(turning);
        this.fixed = List.copyOf(fixed);
        this.walls = List.copyOf(walls);
        this.swept = List.copyOf(swept);
        this.revolved = Revolved.of(this.walls, this.swept);
    }

    /** A row alone: its airfoils hide one another and themselves. */
    public static SightScene of(Mesh airfoil, int count, Zoning zoning) {
        Ring row = new Ring(airfoil, count);
        return new SightScene(
                row, zoning, Facets.of(airfoil), List.of(new RingShade(row)), List.of(), List.of(), List.of());
    }

    /** With a ring that turns as the row does, such as an impeller's splitters; clock angles are those at which the row's first airfoil stands at clock 0. */
    public SightScene withMate(Ring mate) {
        return new SightScene(row, zoning, facets, with(turning, new RingShade(mate)), fixed, walls, swept);
    }

    /** With a row that stands still as the scope tip does, at its clock angles in the engine. */
    public SightScene withFixed(Ring other) {
        return new SightScene(row, zoning, facets, turning, with(fixed, new RingShade(other)), walls, swept);
    }

    /** With a wall of revolution. */
    public SightScene withWall(Wall wall) {
        return new SightScene(row, zoning, facets, turning, fixed, with(walls, wall), swept);
    }

    /** With a row that turns otherwise than this one: all that its airfoil sweeps in a turn hides. */
    SightScene withSwept(Mesh airfoil) {
        return new SightScene(row, zoning, facets, turning, fixed, walls, with(swept, airfoil));
    }

    private static <T> List<T> with(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }

    /** The row that is looked at. */
    public Ring row() {
        return row;
    }

    /** How the row is divided. */
    public Zoning zoning() {
        return zoning;
    }

    /** The facets of one airfoil, standing at clock 0. */
    public Facets facets() {
        return facets;
    }

    List<RingShade> turning() {
        return turning;
    }

    List<RingShade> fixed() {
        return fixed;
    }

    Revolved revolved() {
        return revolved;
    }
}
