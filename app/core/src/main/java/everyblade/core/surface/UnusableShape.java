package everyblade.core.surface;

/** A shape or a mesh file that gives no surface; the message says in one line what, why and what to do. */
public final class UnusableShape extends Exception {

    private static final long serialVersionUID = 1L;

    /** @param message one line for the author of the model */
    public UnusableShape(String message) {
        super(message, null, false, false);
    }
}
