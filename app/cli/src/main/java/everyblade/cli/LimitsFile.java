package everyblade.cli;

import everyblade.core.finding.Limits;
import everyblade.core.turning.Engine;
import everyblade.json.Problem;
import everyblade.record.limits.LimitsReader;
import everyblade.record.limits.LimitsReading;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A file of limits as the user named it.
 *
 * @param named as it was named
 * @param bytes of the file
 * @param reading what they say
 */
record LimitsFile(Path named, byte[] bytes, LimitsReading reading) {

    private static final long LARGEST = 1 << 24;

    /** Reads a file, for this engine if it is known. */
    static LimitsFile read(Surroundings around, String option, Path named, Optional<Engine> engine) {
        Path file = around.path(named);
        try {
            if (Files.isRegularFile(file) && Files.size(file) <= LARGEST) {
                byte[] bytes = Files.readAllBytes(file);
                return new LimitsFile(named, bytes, LimitsReader.read(named.toString(), bytes, engine));
            }
        } catch (IOException unreadable) {
            // said below
        }
        throw Failure.of("stopped.limitsFile.cannotBeReadAsFile", option, named);
    }

    /** The limits, or a failure that says the first thing that is wrong with them. */
    Limits limits(String option) {
        if (reading instanceof LimitsReading.Read read) {
            return read.limits();
        }
        List<Problem> problems = ((LimitsReading.Unreadable) reading).problems();
        throw Failure.of("stopped.limitsFile.seeCheck", option, problems.get(0), named);
    }

    /** Whether a file says of itself that it holds limits. */
    static boolean isMeant(Path file) {
        try {
            return Files.isRegularFile(file)
                    && Files.size(file) <= LARGEST
                    && LimitsReader.isMeant(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            return false;
        }
    }
}
