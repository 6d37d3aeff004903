package everyblade.cli;

import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;

/**
 * A file to be written: afterwards it is there as a whole, or everything is as it was.
 *
 * @param option that named it, for messages
 * @param named as it was named
 * @param place where it is to be
 */
record NewFile(String option, Path named, Path place) {

    private static final String JOURNAL = "journal.jsonl";

    /** A file of this name, which may be there already; fails if it cannot be a file. */
    static NewFile at(Surroundings around, String option, Path named) {
        Path path = around.path(named).toAbsolutePath();
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw Failure.of("stopped.newFile.somethingThereThatNoFile", option, named);
        }
        if (!Files.isDirectory(path.getParent())) {
            throw Failure.of("stopped.newFile.itsFolderNotThereMake", option, named);
        }
        try {
            Path folder = path.getParent().toRealPath();
            Path place = Files.exists(path) ? path.toRealPath() : folder.resolve(path.getFileName());
            Optional<Path> job = jobRound(place);
            if (job.isPresent()) {
                throw Failure.of("stopped.newFile.wouldBeWithinJobIn", option, named, job.get());
            }
            return new NewFile(option, named, place);
        } catch (IOException failure) {
            throw unwritable(option, named);
        }
    }

    /** The job that a place is within, however deep. */
    private static Optional<Path> jobRound(Path place) {
        for (Path folder = place.getParent(); folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve(JOURNAL), LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    /** The same, if its name says that it is a PDF. */
    static NewFile pdf(Surroundings around, String option, Path named) {
        OutputFormat.PDF.require(option, named);
        return at(around, option, named);
    }

    /** Writes what is in a file. */
    @FunctionalInterface
    interface Filling {
        void to(OutputStream out) throws IOException;
    }

    /** Writes it beside its place, and puts it there when it is safe. */
    void write(byte[] bytes) {
        write(out -> out.write(bytes));
    }

    /** The same, for nobody to read but its owner, where the system knows of that. */
    void writeForOwner(byte[] bytes) {
        boolean known = place.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?> owner = PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));
        write(out -> out.write(bytes), known ? new FileAttribute<?>[] {owner} : new FileAttribute<?>[0]);
    }

    /** The same; if the filling fails nothing is left of it. */
    void write(Filling filling) {
        write(filling, new FileAttribute<?>[0]);
    }

    private void write(Filling filling, FileAttribute<?>... attributes) {
        Path beside = free();
        Set<StandardOpenOption> options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        // What is half-written goes if the program is stopped meanwhile, such as by Ctrl+C.
        Thread removal = new Thread(() -> remove(beside));
        Runtime.getRuntime().addShutdownHook(removal);
        try {
            try (FileChannel file = FileChannel.open(beside, options, attributes)) {
                filling.to(Channels.newOutputStream(file));
                file.force(true);
            }
            keepMode(beside);
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failure) {
            remove(beside);
            throw unwritable(option, named);
        } catch (RuntimeException failure) {
            remove(beside);
            throw failure;
        } finally {
            forget(removal);
        }
    }

    private static void forget(Thread removal) {
        try {
            Runtime.getRuntime().removeShutdownHook(removal);
        } catch (IllegalStateException stopping) {
            // Then it runs, and finds nothing, or what nobody goes on with.
        }
    }

    private static void remove(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException stays) {
            // what made it be removed is what matters
        }
    }

    /** Who may read what was there before may read what takes its place, and nobody else. */
    private void keepMode(Path beside) throws IOException {
        boolean known = place.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (known && Files.exists(place)) {
            Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(place));
        }
    }

    private Path free() {
        for (int number = 1; ; number++) {
            Path path = place.resolveSibling(place.getFileName() + ".part-" + number);
            if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
                return path;
            }
        }
    }

    private static Failure unwritable(String option, Path named) {
        return Failure.of("stopped.newFile.cannotBeWrittenCheckDisk", option, named);
    }
}
