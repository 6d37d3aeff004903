package everyblade.picture.report.page;

/**
 * Words of one look; they run on over as many lines as they need.
 *
 * @param text may hold any character; what the font lacks is written as its code
 * @param look how they are set
 */
public record PageWords(String text, Look look) {

    /** How words are set. No look is told by colour alone. */
    public enum Look {
        PLAIN,
        /** Bold. */
        STRONG,
        /** Bold, and in the colour of what must not be overlooked. */
        ALERT,
        /** Bold, and in the colour of what is good. */
        GOOD,
        /** Of less weight. */
        FAINT,
        /** Readable, with a line through it. */
        STRUCK;

        boolean bold() {
            return this == STRONG || this == ALERT || this == GOOD;
        }
    }

    /** Plain words. */
    public static PageWords of(String text) {
        return new PageWords(text, Look.PLAIN);
    }

    /** Bold words. */
    public static PageWords strong(String text) {
        return new PageWords(text, Look.STRONG);
    }

    /** Words that must not be overlooked. */
    public static PageWords alert(String text) {
        return new PageWords(text, Look.ALERT);
    }

    /** Words that say that something is good. */
    public static PageWords good(String text) {
        return new PageWords(text, Look.GOOD);
    }

    /** Words of less weight. */
    public static PageWords faint(String text) {
        return new PageWords(text, Look.FAINT);
    }

    /** Words with a line through them. */
    public static PageWords struck(String text) {
        return new PageWords(text, Look.STRUCK);
    }
}
