package everyblade.verifier;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.record.LocalDisk;
import everyblade.session.around.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The program at work in a folder, and the verifier beside it. */
record Shop(Path folder) {

    record Ran(int status, String out, String err) {}

    Ran program(String input, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Commands.run(
                new Surroundings(
                        new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, false, StandardCharsets.UTF_8),
                        new PrintStream(err, false, StandardCharsets.UTF_8),
                        InstantSource.fixed(Instant.parse("2026-05-14T06:00:00Z")),
                        Map.of("EVERYBLADE_PASSPHRASE", "correct horse"),
                        folder,
                        Optional.empty(),
                        new LocalDisk()),
                arguments);
        return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** What must go well. */
    String done(String... arguments) {
        Ran ran = program("", arguments);
        assertThat(ran.status()).as(ran.err()).isLessThan(2);
        return ran.out();
    }

    Ran verifier(String job) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int status = Verifier.run(folder.resolve(job), new PrintStream(out, true, StandardCharsets.UTF_8));
        return new Ran(status, out.toString(StandardCharsets.UTF_8), "");
    }

    List<String> verified(String job) {
        return verifier(job).out().lines().toList();
    }
}
