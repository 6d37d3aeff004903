package everyblade.record;

/** A journal has a line that is not the one that was written, or cannot be understood. */
final class UnsoundJournal extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    UnsoundJournal(Problem problem) {
        super(problem.message(), null, false, false);
        this.problem = problem;
    }

    /** What is wrong, and where. */
    Problem problem() {
        return problem;
    }
}
