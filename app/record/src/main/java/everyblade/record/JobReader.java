package everyblade.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads a job with the files that are frozen into it, each of which must be the one that its journal names. */
final class JobReader {

    private final JobFiles files;
    private final RecordKind kind;

    JobReader(JobFiles files) {
        this(files, RecordKind.JOB);
    }

    JobReader(JobFiles files, RecordKind kind) {
        this.files = files;
        this.kind = kind;
    }

    /** The job with the record that it is compared with. */
    JobFolder.Reading read(Understood understood) {
        try (InputStream in = files.open(Journal.FILE, Journal.LARGEST)) {
            Journal.Reading reading = Journal.read(in, understood, kind);
            return reading instanceof Journal.Unsound unsound
                    ? new JobFolder.Refused(unsound.problem())
                    : new JobFolder.Readable(withPrevious(alone(((Journal.Sound) reading).journal())));
        } catch (UnsoundJournal otherwise) {
            return new JobFolder.Refused(otherwise.problem());
        } catch (IOException failure) {
            return new JobFolder.Refused(unreadable(Journal.FILE, failure));
        }
    }

    /** The first file that is not the one that was frozen; empty if all are. */
    Optional<RecordProblem> frozenOtherwise(Journal journal) {
        try {
            withPrevious(alone(journal));
            return Optional.empty();
        } catch (UnsoundJournal otherwise) {
            return Optional.of(otherwise.problem());
        }
    }

    private Job alone(Journal journal) throws UnsoundJournal {
        FrozenFile model = frozen(
                JobFolder.MODEL_FOLDER + "/" + JobFolder.MODEL_FILE,
                JobFiles.LARGEST_MODEL,
                journal.modelHash(),
                RecordProblem.What.MODEL_CHANGED);
        TreeMap<String, FrozenFile> meshes = new TreeMap<>();
        for (Map.Entry<String, String> mesh : journal.meshHashes().entrySet()) {
            String file = JobFolder.MODEL_FOLDER + "/" + mesh.getValue();
            meshes.put(
                    mesh.getKey(),
                    frozen(file, JobFiles.LARGEST_MESH, mesh.getValue(), RecordProblem.What.SHAPE_CHANGED));
        }
        Optional<FrozenFile> limits = Optional.empty();
        if (journal.limitsHash().isPresent()) {
            String file = JobFolder.LIMITS_FOLDER + "/" + JobFolder.LIMITS_FILE;
            limits = Optional.of(frozen(
                    file, JobFiles.LARGEST_LIMITS, journal.limitsHash().get(), RecordProblem.What.LIMITS_CHANGED));
        }
        Optional<FrozenFile> drill = Optional.empty();
        if (journal.drillHash().isPresent()) {
            String file = JobFolder.DRILL_FOLDER + "/" + JobFolder.DRILL_FILE;
            drill = Optional.of(
                    frozen(file, JobFiles.LARGEST_DRILL, journal.drillHash().get(), RecordProblem.What.DRILL_CHANGED));
        }
        return new Job(journal, model, meshes, limits, drill, Optional.empty());
    }

    private FrozenFile frozen(String file, long longest, String hash, RecordProblem.What otherwise)
            throws UnsoundJournal {
        try {
            FrozenFile found = FrozenFile.of(files.read(file, longest));
            if (found.hash().equals(hash)) {
                return found;
            }
            throw changed(file, otherwise);
        } catch (IOException failure) {
            throw new UnsoundJournal(unreadable(file, failure));
        }
    }

    /** With the earlier record; nothing further back is read. */
    private Job withPrevious(Job job) throws UnsoundJournal {
        if (job.journal().previousHead().isEmpty()) {
            return job;
        }
        String file = JobFolder.PREVIOUS + "/" + Journal.FILE;
        JobReader there = new JobReader(new JobFiles(files.disk(), files.root().resolve(JobFolder.PREVIOUS)));
        try (InputStream in = files.open(file, Journal.LARGEST)) {
            Journal.Reading reading = Journal.read(in);
            if (reading instanceof Journal.Unsound unsound) {
                throw new UnsoundJournal(within(unsound.problem()));
            }
            Journal earlier = ((Journal.Sound) reading).journal();
            if (!earlier.head().equals(job.journal().previousHead().get())
                    || earlier.torn().isPresent()) {
                throw changed(file, RecordProblem.What.PREVIOUS_CHANGED);
            }
            return new Job(
                    job.journal(),
                    job.model(),
                    job.meshes(),
                    job.limits(),
                    job.drill(),
                    Optional.of(there.within(earlier)));
        } catch (IOException failure) {
            throw new UnsoundJournal(unreadable(file, failure));
        }
    }

    private Job within(Journal journal) throws UnsoundJournal {
        try {
            return alone(journal);
        } catch (UnsoundJournal otherwise) {
            throw new UnsoundJournal(within(otherwise.problem()));
        }
    }

    private static RecordProblem within(RecordProblem problem) {
        return new RecordProblem(
                problem.what(),
                JobFolder.PREVIOUS + "/" + problem.file(),
                problem.line(),
                problem.why(),
                problem.toDo());
    }

    private static UnsoundJournal changed(String file, RecordProblem.What what) {
        return new UnsoundJournal(RecordProblem.inFile(what, file, FolderFlaw.Whole.OTHER_FILE, Remedy.PUT_BACK_FILE));
    }

    JobFolder.Copying copy() {
        JobFolder.Reading reading = read(Understood.NOTHING);
        if (reading instanceof JobFolder.Refused refused) {
            return refused;
        }
        Job job = ((JobFolder.Readable) reading).job();
        try {
            byte[] journal = files.read(Journal.FILE, Journal.LARGEST);
            byte[] sound = Arrays.copyOf(journal, Math.toIntExact(job.journal().length()));
            return new JobFolder.Copied(new PreviousRecord(
                    job.journal().head(), FrozenFile.of(sound), job.model(), job.meshes(), job.limits()));
        } catch (IOException failure) {
            return new JobFolder.Refused(unreadable(Journal.FILE, failure));
        }
    }

    RecordProblem unreadable(String file, IOException failure) {
        return files.disk().exists(files.root().resolve(Journal.FILE))
                ? RecordProblem.inFile(
                        RecordProblem.What.FILE_NOT_READ, file, DiskFailure.of(failure), Remedy.CHECK_DISK)
                : noJob(files.root());
    }

    static RecordProblem noJob(Path path) {
        return RecordProblem.inFile(
                RecordProblem.What.NO_JOB, path.toString(), FolderFlaw.Whole.NO_JOURNAL, Remedy.NAME_OR_START_A_JOB);
    }
}
