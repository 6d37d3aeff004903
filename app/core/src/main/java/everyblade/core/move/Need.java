package everyblade.core.move;

import java.util.List;

/**
 * Something that must be seen, and every chance to see it; one of them is enough.
 *
 * @param chances at least one
 */
record Need(List<Chance> chances) {

    Need {
        chances = List.copyOf(chances);
    }

    /** Whether this one is served whenever another one is, and there is more than the other one's chances to serve it. */
    boolean followsFrom(Need other) {
        return chances.size() > other.chances.size() && chances.containsAll(other.chances);
    }

    boolean servedThrough(int view) {
        return chances.stream().anyMatch(chance -> chance.view() == view);
    }
}
