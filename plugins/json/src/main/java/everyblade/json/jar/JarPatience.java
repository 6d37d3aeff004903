package everyblade.json.jar;

import java.time.Duration;

/** How long the code in a jar may take. */
@FunctionalInterface
public interface JarPatience {

    /**
     * Five seconds of work: processor time, so that a busy machine makes no sound plugin fail. What only waits is given
     * three times that by the clock.
     */
    JarPatience OF_THE_PROGRAM =
            (clock, processor) -> processor.compareTo(Duration.ofSeconds(5)) > 0 || clock.toSeconds() >= 15;

    /**
     * @param clock time since its code began
     * @param processor what its process has used until now
     */
    boolean isOver(Duration clock, Duration processor);
}
