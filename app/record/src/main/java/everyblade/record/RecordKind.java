package everyblade.record;

/** What a folder with a journal is of. Neither is ever taken for the other. */
public enum RecordKind {
    /** An inspection of an engine. */
    JOB("everyblade/journal/", RecordProblem.What.JOB_NOT_DRILL, JournalFlaw.Whole.A_JOB, Remedy.OPEN_AS_JOB),
    /** Practice. */
    DRILL("everyblade/drill/", RecordProblem.What.DRILL_NOT_JOB, JournalFlaw.Whole.A_DRILL, Remedy.OPEN_AS_DRILL);

    private final String schema;
    private final RecordProblem.What what;
    private final JournalFlaw why;
    private final Remedy toDo;

    RecordKind(String schema, RecordProblem.What what, JournalFlaw why, Remedy toDo) {
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
