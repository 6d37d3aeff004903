package everyblade.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads a job with the files that are frozen into it, each of which must be the one that its journal names. */
final class JobReader {

    private static final String PUT_BACK = "put back the file as it was, from a copy of the job";

    private final Disk disk;
    private final Path path;

    JobReader(Disk disk, Path path) {
        this.disk = disk;
        this.path = path;
    }

    /** The job with the record that it is compared with. */
    JobFolder.Reading read() {
        JobFolder.Reading alone = alone();
        if (!(alone instanceof JobFolder.Readable readable)
                || readable.job().journal().previousHead().isEmpty()) {
            return alone;
        }
        Job job = readable.job();
        JobFolder.Reading earlier = new JobReader(disk, path.resolve(JobFolder.PREVIOUS)).alone();
        if (earlier instanceof JobFolder.Refused refused) {
            return new JobFolder.Refused(within(refused.problem()));
        }
        Job previous = ((JobFolder.Readable) earlier).job();
        if (!previous.journal().head().equals(job.journal().previousHead().get())
                || previous.journal().torn().isPresent()) {
            return changed(JobFolder.PREVIOUS + "/" + Journal.FILE, "Previous record changed");
        }
        return new JobFolder.Readable(
                new Job(job.journal(), job.model(), job.meshes(), job.limits(), Optional.of(previous)));
    }

    private static Problem within(Problem problem) {
        return new Problem(
                problem.what(),
                JobFolder.PREVIOUS + "/" + problem.file(),
                problem.line(),
                problem.why(),
                problem.toDo());
    }

    private JobFolder.Reading alone() {
        String file = Journal.FILE;
        try {
            Journal.Reading reading = Journal.read(disk.read(path.resolve(file)));
            if (reading instanceof Journal.Unsound unsound) {
                return new JobFolder.Refused(unsound.problem());
            }
            Journal journal = ((Journal.Sound) reading).journal();
            file = JobFolder.MODEL_FOLDER + "/" + JobFolder.MODEL_FILE;
            FrozenFile model = FrozenFile.of(disk.read(path.resolve(file)));
            if (!model.hash().equals(journal.modelHash())) {
                return changed(file, "Engine model changed");
            }
            TreeMap<String, FrozenFile> meshes = new TreeMap<>();
            for (Map.Entry<String, String> mesh : journal.meshHashes().entrySet()) {
                file = JobFolder.MODEL_FOLDER + "/" + mesh.getValue();
                FrozenFile found = FrozenFile.of(
                        disk.read(path.resolve(JobFolder.MODEL_FOLDER).resolve(mesh.getValue())));
                if (!found.hash().equals(mesh.getValue())) {
                    return changed(file, "Shape changed");
                }
                meshes.put(mesh.getKey(), found);
            }
            Optional<FrozenFile> limits = Optional.empty();
            if (journal.limitsHash().isPresent()) {
                file = JobFolder.LIMITS_FOLDER + "/" + JobFolder.LIMITS_FILE;
                limits = Optional.of(FrozenFile.of(disk.read(path.resolve(file))));
                if (!limits.map(FrozenFile::hash).equals(journal.limitsHash())) {
                    return changed(file, "Limits changed");
                }
            }
            return new JobFolder.Readable(new Job(journal, model, meshes, limits, Optional.empty()));
        } catch (IOException failure) {
            return new JobFolder.Refused(unreadable(file, failure));
        }
    }

    private static JobFolder.Refused changed(String file, String what) {
        return new JobFolder.Refused(
                Problem.inFile(what, file, "it is not the one that the job was started with", PUT_BACK));
    }

    JobFolder.Copying copy() {
        JobFolder.Reading reading = read();
        if (reading instanceof JobFolder.Refused refused) {
            return refused;
        }
        Job job = ((JobFolder.Readable) reading).job();
        try {
            byte[] journal = disk.read(path.resolve(Journal.FILE));
            byte[] sound = Arrays.copyOf(journal, Math.toIntExact(job.journal().length()));
            return new JobFolder.Copied(new PreviousRecord(
                    job.journal().head(), FrozenFile.of(sound), job.model(), job.meshes(), job.limits()));
        } catch (IOException failure) {
            return new JobFolder.Refused(unreadable(Journal.FILE, failure));
        }
    }

    private Problem unreadable(String file, IOException failure) {
        return disk.exists(path.resolve(Journal.FILE))
                ? Problem.inFile(
                        "File not read", file, Reasons.of(failure), "check the disk and the file's permissions")
                : noJob(path);
    }

    static Problem noJob(Path path) {
        return Problem.inFile(
                "No job", path.toString(), "there is no " + Journal.FILE + " in it", "name a job folder, or start one");
    }
}
