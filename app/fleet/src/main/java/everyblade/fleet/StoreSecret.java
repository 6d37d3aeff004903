package everyblade.fleet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Finds the password for a store: in the environment, in a file that only its owner may read, or in the desktop's keyring.
 * Where none of them has it, the driver still looks into the {@code .pgpass} that PostgreSQL's own programs use.
 *
 * @param environment variables by name
 * @param file with the password in its first line, if one was named
 */
public record StoreSecret(Map<String, String> environment, Optional<Path> file) {

    /** The variable that holds the password. */
    public static final String VARIABLE = "EVERYBLADE_STORE_PASSWORD";

    private static final Set<PosixFilePermission> OTHERS = Set.of(
            PosixFilePermission.GROUP_READ,
            PosixFilePermission.GROUP_WRITE,
            PosixFilePermission.OTHERS_READ,
            PosixFilePermission.OTHERS_WRITE);

    /**
     * The password, if it is found.
     *
     * @throws StoreRefusal if the file that was named cannot be read, or others may read it
     */
    Optional<String> of(StoreAddress address) throws StoreRefusal {
        if (file.isPresent()) {
            return Optional.of(read(file.get()));
        }
        String given = environment.getOrDefault(VARIABLE, "");
        return given.isEmpty() ? keyring(address) : Optional.of(given);
    }

    private static String read(Path file) throws StoreRefusal {
        try {
            boolean posix = Files.getFileStore(file).supportsFileAttributeView("posix");
            if (posix && Files.getPosixFilePermissions(file).stream().anyMatch(OTHERS::contains)) {
                throw new StoreRefusal(StoreRefusal.Reason.UNSAFE_SECRET, file.toString());
            }
            return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .findFirst()
                    .orElseThrow(() -> new StoreRefusal(StoreRefusal.Reason.UNSAFE_SECRET, file.toString()));
        } catch (IOException failure) {
            throw new StoreRefusal(StoreRefusal.Reason.UNSAFE_SECRET, file.toString());
        }
    }

    /** By the program of the freedesktop secret service, where it is installed; it asks the person by itself. */
    private Optional<String> keyring(StoreAddress address) {
        if (!environment.containsKey("DBUS_SESSION_BUS_ADDRESS")) {
            return Optional.empty();
        }
        List<String> command = List.of("secret-tool", "lookup", "service", "everyblade", "store", address.toString());
        try {
            Process asked = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            asked.getOutputStream().close();
            String found = new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return asked.waitFor(1, TimeUnit.MINUTES) && asked.exitValue() == 0 && !found.isEmpty()
                    ? Optional.of(found)
                    : Optional.empty();
        } catch (IOException notInstalled) {
            return Optional.empty();
        } catch (InterruptedException givenUp) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** Never the secret. */
    @Override
    public String toString() {
        return "Secret";
    }
}
