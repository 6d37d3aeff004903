package everyblade.core.move;

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
        narrow(start);
        long bound = Math.min(wide(start), bestCost());
        return best.map(label -> new Course(label.stays(), label.cost() / Label.PER_STEP, bound / Label.PER_STEP));
    }

    private Label label(Label before, Stay stay, long place, Rest rest, long cost) {
        long least = cost + outlook.oneByOne(rest, place, unturned(before)) - (maySit(before) ? 1 : 0);
        return new Label(before, stay, place, rest, cost, least);
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
    private void narrow(Label start) {
        List<Label> beam = List.of(start);
        while (!beam.isEmpty()) {
            Map<Key, Label> next = new LinkedHashMap<>();
            for (Label label : beam) {
                for (Label further : further(label)) {
                    next.merge(Key.of(further), further, (a, b) -> a.cost() <= b.cost() ? a : b);
                }
            }
            beam = next.values().stream().sorted(BEST_FIRST).limit(BEAM).toList();
        }
    }

    /** Goes on with the most promising label of all; gives what every course costs at least. */
    private long wide(Label start) {
        PriorityQueue<Label> queue = new PriorityQueue<>(BEST_FIRST);
        Map<Key, Long> reached = new HashMap<>();
        queue.add(start);
        for (int looked = 0; !queue.isEmpty(); looked++) {
            Label label = queue.remove();
            if (label.least() >= bestCost() || looked == limit) {
                return label.least();
            }
            if (reached.getOrDefault(Key.of(label), Long.MAX_VALUE) < label.cost()) {
                continue;
            }
            long raised = label.cost() + outlook.allAtOnce(label.rest(), label.place(), unturned(label.before()));
            if (raised > label.least()) {
                queue.add(label.atLeast(raised));
                continue;
            }
            for (Label further : further(label)) {
                Key key = Key.of(further);
                if (further.cost() < reached.getOrDefault(key, Long.MAX_VALUE)) {
                    reached.put(key, further.cost());
                    queue.add(further);
                }
            }
        }
        return Long.MAX_VALUE;
    }

    private long bestCost() {
        return best.map(Label::cost).orElse(Long.MAX_VALUE);
    }

    /** The labels after one more stay that may still lead to something better; a whole course is kept as the best. */
    private List<Label> further(Label label) {
        List<Label> further = new ArrayList<>();
        for (Prospect prospect : label.rest().prospects()) {
            boolean sits = maySit(label.before()) && walk.seated().getAsInt() == prospect.view();
            for (Stay stay : prospect.stays(label.place(), unturned(label.before()))) {
                long cost = label.cost() + stay.turning() * Label.PER_STEP + (sits ? 0 : 1);
                if (cost < bestCost()) {
                    after(label, stay, cost).ifPresent(further::add);
                }
            }
        }
        return further;
    }

    private Optional<Label> after(Label before, Stay stay, long cost) {
        Rest rest = outlook.after(before.rest(), stay);
        if (cost + rest.stretches() * Label.PER_STEP >= bestCost()) {
            return Optional.empty();
        }
        long place = walk.setBack() ? before.place() : Math.floorMod(before.place() + stay.end(), Steps.TURN);
        Label after = label(before, stay, place, rest, cost);
        if (after.done()) {
            best = Optional.of(after);
        }
        return after.done() || after.least() >= bestCost() ? Optional.empty() : Optional.of(after);
    }

    /** What the rest of a course depends on. */
    private record Key(long place, int rest) {

        static Key of(Label label) {
            return new Key(label.place(), label.rest().number());
        }
    }
}
