package everyblade.record;

import java.util.Optional;

/**
 * What is known of a journal before it is read: up to which entry this very program has already understood every line
 * and found that each follows from those before. The hashes are checked all the same.
 */
@FunctionalInterface
public interface Understood {

    /** Nothing is known. */
    Understood NOTHING = first -> Optional.empty();

    /**
     * How far.
     *
     * @param entries how many of the first ones
     * @param head hash of the line of the last of them
     */
    record Mark(int entries, String head) {}

    /** How far the journal is understood whose first line has this hash. */
    Optional<Mark> upTo(String first);
}
