package everyblade.core.move;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch watched without a seam during one stay. Readings in steps, unrolled.
 *
 * @param begin where watching begins
 * @param end where it ends, below the begin if readings fall
 * @param needs of the walk that it serves
 */
record Run(long begin, long end, BitSet needs) {

    /** Part of the line on which needs are in sight. */
    private record Piece(long low, long high, BitSet needs) {}

    /**
     * The runs of a stay, in order. Every need is watched for as long as it is in sight on the stay's stretch, for that
     * costs no turning; pieces less than a pitch apart are one run, for nobody looks away for so little.
     *
     * @param place where the stay begins
     * @param join pieces nearer to each other than this become one, steps
     * @param uncertain whether the place where the stay begins is less well known than after reading the shaft's angle;
     *     then the first run begins a little later, after such a reading, if it can
     */
    static List<Run> of(Walk walk, Stay stay, long place, long join, boolean uncertain) {
        long low = place - stay.down();
        long high = place + stay.up();
        List<Piece> pieces = new ArrayList<>();
        for (int need : stay.served().stream().toArray()) {
            pieces.add(piece(walk.needs().get(need), need, stay.view(), low, high));
        }
        pieces.sort(Comparator.comparingLong(Piece::low));
        List<Piece> joined = joined(pieces, join);
        stretch(joined, low, high, stay);
        List<Run> runs = new ArrayList<>(joined.stream()
                .map(piece -> stay.endsUp()
                        ? new Run(piece.low(), piece.high(), piece.needs())
                        : new Run(piece.high(), piece.low(), piece.needs()))
                .toList());
        if (!stay.endsUp()) {
            Collections.reverse(runs);
        }
        if (uncertain && runs.get(0).begin() == place) {
            runs.set(0, runs.get(0).begunLater(walk, stay));
        }
        return runs;
    }

    /** Where a need is in sight on a stretch, at the turn at which it is longest. */
    private static Piece piece(Need need, int number, int view, long low, long high) {
        BitSet own = new BitSet();
        own.set(number);
        Piece longest = null;
        for (Chance chance : need.chances()) {
            if (chance.view() != view) {
                continue;
            }
            long turns = -Math.floorDiv(chance.high() - low, Steps.TURN);
            for (Chance here = chance.moved(turns * Steps.TURN); here.low() <= high; here = here.moved(Steps.TURN)) {
                long from = Math.max(low, Math.min(here.from(), Math.min(here.low(), here.high())));
                long to = Math.min(high, Math.max(here.to(), Math.max(here.low(), here.high())));
                if (longest == null || to - from > longest.high() - longest.low()) {
                    longest = new Piece(from, to, own);
                }
            }
        }
        if (longest == null) {
            throw new IllegalStateException("need " + number + " is not served by the stay that is to serve it");
        }
        return longest;
    }

    /** The stay's last end is where it must end, and so is the other one if the shaft goes there first. */
    private static void stretch(List<Piece> pieces, long low, long high, Stay stay) {
        Piece first = pieces.get(0);
        if (!stay.endsUp() || stay.down() > 0) {
            pieces.set(0, new Piece(low, first.high(), first.needs()));
        }
        int end = pieces.size() - 1;
        Piece last = pieces.get(end);
        if (stay.endsUp() || stay.up() > 0) {
            pieces.set(end, new Piece(last.low(), high, last.needs()));
        }
    }

    private static List<Piece> joined(List<Piece> pieces, long join) {
        List<Piece> joined = new ArrayList<>();
        for (Piece piece : pieces) {
            Piece last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && piece.low() - last.high() < join) {
                BitSet needs = (BitSet) last.needs().clone();
                needs.or(piece.needs());
                joined.set(joined.size() - 1, new Piece(last.low(), Math.max(last.high(), piece.high()), needs));
            } else {
                joined.add(piece);
            }
        }
        return joined;
    }

    /** Begun at the last place from which all needs are still served. */
    private Run begunLater(Walk walk, Stay stay) {
        long latest = end;
        for (int need : needs.stream().toArray()) {
            List<Chance> chances = walk.needs().get(need).chances().stream()
                    .filter(chance -> chance.view() == stay.view())
                    .toList();
            latest = stay.endsUp()
                    ? Math.min(
                            latest,
                            chances.stream().mapToLong(this::lastHigh).max().orElseThrow())
                    : Math.max(
                            latest,
                            chances.stream().mapToLong(this::firstLow).min().orElseThrow());
        }
        return new Run(stay.endsUp() ? Math.max(begin, latest) : Math.min(begin, latest), end, needs);
    }

    private long lastHigh(Chance chance) {
        return chance.high() + Math.floorDiv(end - chance.low(), Steps.TURN) * Steps.TURN;
    }

    private long firstLow(Chance chance) {
        return chance.low() - Math.floorDiv(chance.high() - end, Steps.TURN) * Steps.TURN;
    }
}
