package everyblade.record;

/** A line that cannot be understood; the message says why, as the end of a sentence. */
final class Unreadable extends Exception {

    private static final long serialVersionUID = 1L;

    Unreadable(String why) {
        super(why, null, false, false);
    }
}
