package everyblade.session.job;

import everyblade.record.Job;
import everyblade.record.derived.DerivedFiles;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What commands said of jobs, kept among what this user's program derived: a record that is still the same gets the same
 * answer without being computed again. The first line of a journal names model, limits, settings and the record that it is
 * compared with, and its head all entries; of these, and of the question, an answer depends and of nothing else.
 *
 * @param files where they are kept
 */
record KeptAnswers(DerivedFiles files) {

    private static final String KIND = "answer";

    /**
     * An answer.
     *
     * @param out what goes to standard output, with its newlines
     * @param status with which the command ends
     */
    record Answer(String out, int status) {

        /** All that is printed meanwhile. */
        static Answer of(Asked asked) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            PrintStream out = new PrintStream(bytes, false, StandardCharsets.UTF_8);
            int status = asked.tell(out);
            out.flush();
            return new Answer(bytes.toString(StandardCharsets.UTF_8), status);
        }
    }

    /** Tells what was asked, and gives the exit status. */
    @FunctionalInterface
    interface Asked {
        int tell(PrintStream out);
    }

    private static String key(Job job, List<String> question) {
        return question.stream().map(word -> word.length() + " " + word + "\n").collect(Collectors.joining())
                + job.journal().firstHash() + "\n" + job.journal().head();
    }

    /** The answer that is kept; empty if there is none. */
    Optional<Answer> find(Job job, List<String> question) {
        return files.find(KIND, key(job, question))
                .map(content ->
                        new Answer(new String(content, 1, content.length - 1, StandardCharsets.UTF_8), content[0]));
    }

    void keep(Job job, List<String> question, Answer answer) {
        byte[] said = answer.out().getBytes(StandardCharsets.UTF_8);
        byte[] content = new byte[said.length + 1];
        content[0] = (byte) answer.status();
        System.arraycopy(said, 0, content, 1, said.length);
        files.keep(KIND, key(job, question), content);
    }
}
