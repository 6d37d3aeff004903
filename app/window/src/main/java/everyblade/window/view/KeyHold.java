package everyblade.window.view;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Tells a key that was struck from one that repeats because it is held down. Some systems repeat with a release before
 * each press, so a press counts only if the key was up for a moment.
 */
public final class KeyHold {

    /** A finger cannot be faster, milliseconds; a repeating key is up for none or one. */
    private static final long UP_AT_LEAST = 20;

    private final Set<String> down = new HashSet<>();
    private final Map<String, Long> released = new HashMap<>();

    /** Whether this press is one of its own. */
    public boolean struck(String key, long atMillis) {
        boolean wasDown = !down.add(key);
        Long up = released.get(key);
        return !wasDown && (up == null || atMillis - up >= UP_AT_LEAST);
    }

    /** The key was let go. */
    public void released(String key, long atMillis) {
        down.remove(key);
        released.put(key, atMillis);
    }

    /** Nothing is known of the keys any more, such as after another window was in front. */
    public void forget() {
        down.clear();
    }
}
