package everyblade.session.around;

/** A command cannot do what was asked: wrong use or unreadable input; the message is the line for the person. */
public final class Failure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param line what, where, why, what to do */
    public Failure(String line) {
        super(line, null, false, false);
    }
}
