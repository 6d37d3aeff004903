package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import java.util.BitSet;
import java.util.Optional;

/**
 * Cells seen through windows: a cell is in sight as a whole, or not.
 *
 * @param shown zones that some window shows
 * @param seen what was seen
 */
record DeclaredCells(ZoneSet shown, RowTally.Seen seen) implements Cells {

    @Override
    public Basis basis() {
        return Basis.DECLARED;
    }

    @Override
    public State state(int n, int zone) {
        return seen.sure().contains(n, zone) ? State.SEEN : seen.maybe().contains(n, zone) ? State.MAYBE : State.UNSEEN;
    }

    @Override
    public Optional<Why> why(int n, int zone) {
        return switch (state(n, zone).grade()) {
            case DONE -> Optional.empty();
            case DOUBTFUL -> Optional.of(doubt(n, zone));
            case LEFT -> Optional.of(shown.contains(zone) ? omission(n, zone) : Why.NO_ACCESS);
        };
    }

    private Why doubt(int n, int zone) {
        if (seen.lost().contains(n, zone)) {
            return Why.COUNT_LOST;
        }
        return seen.counted().contains(n, zone) ? Why.PLAY : Why.SLIP;
    }

    private Why omission(int n, int zone) {
        if (seen.brief().contains(n, zone)) {
            return Why.FAST;
        }
        return seen.unwatched().contains(n, zone) ? Why.NOT_WATCHED : Why.SKIPPED;
    }

    @Override
    public boolean lacksEdgeAlone(int n, int zone) {
        return false;
    }

    @Override
    public Optional<Hindrance> hindrance(int n, int zone) {
        return Optional.empty();
    }

    @Override
    public BitSet surely(int n) {
        return seen.sure().parts(n);
    }

    @Override
    public BitSet wholly(int n) {
        return new BitSet();
    }

    @Override
    public boolean doneBy(int n, int zone, BitSet parts, BitSet whole) {
        return parts.get(zone);
    }

    @Override
    public Areas areas(int n, ZoneSet zones) {
        int sure = 0;
        int maybe = 0;
        for (long rest = zones.bits(); rest != 0; rest &= rest - 1) {
            State state = state(n, Long.numberOfTrailingZeros(rest));
            sure += state == State.SEEN ? 1 : 0;
            maybe += state == State.SEEN || state == State.MAYBE ? 1 : 0;
        }
        double all = Math.max(1, zones.size());
        return new Areas(zones.intersection(shown).size() / all, sure / all, maybe / all);
    }

    @Override
    public double surface(ZoneSet zones) {
        return zones.size();
    }

    @Override
    public Optional<Reach> reach() {
        return Optional.empty();
    }
}
