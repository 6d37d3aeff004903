package everyblade.window.view;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Whether a person was away long enough to want to be told where they were. */
public final class Interruption {

    /** Looking at another window for less is no interruption. */
    static final Duration LONG_ENOUGH = Duration.ofSeconds(2);

    private Optional<Instant> left = Optional.empty();

    /** Another window came to the front. */
    public void left(Instant at) {
        left = Optional.of(at);
    }

    /** The window is in front again; gives whether that was an interruption. */
    public boolean back(Instant at) {
        boolean was = left.map(since -> Duration.between(since, at).compareTo(LONG_ENOUGH) > 0)
                .orElse(false);
        left = Optional.empty();
        return was;
    }
}
