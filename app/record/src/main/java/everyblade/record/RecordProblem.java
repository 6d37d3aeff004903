package everyblade.record;

import everyblade.fact.Fact;

/**
 * Something that stops the work on a job, told to a person in one line: what, where, why, what to do.
 *
 * @param what is wrong, in few words
 * @param file where, relative to the job folder or as the user named it
 * @param line of the file, from 1; 0 if it concerns the whole file
 * @param why it is so
 * @param toDo what to do about it
 */
public record RecordProblem(What what, String file, int line, Fact why, Fact toDo) implements Fact {

    /** What is wrong, before anybody looks where and why. */
    public enum What implements Fact {
        NO_JOB,
        JOB_NOT_DRILL,
        DRILL_NOT_JOB,
        JOB_NOT_STARTED,
        JOB_IN_USE,
        JOB_NOT_PACKED,
        FILE_NOT_READ,
        FILE_NOT_WRITTEN,
        NOT_KEPT,
        NOT_SIGNED,
        DAMAGED_LINE,
        LINE_NOT_UNDERSTOOD,
        TORN_LINE,
        TOO_MANY_LINES,
        LINES_MISSING,
        LINES_MISSING_OR_REWRITTEN,
        JOURNAL_REWRITTEN,
        FOREIGN_JOURNAL,
        NEWER_JOURNAL,
        TWO_MEANINGS,
        MODEL_CHANGED,
        SHAPE_CHANGED,
        LIMITS_CHANGED,
        DRILL_CHANGED,
        PREVIOUS_CHANGED,
        PICTURE_NOT_KEPT,
        PICTURE_CHANGED,
        REVIEW_IN_USE,
        REVIEW_OF_ANOTHER_JOB,
        JOB_NOT_BROUGHT,
        JOB_MISSING,
        STORE_CHANGED
    }

    /** A problem of a whole file. */
    public static RecordProblem inFile(What what, String file, Fact why, Fact toDo) {
        return new RecordProblem(what, file, 0, why, toDo);
    }
}
