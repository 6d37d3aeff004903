package everyblade.window;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.InstantSource;
import java.util.function.BiConsumer;

/**
 * Faults of the program itself: each is kept whole in a file for whoever can mend it, and told to the person in a line.
 * One that comes again and again, such as at each painting, is told once. From any thread.
 */
final class Faults {

    /** The file is begun anew beyond this, bytes; the one before is kept beside it. */
    private static final long LONGEST = 1 << 20;

    private final Path file;
    private final InstantSource clock;
    private final BiConsumer<String, Path> tell;
    private String last = "";

    /**
     * @param file to which faults are appended; made with its folder when the first one comes
     * @param tell is given a fault in a line, and the file
     */
    Faults(Path file, InstantSource clock, BiConsumer<String, Path> tell) {
        this.file = file;
        this.clock = clock;
        this.tell = tell;
    }

    /** This should not have happened. */
    synchronized void add(Throwable fault) {
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        String whole = trace.toString();
        if (whole.equals(last)) {
            return;
        }
        last = whole;
        keep(clock.instant() + " " + whole + System.lineSeparator());
        tell.accept(brief(fault), file);
    }

    private static String brief(Throwable fault) {
        return fault.toString().lines().findFirst().orElse("");
    }

    private void keep(String text) {
        try {
            Files.createDirectories(file.getParent());
            if (Files.exists(file) && Files.size(file) > LONGEST) {
                Files.move(file, file.resolveSibling(file.getFileName() + ".old"), StandardCopyOption.REPLACE_EXISTING);
            }
            Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException nowhere) {
            // A fault that cannot be kept is still told.
        }
    }
}
