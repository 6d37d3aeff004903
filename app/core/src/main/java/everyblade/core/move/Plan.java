package everyblade.core.move;

import everyblade.core.entry.Entry;
import everyblade.spi.Row;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * Moves that close all gaps that can be closed. Turning is in degrees of shaft, from where the rotors stand now,
 * unwatched moves included; what a scope tip is drawn round a row that stands still is no turning.
 *
 * @param moves in order
 * @param entries that say each move, as many lists as moves
 * @param turning how far the shafts turn in all
 * @param bound what every plan turns at least that seats the scope tip at each view at most once and is as sure
 * @param drawing how far the scope tip is fed and drawn in all
 * @param left cells that no view can show
 * @param unidentified cells by row that wait until a known airfoil was brought to the reference
 * @param unsure cells that the moves do not surely close, because the pads have too much play
 */
public record Plan(
        List<Move> moves,
        List<List<Entry>> entries,
        BigDecimal turning,
        BigDecimal bound,
        BigDecimal drawing,
        int left,
        Map<Row, Integer> unidentified,
        int unsure) {

    public Plan {
        moves = List.copyOf(moves);
        entries = List.copyOf(entries);
    }

    /** Whether no such plan turns less. */
    public boolean proved() {
        return turning.compareTo(bound) == 0;
    }
}
