package everyblade.core.angle;

import java.util.ArrayList;
import java.util.List;

/**
 * The naive model: a circle so small that a set of its ticks is a bit mask, bit t for tick t. Everything here is done
 * tick by tick, with nothing of the code under test but the constructors.
 */
record TinyCircle(int ticks) {

    Circle circle() {
        return new Circle(ticks);
    }

    int all() {
        return (1 << ticks) - 1;
    }

    boolean has(int mask, int tick) {
        return (mask >> Math.floorMod(tick, ticks) & 1) == 1;
    }

    /** The set of a mask, put together from arcs of one tick. */
    ArcSet set(int mask) {
        List<Arc> single = new ArrayList<>();
        for (int t = 0; t < ticks; t++) {
            if (has(mask, t)) {
                single.add(new Arc(circle(), t, 1));
            }
        }
        return ArcSet.of(circle(), single);
    }

    /** The set of every mask, turned. */
    ArcSet[] sets(int turned) {
        ArcSet[] sets = new ArcSet[all() + 1];
        for (int mask = 0; mask <= all(); mask++) {
            sets[mask] = set(mask).shift(turned);
        }
        return sets;
    }

    int rotate(int mask, int by) {
        int rotated = 0;
        for (int t = 0; t < ticks; t++) {
            rotated |= has(mask, t - by) ? 1 << t : 0;
        }
        return rotated;
    }

    int grow(int mask, int radius) {
        int grown = 0;
        for (int by = -radius; by <= radius; by++) {
            grown |= rotate(mask, by);
        }
        return grown;
    }

    int shrink(int mask, int radius) {
        int shrunk = mask;
        for (int by = -radius; by <= radius; by++) {
            shrunk &= rotate(mask, by);
        }
        return shrunk;
    }

    int mask(int start, int length) {
        int mask = 0;
        for (int i = 0; i < length; i++) {
            mask |= 1 << Math.floorMod(start + i, ticks);
        }
        return mask;
    }

    /** Every arc there is: each start with each length from nothing to a turn. */
    List<Arc> arcs() {
        List<Arc> arcs = new ArrayList<>();
        for (int start = 0; start < ticks; start++) {
            for (int length = 0; length <= ticks; length++) {
                arcs.add(new Arc(circle(), start, length));
            }
        }
        return arcs;
    }

    /** The maximal arcs of a mask in order of their starts. */
    List<Arc> maximalArcs(int mask) {
        if (mask == all()) {
            return List.of(new Arc(circle(), 0, ticks));
        }
        List<Arc> arcs = new ArrayList<>();
        for (int t = 0; t < ticks; t++) {
            if (has(mask, t) && !has(mask, t - 1)) {
                int length = 1;
                while (has(mask, t + length)) {
                    length++;
                }
                arcs.add(new Arc(circle(), t, length));
            }
        }
        return arcs;
    }
}
