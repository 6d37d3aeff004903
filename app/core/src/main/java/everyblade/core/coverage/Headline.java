package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import java.util.Collection;

/**
 * The three figures that are told together, in this order, wherever one of them is: each alone would flatter. A cell that
 * is seen as far as it can be is not left, however little that is; one that was accepted as not seen is.
 *
 * @param left cells that views can show well enough and that are neither seen nor seen as far as they can be
 * @param within cells that views can show well enough
 * @param seen share of the surface that is surely seen, 0 to 1; where no surface is known every cell weighs the same
 * @param beyond share of the surface that no view shows well enough, 0 to 1
 */
public record Headline(int left, int within, double seen, double beyond) {

    /** The figures of whole rows that rest on the same. */
    public static Headline of(Collection<RowCoverage> rows) {
        Tally cells = Tally.NONE;
        double all = 0;
        double reach = 0;
        double seen = 0;
        for (RowCoverage row : rows) {
            ZoneSet zones = row.zoning().all();
            Areas areas = row.areas(zones);
            double surface = row.surface(zones);
            cells = cells.plus(row.tally(zones));
            all += surface;
            reach += areas.reach() * surface;
            seen += areas.seen() * surface;
        }
        return all > 0 ? of(cells, new Areas(reach / all, seen / all, 0)) : new Headline(0, 0, 0, 0);
    }

    static Headline of(Tally cells, Areas areas) {
        return new Headline(cells.left(), cells.within(), areas.seen(), 1 - areas.reach());
    }

    /** What is left of what views can show, share of these cells; 0 if they can show none. */
    public double leftShare() {
        return within == 0 ? 0 : (double) left / within;
    }
}
