package everyblade.record.signing;

import everyblade.fact.Fact;

/** Something that cannot be signed with, or is no signature. */
public final class Unsigned extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Fact why;

    Unsigned(Fact why) {
        super(why.toString());
        this.why = why;
    }

    /** Why, as the end of a sentence. */
    public Fact why() {
        return why;
    }
}
