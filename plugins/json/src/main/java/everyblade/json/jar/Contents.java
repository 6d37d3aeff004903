package everyblade.json.jar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** What can be said of a jar from its list of entries: whether it is of a size and of names that a model's jar can have. */
final class Contents {

    /** Largest jar, bytes. */
    static final long LARGEST_JAR = 64L << 20;

    /** Most bytes that it may unpack to. */
    static final long LARGEST_UNPACKED = 256L << 20;

    /** Most entries. */
    static final int MOST_ENTRIES = 10_000;

    /** As much of an entry as is read: a little more than the reader of models takes, so that it can complain itself. */
    private static final int MOST_READ = (64 << 20) + 1;

    private Contents() {}

    /** Before the jar is opened at all, since opening it reads its whole list of entries. */
    static void requireSize(Path jar) throws IOException, JarFault {
        long size = Files.size(jar);
        if (size > LARGEST_JAR) {
            throw tooLarge("it has " + (size >> 20) + " MB");
        }
    }

    static void requireFit(ZipFile jar) throws JarFault {
        if (jar.size() > MOST_ENTRIES) {
            throw tooLarge("it has " + jar.size() + " entries");
        }
        List<? extends ZipEntry> entries = Collections.list(jar.entries());
        long unpacked = entries.stream().mapToLong(ZipEntry::getSize).sum();
        if (unpacked > LARGEST_UNPACKED) {
            throw tooLarge("it unpacks to " + (unpacked >> 20) + " MB");
        }
        Optional<String> outside = entries.stream()
                .map(ZipEntry::getName)
                .filter(Contents::leadsOut)
                .findFirst();
        if (outside.isPresent()) {
            throw new JarFault(
                    Fault.NAME_OUTSIDE,
                    "the jar has an entry named " + JarRefusal.line(outside.get()),
                    "unpacked, it would lie outside its folder, which no build tool does",
                    "do not use this jar, and ask where it comes from");
        }
    }

    /** The bytes of an entry, cut off where no model can be so long; empty if there is no such entry. */
    static Optional<byte[]> bytes(ZipFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        if (entry == null) {
            return Optional.empty();
        }
        try (InputStream in = jar.getInputStream(entry)) {
            return Optional.of(in.readNBytes(MOST_READ));
        }
    }

    private static boolean leadsOut(String name) {
        return name.matches("(?s)[/\\\\].*|[A-Za-z]:.*")
                || Arrays.asList(name.split("[/\\\\]")).contains("..");
    }

    private static JarFault tooLarge(String size) {
        return new JarFault(
                Fault.JAR_TOO_LARGE,
                "the jar is too large for an engine model",
                size + "; allowed are " + (LARGEST_JAR >> 20) + " MB, " + (LARGEST_UNPACKED >> 20) + " MB unpacked and "
                        + MOST_ENTRIES + " entries",
                "take out what the model does not need");
    }
}
