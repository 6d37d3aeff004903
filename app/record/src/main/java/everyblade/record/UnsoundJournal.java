package everyblade.record;

/** A journal has a line that is not the one that was written, or cannot be understood. */
final class UnsoundJournal extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient RecordProblem problem;

    UnsoundJournal(RecordProblem problem) {
        super(problem.toString(), null, false, false);
        this.problem = problem;
    }

    /** What is wrong, and where. */
    RecordProblem problem() {
        return problem;
    }
}
