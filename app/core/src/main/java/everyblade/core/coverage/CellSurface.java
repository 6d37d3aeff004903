package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import java.util.function.IntFunction;

/**
 * The surface of cells of an airfoil, mm².
 *
 * @param own all of it
 * @param reach of it, within reach of some view
 * @param seen surely seen
 * @param maybe surely or maybe seen
 */
record CellSurface(double own, double reach, double seen, double maybe) {

    /** Of several zones together, always added up in the same order. */
    static CellSurface of(ZoneSet zones, IntFunction<CellSurface> each) {
        CellSurface sum = new CellSurface(0, 0, 0, 0);
        for (long rest = zones.bits(); rest != 0; rest &= rest - 1) {
            sum = sum.plus(each.apply(Long.numberOfTrailingZeros(rest)));
        }
        return sum;
    }

    private CellSurface plus(CellSurface other) {
        return new CellSurface(own + other.own, reach + other.reach, seen + other.seen, maybe + other.maybe);
    }

    Areas shares() {
        return own > 0 ? new Areas(reach / own, seen / own, maybe / own) : new Areas(0, 0, 0);
    }
}
