package everyblade.record;

import everyblade.record.packed.PackedName;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes a job folder of files that come from elsewhere: built beside its place under another name, verified, forced to
 * disk, and renamed. What a failure leaves is removed again; what a cut in power leaves is a folder whose name ends with
 * {@code .arriving-1} or so.
 */
final class JobArrival {

    private final Disk disk;
    private final Path target;
    private final List<Path> made = new ArrayList<>();

    JobArrival(Disk disk, Path target) {
        this.disk = disk;
        this.target = target;
    }

    <E extends Exception> JobFolder.Verification arrive(JobFolder.Arriving<E> arriving) throws E {
        boolean there = false;
        try {
            if (disk.exists(target) && !disk.list(target).isEmpty()) {
                return new JobFolder.Broken(RecordProblem.inFile(
                        RecordProblem.What.JOB_NOT_BROUGHT,
                        target.toString(),
                        FolderFlaw.Whole.SOMETHING_THERE,
                        Remedy.NAME_A_NEW_FOLDER));
            }
            Path building = freeName();
            createFolder(building);
            for (String folder : List.of("model", "photos")) {
                createFolder(building.resolve(folder));
            }
            arriving.into((name, bytes) -> file(building, name, bytes));
            JobFolder.Verification found = new JobFolder(disk, building).verify(Optional.empty());
            if (found instanceof JobFolder.Sound) {
                there = moved(building);
            }
            return found;
        } catch (Unfit unfit) {
            return new JobFolder.Broken(RecordProblem.inFile(
                    RecordProblem.What.JOB_NOT_BROUGHT,
                    target.toString(),
                    unfit.flaw,
                    Remedy.ASK_WHERE_THEY_CAME_FROM));
        } catch (IOException failure) {
            return new JobFolder.Broken(RecordProblem.inFile(
                    RecordProblem.What.JOB_NOT_BROUGHT,
                    target.toString(),
                    DiskFailure.of(failure),
                    Remedy.CHECK_DISK_OR_NAME_ANOTHER));
        } finally {
            if (!there) {
                removeWhatWasMade();
            }
        }
    }

    private boolean moved(Path building) throws IOException {
        for (Path folder : made.stream().map(Path::getParent).distinct().toList()) {
            disk.forceFolder(folder);
        }
        if (disk.exists(target)) {
            disk.delete(target); // it is empty; not every system renames onto an empty folder
        }
        disk.rename(building, target);
        disk.forceFolder(target.getParent());
        return true;
    }

    private void file(Path building, String name, byte[] bytes) throws IOException {
        if (PackedName.largest(name).orElse(-1) < bytes.length) {
            throw new Unfit(new FolderFlaw.NoFileOfAJob(name.replaceAll("\\p{Cntrl}", "?")));
        }
        Path place = building.resolve(name);
        createParents(place.getParent());
        try (Disk.OpenFile open = disk.create(place)) {
            made.add(place);
            open.write(0, bytes);
            open.force();
        }
    }

    private void createParents(Path folder) throws IOException {
        if (!disk.exists(folder)) {
            createParents(folder.getParent());
            createFolder(folder);
        }
    }

    private void createFolder(Path folder) throws IOException {
        disk.createFolder(folder);
        made.add(folder);
    }

    private Path freeName() throws IOException {
        Path parent = target.getParent();
        if (parent == null) {
            throw new Unfit(FolderFlaw.Whole.WHOLE_DISK);
        }
        createParents(parent);
        for (int number = 1; ; number++) {
            Path path = parent.resolve(target.getFileName() + ".arriving-" + number);
            if (!disk.exists(path)) {
                return path;
            }
        }
    }

    /** Parents that were made stay where something else was put into them meanwhile. */
    private void removeWhatWasMade() {
        for (int last = made.size() - 1; last >= 0; last--) {
            try {
                disk.delete(made.get(last));
            } catch (IOException stays) {
                return; // an odd folder is left over, whose name says what it is
            }
        }
    }

    /** What arrives, or where, does not make a job. */
    private static final class Unfit extends IOException {

        private static final long serialVersionUID = 1L;

        private final transient FolderFlaw flaw;

        Unfit(FolderFlaw flaw) {
            super(flaw.toString());
            this.flaw = flaw;
        }
    }
}
