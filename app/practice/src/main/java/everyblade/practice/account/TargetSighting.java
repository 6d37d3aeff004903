package everyblade.practice.account;

/**
 * How something was in sight during a drill.
 *
 * @param seconds properly: sharp, from at least 30° off grazing, and large enough in the picture
 * @param poorly seconds in the picture, but not so
 * @param firstMillis when it was first properly in sight; −1 if it never was
 */
public record TargetSighting(double seconds, double poorly, long firstMillis) {

    /** Not at all. */
    public static final TargetSighting NEVER = new TargetSighting(0, 0, -1);

    /** Less than this is too brief to have been looked at, seconds (our choice: about two glances). */
    public static final double LEAST = 0.5;

    /** Whether it was ever in the picture. */
    boolean atAll() {
        return seconds + poorly > 0;
    }

    /** Whether it was in sight well and long enough to be called. */
    public boolean enough() {
        return seconds >= LEAST;
    }

    TargetSighting and(boolean properly, double more, long millis) {
        return properly
                ? new TargetSighting(seconds + more, poorly, firstMillis < 0 ? millis : firstMillis)
                : new TargetSighting(seconds, poorly + more, firstMillis);
    }
}
