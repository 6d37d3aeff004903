package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * How far rows are: cells are counted, not surface, so that what is complete looks complete. A cell that no view shows
 * well enough is neither done nor left.
 *
 * @param cells of the rows, by state
 * @param begun whether anything of their surface was seen, or maybe seen
 */
public record RowProgress(Tally cells, boolean begun) {

    /** What is to be said first of rows. */
    public enum Stage {
        /** No view shows any of it well enough. */
        NO_VIEW,
        NOT_BEGUN,
        COMPLETE,
        /** Some cells are only maybe seen. */
        MAYBE,
        /** Some cells are left, none of them maybe. */
        LEFT
    }

    /** Of one row. */
    public static RowProgress of(RowCoverage row) {
        return new RowProgress(
                row.tally(row.zoning().all()), row.areas(row.zoning().all()).maybe() > 0);
    }

    /** Of several rows together. */
    public static RowProgress of(Collection<RowCoverage> rows) {
        List<RowProgress> each = rows.stream().map(RowProgress::of).toList();
        return new RowProgress(
                each.stream().map(RowProgress::cells).reduce(Tally.NONE, Tally::plus),
                each.stream().anyMatch(RowProgress::begun));
    }

    public Stage stage() {
        if (cells.within() == 0) {
            return Stage.NO_VIEW;
        }
        if (cells.left() == 0) {
            return Stage.COMPLETE;
        }
        if (cells.maybe() > 0) {
            return Stage.MAYBE;
        }
        return begun ? Stage.LEFT : Stage.NOT_BEGUN;
    }

    /** That in a few words, such as {@code 13 maybe}. */
    public String stage(MapWords words) {
        return words.say(
                "progress." + stage().name().toLowerCase(Locale.ROOT),
                stage() == Stage.MAYBE ? cells.maybe() : cells.left());
    }

    /** Of the cells that views can show well enough, the share that is seen. */
    public double seen() {
        return share(cells.seen());
    }

    /** Of these, the share that is seen as far as it can be. */
    public double part() {
        return share(cells.part());
    }

    /** Of these, the share that is only maybe seen. */
    public double maybe() {
        return share(cells.maybe());
    }

    private double share(int some) {
        return cells.within() == 0 ? 0 : (double) some / cells.within();
    }

    /** What is done, in whole per cent: never rounded up, and never nothing where there is something. */
    public String percent() {
        int done = cells.seen() + cells.part();
        if (cells.within() == 0) {
            return "–";
        }
        long whole = 100L * done / cells.within();
        return whole == 0 && done > 0 ? "<1 %" : whole + " %";
    }
}
