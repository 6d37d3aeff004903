package everyblade.record.derived;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files and folders that nobody but their owner may read, where the system knows of that. */
final class OwnFile {

    private OwnFile() {}

    static boolean hasPermissions(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    /** Makes a folder, and those above it that are missing. */
    static void createFolder(Path folder) throws IOException {
        Files.createDirectories(folder, only(folder, "rwx------"));
    }

    /** Makes a new file; what a failure leaves of it is removed. */
    static void write(Path file, byte[]... parts) throws IOException {
        Set<StandardOpenOption> options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try (SeekableByteChannel channel = Files.newByteChannel(file, options, only(file, "rw-------"))) {
            for (byte[] part : parts) {
                ByteBuffer rest = ByteBuffer.wrap(part);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
            }
        } catch (FileAlreadyExistsException notOurs) {
            throw notOurs;
        } catch (IOException failure) {
            Files.deleteIfExists(file);
            throw failure;
        }
    }

    private static FileAttribute<?>[] only(Path path, String permissions) {
        return hasPermissions(path)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
