package everyblade.core.move;

import everyblade.core.move.Stays.Served;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one view may still have to do: the open needs that it can serve, and those of them that only it can serve. Works
 * out the stays from each place once.
 */
final class Prospect {

    private final Walk walk;
    private final Stays stays;
    private final int view;
    private final BitSet own;
    private final BitSet must;
    /** Stretches that serve what must be served and cannot be shortened: they reach down to here, */
    private final long[] lows;
    /** and this far above that, or less than nothing where every place for so far below serves too. */
    private final long[] lengths;

    private final long stretch;
    private final Map<Long, List<Served>> made = new HashMap<>();

    Prospect(Walk walk, Stays stays, int view, BitSet own, BitSet must) {
        this.walk = walk;
        this.stays = stays;
        this.view = view;
        this.own = own;
        this.must = must;
        List<List<Chance>> chances = must.stream()
                .mapToObj(need -> walk.needs().get(need).chances().stream()
                        .filter(chance -> chance.view() == view)
                        .toList())
                .toList();
        this.lows = chances.stream()
                .flatMap(List::stream)
                .mapToLong(chance -> Math.floorMod(chance.high(), Steps.TURN))
                .distinct()
                .toArray();
        this.lengths = Arrays.stream(lows).map(low -> length(chances, low)).toArray();
        this.stretch = Math.max(0, Arrays.stream(lengths).min().orElse(0));
    }

    private static long length(List<List<Chance>> chances, long low) {
        long length = Long.MIN_VALUE;
        for (List<Chance> one : chances) {
            long least = Long.MAX_VALUE;
            for (Chance chance : one) {
                least = Math.min(least, chance.above(low));
            }
            length = Math.max(length, least);
        }
        return length;
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

    /**
     * The stays from a place.
     *
     * @param unturned whether nothing was turned before
     * @param most longer ones may be left out, steps
     */
    List<Served> stays(long place, boolean unturned, long most) {
        if (unturned || shares()) {
            return made.computeIfAbsent(unturned ? -1 : place, key -> stays.at(view, place, unturned, own, must));
        }
        List<Stay> all = new ArrayList<>();
        long nearestAbove = Rooms.NEVER;
        for (Reach reach : reaches(place, most)) {
            if (reach.up() < nearestAbove) {
                nearestAbove = reach.up();
                Stays.add(all, view, reach.down(), reach.up(), own);
            }
        }
        all.sort(Comparator.comparingLong(Stay::turning));
        return all.isEmpty() ? List.of() : List.of(new Served(own, all));
    }

    /** How far a stretch may reach below and above a place. */
    private record Reach(long down, long up) {}

    /** All that serve what must be served, by rising reach below. */
    private List<Reach> reaches(long place, long most) {
        List<Reach> reaches = new ArrayList<>();
        for (int i = 0; i < lows.length; i++) {
            long above = above(place, i);
            addWithin(reaches, 0, rising(above, i), most);
            addWithin(reaches, falling(above, i), 0, most);
            addWithin(reaches, above, Math.max(0, lengths[i] - above), most);
        }
        reaches.sort(Comparator.comparingLong(Reach::down).thenComparingLong(Reach::up));
        return reaches;
    }

    private void addWithin(List<Reach> reaches, long down, long up, long most) {
        if (turning(down, up) <= Math.min(most, Rooms.NEVER - 1)) {
            reaches.add(new Reach(down, up));
        }
    }

    /** What the stay at this view costs at least if it comes next, beyond the shortest stretch; steps. */
    long approach(long place) {
        long least = needed() ? Rooms.NEVER : stretch;
        for (int i = 0; i < lows.length; i++) {
            long above = above(place, i);
            long oneWay = Math.min(turning(0, rising(above, i)), turning(falling(above, i), 0));
            long bothWays = turning(above, Math.max(0, lengths[i] - above));
            least = Math.min(least, Math.min(oneWay, bothWays));
        }
        return least - stretch;
    }

    /** How far the shaft turns to sweep so far below and above; {@link Rooms#NEVER} if it may not. */
    private long turning(long down, long up) {
        boolean may = (down == 0 || walk.falling()) && (up == 0 || walk.rising());
        return may ? down + up + Math.min(down, up) : Rooms.NEVER;
    }

    /** How far a place is above the lower end of a stretch, less than a turn. */
    private long above(long place, int number) {
        long above = place - lows[number];
        return above < 0 ? above + Steps.TURN : above;
    }

    /** How far the shaft turns on until it has swept a stretch from its lower end on, at the next turn. */
    private long rising(long above, int number) {
        return Math.max(0, (above == 0 ? 0 : Steps.TURN - above) + lengths[number]);
    }

    /** How far it turns back until it has swept a stretch from its upper end on. */
    private long falling(long above, int number) {
        long falling = above;
        while (falling < lengths[number]) {
            falling += Steps.TURN;
        }
        return falling;
    }
}
