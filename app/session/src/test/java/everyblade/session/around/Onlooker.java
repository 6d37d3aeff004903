package everyblade.session.around;

import everyblade.record.LocalDisk;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** Whoever a command tells how far it is, and a clock that goes on when the test says so. */
final class Onlooker {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    /** Milliseconds since the beginning. */
    long now;

    /** @param watches whether a person sees what it tells */
    private record Person(boolean watches) implements Surroundings.Terminal {

        @Override
        public Optional<char[]> secret(String prompt) {
            return Optional.empty();
        }
    }

    Surroundings around(boolean watched) {
        PrintStream err = new PrintStream(bytes, false, StandardCharsets.UTF_8);
        return new Surroundings(
                InputStream.nullInputStream(),
                err,
                err,
                () -> Instant.ofEpochMilli(now),
                Map.of(),
                Path.of(""),
                Optional.empty(),
                new LocalDisk(),
                new Person(watched),
                new PackedJobs());
    }

    /** All that was told so far. */
    String told() {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
