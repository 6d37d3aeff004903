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

    boolean servedThrough(int view) {
        return chances.stream().anyMatch(chance -> chance.view() == view);
    }
}
