package everyblade.core.move;

import everyblade.core.move.Stays.Served;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Finds the course that turns least, and among equals seats the scope tip least often: best first by what a course costs
 * at least (A*), cut off by the best course of a narrow search that went before (a beam).
 *
 * <p>Exact while the number of labels looked at stays within its limit. Beyond it the best course found is given, and as
 * its bound the least that any label still open promises: honest, and the same on every machine.
 */
final class CourseSearch {

    private static final int BEAM = 12;
    /** Of so many times the width of the beam it is told closely what they cost. */
    private static final int WEIGHED = 10;

    private static final Comparator<Label> BEST_FIRST =
            Comparator.comparingLong(Label::least).thenComparingLong(label -> -label.cost());

    private final Walk walk;
    private final Outlook outlook;
    private final int limit;
    private Optional<Label> best = Optional.empty();

    /** Without needs that are served whenever another one is. */
    private static Walk reduced(Walk walk) {
        List<Need> needs = walk.needs().stream()
                .distinct()
                .filter(need -> walk.needs().stream().noneMatch(need::followsFrom))
                .toList();
        return new Walk(
                walk.start(), walk.rising(), walk.falling(), walk.setBack(), walk.seated(), walk.views(), needs);
    }

    private CourseSearch(Walk walk, int limit) {
        this.walk = walk;
        this.outlook = new Outlook(walk);
        this.limit = limit;
    }

    /** The least course of a walk, looking at so many labels at most; empty if its needs cannot all be served. */
    static Optional<Course> of(Walk walk, int limit) {
        return new CourseSearch(reduced(walk), limit).course().map(course -> course.serving(walk));
    }

    private Optional<Course> course() {
        Label start = label(null, null, Math.floorMod(walk.start(), Steps.TURN), outlook.all(), 0);
        if (start.done()) {
            return Optional.of(new Course(List.of(), 0, 0));
        }
        narrow(start, 1);
        narrow(start, BEAM);
        long bound = Math.min(wide(start), bestCost());
        return best.map(label -> new Course(label.stays(), label.cost() / Label.PER_STEP, bound / Label.PER_STEP));
    }

    private Label label(Label before, Stay stay, long place, Rest rest, long cost) {
        return new Label(before, stay, place, rest, cost, cost + outlook.somewhere(rest) - sitting(before));
    }

    /** The same label, its least cost told as closely as can be. */
    private Label weighed(Label label) {
        boolean unturned = unturned(label.before());
        long oneByOne = outlook.oneByOne(label.rest(), label.place()) - sitting(label.before());
        long allAtOnce = outlook.allAtOnce(label.rest(), label.place(), unturned);
        return label.atLeast(Math.max(label.least(), label.cost() + Math.max(oneByOne, allAtOnce)));
    }

    private int sitting(Label before) {
        return maySit(before) ? 1 : 0;
    }

    /** Whether nothing was turned before the next stay. */
    private boolean unturned(Label before) {
        return before == null || walk.setBack();
    }

    /** Whether the next stay may go on from the present seating of the scope tip. */
    private boolean maySit(Label before) {
        return before == null && !walk.setBack() && walk.seated().isPresent();
    }

    /** Goes on with a few labels at a time, as far as it goes. */
    private void narrow(Label start, int width) {
        List<Label> beam = List.of(start);
        while (!beam.isEmpty()) {
            Map<Key, Label> next = new LinkedHashMap<>();
            for (Label label : beam) {
                for (Label further : further(label)) {
                    next.merge(Key.of(further), further, (a, b) -> a.cost() <= b.cost() ? a : b);
                }
            }
            beam = next.values().stream()
                    .sorted(BEST_FIRST)
                    .limit((long) width * WEIGHED)
                    .map(this::weighed)
                    .sorted(BEST_FIRST)
                    .limit(width)
                    .toList();
        }
    }

    /** Goes on with the most promising label of all; gives what every course costs at least. */
    private long wide(Label start) {
        PriorityQueue<Label> queue = new PriorityQueue<>(BEST_FIRST);
        Map<Key, Long> reached = new HashMap<>();
        queue.add(start);
        int looked = 0;
        while (!queue.isEmpty()) {
            Label label = queue.remove();
            if (label.least() >= bestCost() || looked == limit) {
                return label.least();
            }
            Label weighed = weighed(label);
            if (weighed.least() > label.least()) {
                queue.add(weighed);
            } else if (label.cost() <= reached.getOrDefault(Key.of(label), Long.MAX_VALUE)) {
                looked++;
                add(queue, reached, further(label));
            }
        }
        return Long.MAX_VALUE;
    }

    /** Adds the labels that were not reached at less cost. */
    private static void add(PriorityQueue<Label> queue, Map<Key, Long> reached, List<Label> labels) {
        for (Label label : labels) {
            Key key = Key.of(label);
            if (label.cost() < reached.getOrDefault(key, Long.MAX_VALUE)) {
                reached.put(key, label.cost());
                queue.add(label);
            }
        }
    }

    private long bestCost() {
        return best.map(Label::cost).orElse(Long.MAX_VALUE);
    }

    /** The labels after one more stay that may still lead to something better; a whole course is kept as the best. */
    private List<Label> further(Label label) {
        List<Label> further = new ArrayList<>();
        for (Prospect prospect : label.rest().prospects()) {
            boolean sits = maySit(label.before()) && walk.seated().getAsInt() == prospect.view();
            long others = label.rest().stretches() - prospect.stretch();
            long most = (bestCost() - label.cost()) / Label.PER_STEP - others;
            for (Served served : prospect.stays(label.place(), unturned(label.before()), most)) {
                Rest rest = outlook.after(label.rest(), prospect.view(), served.needs());
                for (Stay stay : served.stays()) {
                    long cost = label.cost() + stay.turning() * Label.PER_STEP + (sits ? 0 : 1);
                    if (cost + rest.stretches() * Label.PER_STEP >= bestCost()) {
                        break;
                    }
                    after(label, stay, rest, cost).ifPresent(further::add);
                }
            }
        }
        return further;
    }

    private Optional<Label> after(Label before, Stay stay, Rest rest, long cost) {
        long place = walk.setBack() ? before.place() : Math.floorMod(before.place() + stay.end(), Steps.TURN);
        Label after = label(before, stay, place, rest, cost);
        if (after.least() >= bestCost()) {
            return Optional.empty();
        }
        if (after.done()) {
            best = Optional.of(after);
            return Optional.empty();
        }
        return Optional.of(after);
    }

    /** What the rest of a course depends on. */
    private record Key(long place, int rest) {

        static Key of(Label label) {
            return new Key(label.place(), label.rest().number());
        }
    }
}
