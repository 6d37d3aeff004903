package everyblade.record;

import everyblade.json.PlainFile;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The machine's own file system. Safe for use by several threads; make one for a process and share it.
 *
 * <p>POSIX drops all of a process's locks on a file as soon as the process closes <em>any</em> descriptor of that file.
 * So when a lock turns out to be held by this process, the channel that asked is kept open and is the one to ask again.
 */
public final class LocalDisk implements Disk {

    /** The locked byte lies far behind the text, since on some systems nobody else can read a locked byte. */
    private static final long LOCKED_BYTE = 1L << 40;

    private static final int LONGEST_HOLDER = 1000;
    private static final long LONGEST_LOCK = 1 << 20;

    private final Map<Path, FileChannel> asked = new HashMap<>();

    @Override
    public boolean exists(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public List<String> list(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Override
    public void requireFolder(Path folder) throws IOException {
        PlainFile.requireFolder(folder);
    }

    @Override
    public InputStream read(Path file, long longest) throws IOException {
        return PlainFile.open(file, longest);
    }

    @Override
    public long size(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                .size();
    }

    @Override
    public void createFolder(Path folder) throws IOException {
        Files.createDirectory(folder);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.delete(path);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (File.separatorChar == '\\') {
            return; // Windows opens no channel on a folder and keeps names safe by itself
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    @Override
    public OpenFile create(Path file) throws IOException {
        return new LocalFile(FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    }

    @Override
    public OpenFile createLike(Path file, Path other) throws IOException {
        OpenFile made = create(file);
        try {
            PosixFileAttributeView as =
                    Files.getFileAttributeView(other, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
            PosixFileAttributeView own =
                    Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
            if (as != null && own != null) {
                PosixFileAttributes wanted = as.readAttributes();
                PosixFileAttributes found = own.readAttributes();
                if (!found.owner().equals(wanted.owner()) || !found.group().equals(wanted.group())) {
                    throw new IOException(other + " belongs to somebody else");
                }
                own.setPermissions(wanted.permissions());
            }
            return made;
        } catch (IOException failure) {
            made.close();
            Files.delete(file);
            throw failure;
        }
    }

    @Override
    public OpenFile open(Path file) throws IOException {
        PlainFile.require(file, Long.MAX_VALUE);
        return new LocalFile(FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
    }

    @Override
    public synchronized LockAnswer lock(Path file, String holder) throws IOException {
        Path key = file.toAbsolutePath().normalize();
        FileChannel channel = asked.remove(key);
        if (channel == null) {
            if (exists(file)) {
                PlainFile.require(file, LONGEST_LOCK); // what it holds is overwritten, so it must be ours
            }
            channel = FileChannel.open(
                    file,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS);
        }
        try {
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            if (lock == null) {
                String other = words(channel);
                channel.close();
                return new Held(other);
            }
            channel.truncate(0);
            writeAll(channel, 0, holder.getBytes(StandardCharsets.UTF_8));
            return new LocalLock(channel);
        } catch (OverlappingFileLockException heldByThisProcess) {
            asked.put(key, channel);
            return new Held(words(channel));
        } catch (IOException | RuntimeException failure) {
            channel.close();
            throw failure;
        }
    }

    private static String words(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(LONGEST_HOLDER);
        channel.read(buffer, 0);
        return new String(buffer.array(), 0, buffer.position(), StandardCharsets.UTF_8).strip();
    }

    private static void writeAll(FileChannel channel, long position, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer, position + buffer.position());
        }
    }

    private record LocalFile(FileChannel channel) implements OpenFile {

        @Override
        public void write(long position, byte[] bytes) throws IOException {
            writeAll(channel, position, bytes);
        }

        @Override
        public void truncate(long length) throws IOException {
            channel.truncate(length);
        }

        @Override
        public void force() throws IOException {
            channel.force(false);
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }

    private record LocalLock(FileChannel channel) implements Lock {

        @Override
        public void close() throws IOException {
            try (channel) {
                channel.truncate(0);
            }
        }
    }
}
