package everyblade.core.move;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one view may still have to do: the open needs that it can serve, and those of them that only it can serve. Works
 * out the stays from each place once.
 */
final class Prospect {

    private final Stays stays;
    private final int view;
    private final BitSet own;
    private final BitSet must;
    private final long stretch;
    private final Map<Long, List<Stay>> made = new HashMap<>();
    private final Map<Long, Long> nearest = new HashMap<>();

    Prospect(Walk walk, Stays stays, int view, BitSet own, BitSet must) {
        this.stays = stays;
        this.view = view;
        this.own = own;
        this.must = must;
        this.stretch = stretch(walk);
    }

    int view() {
        return view;
    }

    /** Whether no course can do without the view. */
    boolean needed() {
        return !must.isEmpty();
    }

    /** Whether it can serve something that another view can serve too. */
    boolean shares() {
        return !must.equals(own);
    }

    /** The shortest stretch, wherever, that serves what only this view can serve; steps. */
    long stretch() {
        return stretch;
    }

    private long stretch(Walk walk) {
        return must.stream()
                .mapToObj(need -> walk.needs().get(need))
                .flatMap(need -> need.chances().stream())
                .filter(chance -> chance.view() == view)
                .mapToLong(chance -> above(walk, chance.high()))
                .min()
                .orElse(0);
    }

    private long above(Walk walk, long place) {
        return must.stream()
                .mapToLong(need -> walk.needs().get(need).chances().stream()
                        .filter(chance -> chance.view() == view)
                        .mapToLong(chance -> chance.above(place))
                        .min()
                        .orElseThrow())
                .max()
                .orElse(0);
    }

    /** The stays from a place; {@code unturned} if nothing was turned before. */
    List<Stay> stays(long place, boolean unturned) {
        return made.computeIfAbsent(unturned ? -1 : place, key -> stays.at(view, place, unturned, own, must));
    }

    /** What the stay at this view costs at least if it comes next, beyond the shortest stretch; steps. */
    long approach(long place, boolean unturned) {
        if (!needed()) {
            return 0;
        }
        return nearest.computeIfAbsent(
                unturned ? -1 : place,
                key -> stays(place, unturned).stream()
                        .mapToLong(stay -> Math.max(0, stay.turning() - stretch))
                        .min()
                        .orElse(Label.NEVER));
    }
}
