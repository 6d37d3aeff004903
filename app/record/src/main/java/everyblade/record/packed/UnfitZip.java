package everyblade.record.packed;

/** A zip that is not unpacked for what it is; the message says why, as the end of a sentence. */
public final class UnfitZip extends Exception {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 80;

    UnfitZip(String why) {
        super(why);
    }

    /** A name that somebody else chose, fit for a line. */
    static String quoted(String name) {
        String plain = name.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Zl}\\p{Zp}]", "?");
        return '"' + (plain.length() > LONGEST ? plain.substring(0, LONGEST) + "…" : plain) + '"';
    }
}
