package everyblade.record.signing;

/** Something that cannot be signed with, or is no signature; the message says why, as the end of a sentence. */
public final class Unsigned extends Exception {

    private static final long serialVersionUID = 1L;

    Unsigned(String why) {
        super(why);
    }
}
