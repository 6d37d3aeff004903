package everyblade.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * A file in a folder that somebody else may have made. It is opened only if it is a regular file, under one name, and no
 * longer than expected: a link of either kind leads to a file of somebody else's, and a pipe or a device may never end.
 * What is found is asked before anything is opened, since opening a pipe already waits.
 */
public final class PlainFile {

    private static final String NAMES = "unix:nlink";

    private PlainFile() {}

    /** A file that is not opened for what it is; the message says why, as the end of a sentence. */
    public static final class NotPlain extends IOException {

        private static final long serialVersionUID = 1L;

        /** What was found instead. */
        public enum Kind {
            LINK,
            NO_FOLDER,
            FOLDER,
            DEVICE,
            HARD_LINK,
            TOO_LONG
        }

        private final Kind kind;
        private final String name;
        private final long megabytes;

        private NotPlain(Kind kind, Path path, long megabytes) {
            super(why(kind, String.valueOf(path.getFileName()), megabytes));
            this.kind = kind;
            this.name = String.valueOf(path.getFileName());
            this.megabytes = megabytes;
        }

        private static String why(Kind kind, String name, long megabytes) {
            return switch (kind) {
                case LINK -> name + " is a symbolic link, and links are not followed";
                case NO_FOLDER -> name + " is no folder";
                case FOLDER -> "it is a folder";
                case DEVICE -> "it is no regular file but a pipe, a device or the like";
                case HARD_LINK ->
                    "it is a hard link, so it is a file of somewhere else, too; copy the folder to get it alone";
                case TOO_LONG -> "it is larger than " + megabytes + " MB, which no such file is";
            };
        }

        public Kind kind() {
            return kind;
        }

        /** Of the file or folder, without folders before it. */
        public String name() {
            return name;
        }

        /** How many a file may have at most, if it has more. */
        public long megabytes() {
            return megabytes;
        }
    }

    /**
     * All bytes of a file.
     *
     * @param longest in bytes, at least a megabyte
     * @throws NotPlain if it is no plain file, or longer
     */
    public static byte[] read(Path file, long longest) throws IOException {
        require(file, longest);
        try (InputStream in = stream(file)) {
            byte[] bytes = in.readNBytes(Math.toIntExact(longest + 1));
            if (bytes.length > longest) {
                throw tooLong(file, longest);
            }
            return bytes;
        }
    }

    /**
     * All bytes of a file that a folder names, reached through folders of its own only.
     *
     * @param name relative to the folder, with / between folders
     */
    public static byte[] read(Path folder, String name, long longest) throws IOException {
        Path path = folder;
        String[] names = name.split("/");
        for (int i = 0; i < names.length - 1; i++) {
            path = path.resolve(names[i]);
            requireFolder(path);
        }
        return read(path.resolve(names[names.length - 1]), longest);
    }

    /**
     * Opens a file to be read from its beginning.
     *
     * @throws NotPlain if it is no plain file, or longer than so many bytes
     */
    public static InputStream open(Path file, long longest) throws IOException {
        require(file, longest);
        return stream(file);
    }

    private static InputStream stream(Path file) throws IOException {
        return Files.newInputStream(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * Refuses whatever is not a plain file.
     *
     * @throws NotPlain with the reason
     */
    public static void require(Path file, long longest) throws IOException {
        BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        Optional<NotPlain.Kind> otherwise = otherwise(file, found);
        if (otherwise.isPresent()) {
            throw new NotPlain(otherwise.get(), file, 0);
        }
        if (found.size() > longest) {
            throw tooLong(file, longest);
        }
    }

    /**
     * Refuses whatever is not a folder of its own.
     *
     * @throws NotPlain if it is a link, or no folder at all
     * @throws NoSuchFileException if it is not there
     */
    public static void requireFolder(Path folder) throws IOException {
        BasicFileAttributes found = Files.readAttributes(folder, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (!found.isDirectory()) {
            throw new NotPlain(found.isSymbolicLink() ? NotPlain.Kind.LINK : NotPlain.Kind.NO_FOLDER, folder, 0);
        }
    }

    /** What a file is, if it is not plain. */
    private static Optional<NotPlain.Kind> otherwise(Path file, BasicFileAttributes found) throws IOException {
        if (found.isSymbolicLink()) {
            return Optional.of(NotPlain.Kind.LINK);
        }
        if (found.isDirectory()) {
            return Optional.of(NotPlain.Kind.FOLDER);
        }
        if (!found.isRegularFile()) {
            return Optional.of(NotPlain.Kind.DEVICE);
        }
        boolean counted = file.getFileSystem().supportedFileAttributeViews().contains("unix");
        boolean another =
                counted && ((Number) Files.getAttribute(file, NAMES, LinkOption.NOFOLLOW_LINKS)).longValue() > 1;
        return another ? Optional.of(NotPlain.Kind.HARD_LINK) : Optional.empty();
    }

    private static NotPlain tooLong(Path file, long longest) {
        return new NotPlain(NotPlain.Kind.TOO_LONG, file, longest >> 20);
    }
}
