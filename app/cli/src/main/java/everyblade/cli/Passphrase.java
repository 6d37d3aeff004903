package everyblade.cli;

import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine.Option;

/**
 * The passphrase of a key file. It is never an argument, which other users of a machine can read, and is in no message: it
 * comes from a file, a variable, the person at the terminal, or the first line of standard input.
 */
final class Passphrase {

    private static final String VARIABLE = "EVERYBLADE_PASSPHRASE";
    private static final int LEAST = 8;

    @Option(names = "--passphrase-file", paramLabel = "F", description = "${bundle:help.passphraseFile}")
    private Path file;

    /** The passphrase of a key that is there. */
    char[] of(Surroundings around, Path key) {
        return given(around)
                .or(() -> around.terminal().secret(around.words().say("keys.passphrase", key) + " "))
                .or(() -> piped(around))
                .filter(passphrase -> passphrase.length > 0)
                .orElseThrow(() -> Failure.of("stopped.passphrase.noPassphraseForSetOr", key, VARIABLE));
    }

    /** One for a new key, asked for twice where a person types it. */
    char[] forNew(Surroundings around, Path key) {
        Optional<char[]> given = given(around);
        char[] passphrase = given.isPresent() ? given.get() : of(around, key);
        if (passphrase.length < LEAST) {
            throw Failure.of("stopped.passphrase.passphraseForHasFewerThan", key, LEAST);
        }
        Optional<char[]> again = given.isPresent()
                ? given
                : around.terminal().secret(around.words().say("keys.again") + " ");
        if (again.isPresent() && !Arrays.equals(passphrase, again.get())) {
            throw Failure.of("stopped.passphrase.twoPassphrasesForAreNot", key);
        }
        return passphrase;
    }

    private Optional<char[]> given(Surroundings around) {
        if (file == null) {
            return around.variable(VARIABLE).map(String::toCharArray);
        }
        try (BufferedReader lines = Files.newBufferedReader(around.path(file), StandardCharsets.UTF_8)) {
            return Optional.of(Optional.ofNullable(lines.readLine()).orElse("").toCharArray());
        } catch (IOException failure) {
            throw Failure.of("stopped.passphrase.cannotBeReadAsUtf", file);
        }
    }

    private static Optional<char[]> piped(Surroundings around) {
        try {
            return Optional.ofNullable(
                            new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8)).readLine())
                    .map(String::toCharArray);
        } catch (IOException closed) {
            return Optional.empty();
        }
    }
}
