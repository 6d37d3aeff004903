package everyblade.window.view;

/**
 * Where a replay is. It never goes on to a state that is not worked out yet, but waits for it.
 *
 * @param at how many entries have been shown, with the share of the next one; 0 to {@code length}
 * @param length how many entries there are
 * @param speed entries in a second
 * @param playing whether it goes on by itself
 */
public record ReplayClock(double at, int length, double speed, boolean playing) {

    private static final double MOST_STATES = 32;

    /** Stopped at the end of a record. */
    public static ReplayClock atEnd(int length) {
        return new ReplayClock(length, length, 4, false);
    }

    /** The state that is shown. */
    public int entry() {
        return (int) at;
    }

    /** How many entries lie between two states that are shown: no more of them in a second than an eye can tell. */
    public int stride() {
        return Math.max(1, (int) Math.ceil(speed / MOST_STATES));
    }

    /** How much of the way to the next state is gone, 0 to below 1. */
    public double share() {
        return at - entry();
    }

    /**
     * Some time later.
     *
     * @param seconds since
     * @param ready the last state that is worked out; the way to the next one can only be shown if that is ready, too
     */
    public ReplayClock later(double seconds, int ready) {
        if (!playing) {
            return this;
        }
        double next = Math.min(at + seconds * speed, Math.max(at, Math.min(ready, length)));
        return new ReplayClock(next, length, speed, next < length);
    }

    /** At this entry, stopped. */
    public ReplayClock to(int entry) {
        return new ReplayClock(Math.max(0, Math.min(length, entry)), length, speed, false);
    }

    /** Goes on by itself, from the beginning where it is at the end; or stops. */
    public ReplayClock turned() {
        return new ReplayClock(!playing && at >= length ? 0 : at, length, speed, !playing && length > 0);
    }

    public ReplayClock with(double newSpeed) {
        return new ReplayClock(at, length, newSpeed, playing);
    }
}
