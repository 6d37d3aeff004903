package everyblade.record;

/**
 * Something that stops the work on a job, told to a person in one line: what, where, why, what to do.
 *
 * @param what is wrong, in few words
 * @param file where, relative to the job folder or as the user named it
 * @param line of the file, from 1; 0 if it concerns the whole file
 * @param why it is so
 * @param toDo what to do about it
 */
public record RecordProblem(String what, String file, int line, String why, String toDo) {

    /** A problem of a whole file. */
    public static RecordProblem inFile(String what, String file, String why, String toDo) {
        return new RecordProblem(what, file, 0, why, toDo);
    }

    /** The line for the person. */
    public String message() {
        String place = line == 0 ? file : file + " line " + line;
        return what + ": " + place + ": " + why + "; " + toDo;
    }
}
