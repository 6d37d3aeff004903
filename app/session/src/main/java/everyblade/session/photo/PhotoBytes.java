package everyblade.session.photo;

import everyblade.json.PlainFile;
import everyblade.record.KeptPhoto;
import everyblade.record.photo.PhotoFile;
import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** The bytes of a job's pictures, only as they were kept: whatever else is there now is not handed out. */
public final class PhotoBytes {

    private PhotoBytes() {}

    /** Of a picture in the folder of a job; empty if it is not there, or is not the one that was kept. */
    public static Optional<byte[]> of(Path job, KeptPhoto photo) {
        try {
            Path folder = job.resolve("photos");
            PlainFile.requireFolder(folder);
            byte[] bytes = PlainFile.read(folder.resolve(photo.file()), PhotoFile.LARGEST);
            return sha256(bytes).equals(photo.sha256()) ? Optional.of(bytes) : Optional.empty();
        } catch (IOException notThere) {
            return Optional.empty();
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError("every Java platform has SHA-256", impossible);
        }
    }
}
