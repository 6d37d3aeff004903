package everyblade.core.move;

import everyblade.core.entry.Entry;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One way of saying a part of a work.
 *
 * @param entries in order
 * @param identifies the airfoil that must first be brought to the reference, if one must
 * @param closing how far it is first turned to close a count, degrees
 * @param way how far it turns unwatched, degrees, as far as anybody knows; positive clockwise
 * @param from reading at which watching begins, if it is known
 * @param sweep how far is watched, degrees; positive clockwise
 * @param round whether it is a whole turn from an airfoil at the reference until it is back
 */
record Saying(
        List<Entry> entries,
        OptionalInt identifies,
        double closing,
        double way,
        Optional<BigDecimal> from,
        double sweep,
        boolean round) {

    static List<Entry> with(List<Entry> entries, Entry last) {
        List<Entry> all = new ArrayList<>(entries);
        all.add(last);
        return all;
    }
}
