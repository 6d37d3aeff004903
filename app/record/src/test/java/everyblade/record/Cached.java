package everyblade.record;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A content that is read as it is now, while only part of it is safe: what is between are changes that a cut in power
 * keeps or loses one by one. Contents are never changed in place.
 */
final class Cached<T> {

    private T now;
    private T safe;
    private final List<UnaryOperator<T>> pending = new ArrayList<>();

    Cached(T safe) {
        this.now = safe;
        this.safe = safe;
    }

    T now() {
        return now;
    }

    int pending() {
        return pending.size();
    }

    /** Changes what is read, by changes that together lead from what it was to {@code next}. */
    void change(T next, List<UnaryOperator<T>> changes) {
        now = next;
        pending.addAll(changes);
    }

    void change(UnaryOperator<T> change) {
        change(change.apply(now), List.of(change));
    }

    /** Makes the changes safe; not all that is read, for what was forgotten stays forgotten. */
    void force() {
        pending.forEach(change -> safe = change.apply(safe));
        pending.clear();
    }

    /** Forgets that the changes are not safe, as a failed force may. */
    void forget() {
        pending.clear();
    }

    /** What is found if of the pending changes those are kept whose bits are set, from {@code firstBit} on. */
    T afterPowerCut(BitSet kept, int firstBit) {
        T found = safe;
        for (int change = 0; change < pending.size(); change++) {
            found = kept.get(firstBit + change) ? pending.get(change).apply(found) : found;
        }
        return found;
    }
}
