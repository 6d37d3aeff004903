package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Remark;
import everyblade.spi.Row;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What was seen of one row: every cell is in exactly one state.
 *
 * <p>What rests on windows is declared, not computed; it is told apart wherever a share is given.
 */
public final class RowCoverage {

    private final Row row;
    private final Zoning zoning;
    private final ZoneSet shown;
    private final ZoneSet asked;
    private final RowTally.Seen seen;
    private final List<Remark> remarks;

    RowCoverage(Row row, Zoning zoning, ZoneSet shown, ZoneSet asked, RowTally.Seen seen, List<Remark> remarks) {
        this.row = row;
        this.zoning = zoning;
        this.shown = shown;
        this.asked = asked;
        this.seen = seen;
        this.remarks = List.copyOf(remarks);
    }

    public Row row() {
        return row;
    }

    public Zoning zoning() {
        return zoning;
    }

    /** Zones that some view of the row shows. */
    public ZoneSet shown() {
        return shown;
    }

    /** Zones that the task asks for. */
    public ZoneSet asked() {
        return asked;
    }

    /** How many cells the row has. */
    public int cells() {
        return row.count() * zoning.size();
    }

    /** The state of a zone of airfoil n, from 1. */
    public State state(int n, int zone) {
        return seen.sure().contains(n, zone) ? State.SEEN : seen.maybe().contains(n, zone) ? State.MAYBE : State.UNSEEN;
    }

    /** Why a cell is not seen; empty if it is. */
    public Optional<Why> why(int n, int zone) {
        return switch (state(n, zone)) {
            case SEEN, PART -> Optional.empty();
            case MAYBE -> Optional.of(seen.lost().contains(n, zone) ? Why.COUNT_LOST : Why.PLAY);
            case UNSEEN ->
                Optional.of(
                        !shown.contains(zone)
                                ? Why.NO_ACCESS
                                : seen.brief().contains(n, zone) ? Why.FAST : Why.SKIPPED);
        };
    }

    /** Whether a remark of this kind was made of a cell. */
    public boolean remarked(Remark.What what, int n, int zone) {
        return remarks.stream()
                .anyMatch(remark -> remark.what() == what
                        && remark.airfoils().get(n - 1)
                        && remark.zones().contains(zone));
    }

    /** The states of these zones, counted over all airfoils. */
    public Tally tally(ZoneSet zones) {
        return IntStream.rangeClosed(1, row.count())
                .mapToObj(n -> tally(n, zones))
                .reduce(Tally.NONE, Tally::plus);
    }

    /** The states of these zones of one airfoil, counted. */
    public Tally tally(int n, ZoneSet zones) {
        Tally sum = Tally.NONE;
        for (int zone = 0; zone < zoning.size(); zone++) {
            if (zones.contains(zone)) {
                sum = sum.plus(Tally.of(
                        state(n, zone),
                        why(n, zone),
                        remarked(Remark.What.STATED, n, zone),
                        remarked(Remark.What.FOUND, n, zone)));
            }
        }
        return sum;
    }
}
