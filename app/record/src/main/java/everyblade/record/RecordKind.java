package everyblade.record;

/** What a folder with a journal is of. Neither is ever taken for the other. */
public enum RecordKind {
    /** An inspection of an engine. */
    JOB("everyblade/journal/", "A job, not a drill", "it is the record of an engine", "open it as a job"),
    /** Practice. */
    DRILL(
            "everyblade/drill/",
            "A drill, not a job",
            "it was made for practice, and is the record of no engine",
            "use everyblade drill with it");

    private final String schema;
    private final String what;
    private final String why;
    private final String toDo;

    RecordKind(String schema, String what, String why, String toDo) {
        this.schema = schema;
        this.what = what;
        this.why = why;
        this.toDo = toDo;
    }

    /** How the schema of its journal begins; the version follows. */
    String schema() {
        return schema;
    }

    /** Why a journal of this kind is not read as one of the other. */
    RecordProblem refused() {
        return new RecordProblem(what, Journal.FILE, 1, why, toDo);
    }
}
