package everyblade.record;

import everyblade.record.LineFormat.FirstLine;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Makes a job folder as a whole: built beside its place under another name, forced to disk, and renamed. What a failure
 * leaves is removed again; what a cut in power leaves is a folder whose name ends with {@code .starting-1} or so.
 */
final class JobStart {

    private final Disk disk;
    private final Path target;
    private final List<Path> made = new ArrayList<>();
    private boolean emptyFolderRemoved;

    JobStart(Disk disk, Path target) {
        this.disk = disk;
        this.target = target;
    }

    Optional<RecordProblem> start(Beginning beginning, Frozen frozen) {
        byte[] journal;
        try {
            journal = firstLine(beginning, frozen);
        } catch (Unreadable unreadable) {
            return problem(new FolderFlaw.Unkeepable(unreadable.flaw()), Remedy.OTHER_WORDS);
        }
        try {
            if (disk.exists(target) && !isEmptyFolder()) {
                return problem(FolderFlaw.Whole.SOMETHING_THERE, Remedy.NAME_A_NEW_FOLDER);
            }
            if (target.getParent() == null) {
                return problem(FolderFlaw.Whole.WHOLE_DISK, Remedy.NAME_A_NEW_FOLDER);
            }
            build(journal, frozen);
            return Optional.empty();
        } catch (IOException failure) {
            Optional<String> left = removeWhatWasMade().map(Path::toString);
            return problem(new FolderFlaw.NotMade(DiskFailure.of(failure), left), Remedy.CHECK_DISK_OR_NAME_ANOTHER);
        }
    }

    private boolean isEmptyFolder() {
        try {
            return disk.list(target).isEmpty();
        } catch (IOException notAFolder) {
            return false;
        }
    }

    private static byte[] firstLine(Beginning beginning, Frozen frozen) throws Unreadable {
        FirstLine first = FirstLine.of(beginning, frozen);
        byte[] line = Chain.seal(Chain.START, LineFormat.firstLine(first)).bytes();
        if (!LineFormat.readFirst(line, false).equals(first)) {
            throw new Unreadable(LineFlaw.Whole.NOT_AS_SAID);
        }
        byte[] journal = Arrays.copyOf(line, line.length + 1);
        journal[line.length] = '\n';
        return journal;
    }

    private void build(byte[] journal, Frozen frozen) throws IOException {
        Path parent = target.getParent();
        createParents(parent);
        Path building = freeName(parent);
        createFolder(building);
        freeze(building, frozen.model(), frozen.meshes(), frozen.limits());
        if (frozen.drill().isPresent()) {
            freeze(
                    building.resolve(JobFolder.DRILL_FOLDER),
                    JobFolder.DRILL_FILE,
                    frozen.drill().get());
        }
        if (frozen.previous().isPresent()) {
            PreviousRecord previous = frozen.previous().get();
            Path folder = building.resolve(JobFolder.PREVIOUS);
            createFolder(folder);
            freeze(folder, previous.model(), previous.meshes(), previous.limits());
            createFile(folder.resolve(Journal.FILE), previous.journal().bytes());
            disk.forceFolder(folder);
        }
        createFolder(building.resolve(JobFolder.PHOTOS));
        createFile(building.resolve(Journal.FILE), journal);
        disk.forceFolder(building);
        if (disk.exists(target)) {
            disk.delete(target); // it is empty; not every system renames onto an empty folder
            emptyFolderRemoved = true;
        }
        disk.rename(building, target);
        made.replaceAll(path -> path.startsWith(building) ? target.resolve(building.relativize(path)) : path);
        disk.forceFolder(parent);
    }

    private void freeze(Path job, FrozenFile model, SortedMap<String, FrozenFile> meshes, Optional<FrozenFile> limits)
            throws IOException {
        freeze(job.resolve(JobFolder.MODEL_FOLDER), JobFolder.MODEL_FILE, model);
        // Meshes may be named with folders of their own; here they lie flat, under the hash that the journal names.
        for (FrozenFile mesh : new LinkedHashSet<>(meshes.values())) {
            createFile(job.resolve(JobFolder.MODEL_FOLDER).resolve(mesh.hash()), mesh.bytes());
        }
        disk.forceFolder(job.resolve(JobFolder.MODEL_FOLDER));
        if (limits.isPresent()) {
            freeze(job.resolve(JobFolder.LIMITS_FOLDER), JobFolder.LIMITS_FILE, limits.get());
        }
    }

    private void freeze(Path folder, String name, FrozenFile file) throws IOException {
        createFolder(folder);
        createFile(folder.resolve(name), file.bytes());
        disk.forceFolder(folder);
    }

    private void createParents(Path folder) throws IOException {
        if (disk.exists(folder)) {
            return;
        }
        Path parent = folder.getParent();
        if (parent != null) {
            createParents(parent);
        }
        createFolder(folder);
        disk.forceFolder(parent);
    }

    private Path freeName(Path parent) {
        for (int number = 1; ; number++) {
            Path path = parent.resolve(target.getFileName() + ".starting-" + number);
            if (!disk.exists(path)) {
                return path;
            }
        }
    }

    private void createFolder(Path folder) throws IOException {
        disk.createFolder(folder);
        made.add(folder);
    }

    private void createFile(Path file, byte[] bytes) throws IOException {
        try (Disk.OpenFile open = disk.create(file)) {
            made.add(file);
            open.write(0, bytes);
            open.force();
        }
    }

    /** Removes it as far as possible; gives the first path that stayed. */
    private Optional<Path> removeWhatWasMade() {
        for (int last = made.size() - 1; last >= 0; last--) {
            try {
                disk.delete(made.get(last));
            } catch (IOException stays) {
                return Optional.of(made.get(last));
            }
        }
        if (emptyFolderRemoved) {
            try {
                disk.createFolder(target);
            } catch (IOException staysAway) {
                // an empty folder is no loss
            }
        }
        return Optional.empty();
    }

    private Optional<RecordProblem> problem(FolderFlaw why, Remedy toDo) {
        return Optional.of(RecordProblem.inFile(RecordProblem.What.JOB_NOT_STARTED, target.toString(), why, toDo));
    }
}
