package everyblade.core.finding;

import java.util.Optional;

/**
 * What a size may be, ends included; at least one end is there, and they are in order.
 *
 * @param least smallest size
 * @param most greatest size
 */
public record Bounds(Optional<Length> least, Optional<Length> most) {

    public Bounds {
        if (least.isEmpty() && most.isEmpty()) {
            throw new IllegalArgumentException("bounds without an end bound nothing");
        }
        if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
            throw new IllegalArgumentException("the least is above the most");
        }
    }

    /** Up to this. */
    public static Bounds upTo(Length most) {
        return new Bounds(Optional.empty(), Optional.of(most));
    }

    /** Distance to the nearer end: positive inside, negative outside. */
    Length margin(Length value) {
        Optional<Length> below = least.map(value::minus);
        Optional<Length> above = most.map(end -> end.minus(value));
        if (below.isEmpty() || above.isEmpty()) {
            return below.or(() -> above).orElseThrow();
        }
        return below.get().compareTo(above.get()) < 0 ? below.get() : above.get();
    }
}
