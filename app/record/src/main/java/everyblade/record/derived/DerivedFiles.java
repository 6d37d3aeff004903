package everyblade.record.derived;

import everyblade.json.PlainFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The user's cache of what was computed. A file that is missing, damaged, of another program version or sealed by another
 * key is as good as none: it is computed again. Nothing here fails: without a place to keep anything, nothing is kept.
 *
 * <p>The folder never grows beyond {@link #MOST}; then what was used longest ago goes first. Nothing is kept where it
 * would leave less than {@link #ROOM} on the disk, so that reading a job never takes the room that its journal needs.
 * Safe for several threads, and for several programs at once.
 */
public final class DerivedFiles {

    /** Size of the folder at most, bytes. */
    static final long MOST = 512L << 20;

    /** What is left free on the disk, bytes: more than any shift writes, a few of the largest pictures included. */
    static final long ROOM = 256L << 20;

    private static final int LARGEST = 128 << 20;
    private static final Duration LONGEST_UNUSED = Duration.ofDays(90);
    private static final Duration ABANDONED = Duration.ofHours(1);
    private static final String KEPT = ".kept";
    private static final String ON_ITS_WAY = ".part";

    private final Optional<Path> folder;
    private final Supplier<String> program;
    private final long most;
    private final long room;
    private Optional<Seal> seal = Optional.empty();
    private Optional<String> mark = Optional.empty();
    private long written = Long.MAX_VALUE;

    private DerivedFiles(Optional<Path> folder, Supplier<String> program, long most, long room) {
        this.folder = folder;
        this.program = program;
        this.most = most;
        this.room = room;
    }

    /** Keeps nothing. */
    public static DerivedFiles none() {
        return new DerivedFiles(Optional.empty(), () -> "", 0, 0);
    }

    /**
     * Kept in a folder, which is made when the first file is.
     *
     * @param program tells this version of the program from every other that might compute something else; asked once
     */
    public static DerivedFiles in(Path folder, Supplier<String> program) {
        return in(folder, program, MOST, ROOM);
    }

    static DerivedFiles in(Path folder, Supplier<String> program, long most, long room) {
        return new DerivedFiles(Optional.of(folder.toAbsolutePath().normalize()), program, most, room);
    }

    /**
     * What this user's program of this version kept.
     *
     * @param kind of what is asked for, a plain word
     * @param key that says all that it depends on
     */
    public Optional<byte[]> find(String kind, String key) {
        if (folder.isEmpty()) {
            return Optional.empty();
        }
        try {
            String name = name(kind, key);
            Path file = file(kind, name);
            byte[] sealed = PlainFile.read(file, LARGEST);
            Optional<byte[]> found = seal().opened(name, sealed);
            if (found.isPresent()) {
                Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            } else {
                Files.deleteIfExists(file);
            }
            return found;
        } catch (IOException | RuntimeException notKept) {
            return Optional.empty();
        }
    }

    /** Keeps this under its kind and key, if there is room for it. */
    public synchronized void keep(String kind, String key, byte[] content) {
        if (folder.isEmpty() || content.length > Math.min(most, LARGEST) - Seal.LENGTH) {
            return;
        }
        try {
            OwnFile.createFolder(folder.get());
            makeRoom(content.length);
            if (Files.getFileStore(folder.get()).getUsableSpace() - content.length < room) {
                return;
            }
            String name = name(kind, key);
            Path part = folder.get().resolve(UUID.randomUUID() + ON_ITS_WAY);
            try {
                OwnFile.write(part, seal().of(name, content), content);
                Files.move(part, file(kind, name), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
                written += content.length;
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException | RuntimeException notKept) {
            // it is computed again next time
        }
    }

    private synchronized Seal seal() throws IOException {
        if (seal.isEmpty()) {
            seal = Optional.of(Seal.in(folder.orElseThrow()));
        }
        return seal.get();
    }

    /** All that the content depends on, told apart from every other. */
    private synchronized String name(String kind, String key) {
        if (mark.isEmpty()) {
            mark = Optional.of(program.get());
        }
        return kind + "\n" + mark.get() + "\n" + key;
    }

    private Path file(String kind, String name) {
        return folder.orElseThrow().resolve(kind + "-" + hash(name) + KEPT);
    }

    private static String hash(String name) {
        try {
            byte[] all = MessageDigest.getInstance("SHA-256").digest(name.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(all, 0, 16);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /** A file of the folder as it was found. */
    private record Entry(Path file, long size, Instant used) {}

    /** Looks through the folder at first, and then only when so much was written that it may be full. */
    private void makeRoom(long needed) throws IOException {
        if (written <= most - needed) {
            return;
        }
        Instant now = Instant.now();
        List<Entry> kept = new ArrayList<>();
        for (Entry entry : entries()) {
            boolean part = entry.file().toString().endsWith(ON_ITS_WAY);
            if (entry.used().isBefore(now.minus(part ? ABANDONED : LONGEST_UNUSED))) {
                Files.deleteIfExists(entry.file());
            } else if (!part) {
                kept.add(entry);
            }
        }
        kept.sort(Comparator.comparing(Entry::used));
        long size = kept.stream().mapToLong(Entry::size).sum();
        for (int i = 0; i < kept.size() && size > Math.max(0, most - needed); i++) {
            Files.deleteIfExists(kept.get(i).file());
            size -= kept.get(i).size();
        }
        written = size;
    }

    private List<Entry> entries() throws IOException {
        List<Entry> entries = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder.orElseThrow())) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if ((name.endsWith(KEPT) || name.endsWith(ON_ITS_WAY))
                        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                    try {
                        entries.add(new Entry(
                                file,
                                Files.size(file),
                                Files.getLastModifiedTime(file).toInstant()));
                    } catch (NoSuchFileException removedMeanwhile) {
                        // by another program that makes room
                    }
                }
            }
        }
        return entries;
    }
}
