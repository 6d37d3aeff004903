package everyblade.core.entry;

/** A line that is not kept: says where in the line, and what was expected. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    private final int column;

    /**
     * @param column where in the line, from 1
     * @param message one line for the person who typed: what is wrong, and what to say instead
     */
    public Refusal(int column, String message) {
        super(message, null, false, false);
        this.column = column;
    }

    /** Where in the line, from 1. */
    public int column() {
        return column;
    }
}
