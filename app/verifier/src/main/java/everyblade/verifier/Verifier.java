package everyblade.verifier;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Checks a job apart from the program that made it, with which it shares no code. */
public final class Verifier {

    private Verifier() {}

    /** Exit status 0 if all is sound, 1 if something is wrong, 2 if there is no job to be read. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        System.exit(run(Path.of(arguments.length == 1 ? arguments[0] : "name one job"), out));
    }

    static int run(Path job, PrintStream out) {
        try (FileSystem zip = Files.isDirectory(job) ? null : FileSystems.newFileSystem(job)) {
            return check(new Job(zip == null ? job : zip.getPath("/")), out);
        } catch (IOException | RuntimeException unreadable) {
            out.println(job + ": it cannot be read as a job's folder or zip (" + unreadable + ")");
            return 2;
        }
    }

    private static int check(Job job, PrintStream out) throws IOException {
        List<Integer> unread = new ArrayList<>();
        for (int k = 1; k < job.lines.size(); k++) {
            Boolean agrees = Wording.agrees(job.lines.get(k));
            job.require(!Boolean.FALSE.equals(agrees), "entry " + k + ": text and meaning say two different things");
            unread.addAll(agrees == null ? List.of(k) : List.of());
        }
        int last = job.lines.size() - 1;
        out.println("chain: " + last + " entries, head " + job.head("" + last));
        out.println("text and meaning: " + (unread.isEmpty() ? "all read" : "compare by eye: entries " + unread));
        Signed.check(job).forEach(out::println);
        if (job.wrong.isEmpty()) {
            Declared rows = new Declared(Flat.of(job.bytes("model/engine.json")), job.lines);
            rows.seen.forEach(
                    (row, cells) -> out.println("declared: row " + row + ": " + cells.size() + " cells seen"));
            rows.untold.forEach((row, why) -> out.println("not told: row " + row + ": " + why));
        }
        job.wrong.forEach(wrong -> out.println("WRONG: " + wrong));
        out.println("Not in this verifier: computed sight, errors of turning, speed, and whose a key is.");
        return job.wrong.isEmpty() ? 0 : 1;
    }
}
