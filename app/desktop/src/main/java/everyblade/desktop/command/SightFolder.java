package everyblade.desktop.command;

import everyblade.core.sight.SightStore;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Computed sight kept in a folder beside a job, one file a station, each behind the hash of its content. It can be thrown
 * away at any time: what is missing, damaged or cannot be kept is computed again.
 *
 * @param folder where the files go; made when the first one is kept
 */
record SightFolder(Path folder) implements SightStore {

    private static final int HASH = 32;

    @Override
    public Optional<byte[]> find(String key) {
        try {
            byte[] file = Files.readAllBytes(file(key));
            if (file.length < HASH) {
                return Optional.empty();
            }
            byte[] content = Arrays.copyOfRange(file, HASH, file.length);
            return Arrays.equals(hash(content), Arrays.copyOf(file, HASH)) ? Optional.of(content) : Optional.empty();
        } catch (IOException notKept) {
            return Optional.empty();
        }
    }

    @Override
    public void keep(String key, byte[] content) {
        try {
            Files.createDirectories(folder);
            Path part = Files.createTempFile(folder, "part", ".tmp");
            byte[] file = Arrays.copyOf(hash(content), HASH + content.length);
            System.arraycopy(content, 0, file, HASH, content.length);
            Files.write(part, file);
            Files.move(part, file(key), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException readOnly) {
            // it is computed again next time
        }
    }

    private Path file(String key) {
        return folder.resolve(HexFormat.of().formatHex(hash(key.getBytes(StandardCharsets.UTF_8))) + ".sight");
    }

    private static byte[] hash(byte[] content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(content);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
