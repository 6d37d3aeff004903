package everyblade.cli;

import everyblade.record.Disk;
import everyblade.record.LocalDisk;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/** A disk that is full: nothing longer than a newline can be written to files that are there. */
final class RefusingDisk implements Disk {

    private final LocalDisk disk = new LocalDisk();

    @Override
    public OpenFile open(Path file) throws IOException {
        OpenFile open = disk.open(file);
        return new OpenFile() {
            @Override
            public void write(long position, byte[] bytes) throws IOException {
                if (bytes.length > 1) {
                    throw new IOException("the disk is full");
                }
                open.write(position, bytes);
            }

            @Override
            public void truncate(long length) throws IOException {
                open.truncate(length);
            }

            @Override
            public void force() throws IOException {
                open.force();
            }

            @Override
            public void close() throws IOException {
                open.close();
            }
        };
    }

    @Override
    public OpenFile createLike(Path file, Path other) throws IOException {
        throw new IOException("the disk is full");
    }

    @Override
    public boolean exists(Path path) {
        return disk.exists(path);
    }

    @Override
    public List<String> list(Path folder) throws IOException {
        return disk.list(folder);
    }

    @Override
    public void requireFolder(Path folder) throws IOException {
        disk.requireFolder(folder);
    }

    @Override
    public InputStream read(Path file, long longest) throws IOException {
        return disk.read(file, longest);
    }

    @Override
    public long size(Path file) throws IOException {
        return disk.size(file);
    }

    @Override
    public void createFolder(Path folder) throws IOException {
        disk.createFolder(folder);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        disk.rename(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
        disk.delete(path);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        disk.forceFolder(folder);
    }

    @Override
    public OpenFile create(Path file) throws IOException {
        return disk.create(file);
    }

    @Override
    public LockAnswer lock(Path file, String holder) throws IOException {
        return disk.lock(file, holder);
    }
}
