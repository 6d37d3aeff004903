package everyblade.record;

import everyblade.record.JobFolder.InUse;
import everyblade.record.JobFolder.Writable;
import everyblade.record.JobFolder.Writing;
import everyblade.record.JournalWriter.Appended;
import everyblade.record.JournalWriter.Kept;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * A process that writes to a job until it is killed: notes, one to three at a time, each numbered as its entry; says
 * {@code open}, then {@code kept K} after each batch. If the job is in use it says {@code in use HOLDER} and ends.
 */
final class Recorder {

    private Recorder() {}

    public static void main(String[] arguments) {
        Writing writing = new JobFolder(new LocalDisk(), Path.of(arguments[0])).write("Cy Rotor", Samples.TIME);
        if (writing instanceof InUse inUse) {
            System.out.println("in use " + English.said(inUse.holder()));
            return;
        }
        JournalWriter writer = ((Writable) writing).writer();
        System.out.println("open");
        int kept = writer.opened().journal().lines().size();
        while (true) {
            Appended appended = writer.append(Samples.notes(kept + 1, kept + 1 + kept % 3));
            List<JournalLine> lines = ((Kept) appended).lines();
            kept = lines.get(lines.size() - 1).k();
            System.out.println("kept " + kept);
        }
    }

    /** Starts one in a Java of its own. */
    static Process start(Path job) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-Xmx64m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Recorder.class.getName(),
                        job.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
