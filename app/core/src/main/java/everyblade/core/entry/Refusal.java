package everyblade.core.entry;

import everyblade.fact.Fact;

/** A line that is not kept: says where in the line, and why. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    private final int column;
    private final transient Fact why;

    /**
     * @param column where in the line, from 1
     * @param why what is wrong, and what to say instead
     */
    public Refusal(int column, Fact why) {
        super(null, null, false, false);
        this.column = column;
        this.why = why;
    }

    /** Where in the line, from 1. */
    public int column() {
        return column;
    }

    /** What is wrong, and what to say instead. */
    public Fact why() {
        return why;
    }

    /** For programmers. */
    @Override
    public String getMessage() {
        return column + ": " + why;
    }
}
