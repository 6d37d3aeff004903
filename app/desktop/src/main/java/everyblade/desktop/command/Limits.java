package everyblade.desktop.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A file of limits for findings, which the user gives; so far only whether a file is one can be told. */
final class Limits {

    private static final String SCHEMA = "everyblade/limits/1";
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final long LARGEST = 1 << 24;

    private Limits() {}

    /** Reads a file of limits, or fails saying why it is none. */
    static void read(Surroundings around, Path file) {
        String where = "--limits " + file + ": ";
        try {
            JsonNode limits = tree(around.path(file));
            if (!SCHEMA.equals(limits.path("schema").textValue())) {
                throw new Failure(where + "it is no file of limits, since its \"schema\" is not \"" + SCHEMA
                        + "\"; name the file with your manual's limits");
            }
        } catch (JsonProcessingException unreadable) {
            throw new Failure(where + "line " + unreadable.getLocation().getLineNr() + " column "
                    + unreadable.getLocation().getColumnNr() + ": it is no JSON, " + unreadable.getOriginalMessage()
                    + "; mend the file");
        } catch (IOException failure) {
            throw new Failure(where + "it cannot be read; check that it is there and that you may read it");
        }
    }

    /** Whether a file says of itself that it holds limits. */
    static boolean is(Path file) {
        try {
            return Optional.ofNullable(tree(file).path("schema").textValue())
                    .filter(schema -> schema.startsWith("everyblade/limits/"))
                    .isPresent();
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static JsonNode tree(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new IOException("too long to be meant");
        }
        return JSON.readTree(Files.readAllBytes(file));
    }
}
