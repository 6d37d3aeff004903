package everyblade.window.view;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Lines that were entered and are not settled yet, in the order in which they were said. The first one is being kept, has
 * come back because it was refused or asked about, or stands in the entry line once more; the others wait behind it, so
 * that no entry is ever kept before one that was said earlier.
 *
 * <p>Once a line came back, those behind it are not handed in by themselves any more: they were said in the belief that
 * it stands. Each of them comes back in its turn, for the person to enter or to drop. For one thread.
 */
public final class Outbox {

    private enum First {
        NONE,
        BEING_KEPT,
        BACK,
        IN_LINE
    }

    /**
     * A line as it was entered.
     *
     * @param text of the line
     * @param meant whether it was asked about, and is entered again
     */
    public record Line(String text, boolean meant) {}

    private final Deque<Line> lines = new ArrayDeque<>();
    private First first = First.NONE;
    private boolean held;

    /**
     * A line was entered: again, if it is the one that stands in the entry line.
     *
     * @return what is to be handed in now, if this is its turn
     */
    public Optional<Line> entered(String text, boolean meant) {
        Line line = new Line(text, meant);
        if (first == First.IN_LINE) {
            lines.removeFirst();
            lines.addFirst(line);
        } else {
            lines.addLast(line);
            if (first != First.NONE) {
                return Optional.empty();
            }
        }
        first = First.BEING_KEPT;
        return Optional.of(line);
    }

    /**
     * The line that was handed in is kept.
     *
     * @return what is to be handed in next
     */
    public Optional<Line> kept() {
        next();
        return first == First.BEING_KEPT ? Optional.of(lines.getFirst()) : Optional.empty();
    }

    /** The line that was handed in is not kept. */
    public void cameBack() {
        first = First.BACK;
        held = true;
    }

    /** The line that came back goes into the entry line, to be entered again or dropped; empty if none came back. */
    public Optional<String> taken() {
        if (first != First.BACK) {
            return Optional.empty();
        }
        first = First.IN_LINE;
        return Optional.of(lines.getFirst().text());
    }

    /** What stands in the entry line is dropped; nothing happens if no line that came back stands there. */
    public void dropped() {
        if (first == First.IN_LINE) {
            next();
        }
    }

    private void next() {
        lines.removeFirst();
        held &= !lines.isEmpty();
        first = lines.isEmpty() ? First.NONE : held ? First.BACK : First.BEING_KEPT;
    }

    /** The line that is being kept. */
    public Optional<String> beingKept() {
        return first == First.BEING_KEPT ? Optional.of(lines.getFirst().text()) : Optional.empty();
    }

    /** The line that came back and does not stand in the entry line yet. */
    public Optional<String> back() {
        return first == First.BACK ? Optional.of(lines.getFirst().text()) : Optional.empty();
    }

    /** What waits behind the first line. */
    public List<String> waiting() {
        return lines.stream().skip(1).map(Line::text).toList();
    }

    /** Whether a line that is being kept or came back is what there is to be told first. */
    public boolean inTheWay() {
        return first == First.BEING_KEPT || first == First.BACK;
    }
}
