package everyblade.desktop.command;

import everyblade.picture.report.ShownPhoto;
import everyblade.record.JobFolder;
import everyblade.record.KeptPhoto;
import everyblade.record.Line;
import everyblade.record.photo.PhotoFile;
import everyblade.record.photo.Thumbnail;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** The pictures that a job's entries name, made ready to be shown. */
final class JobPhotos {

    private static final int SMALL = 300;

    private JobPhotos() {}

    /** In the order of the entries, each with its small copy if it is there as it was kept. */
    static List<ShownPhoto> of(OpenedJob job) {
        return job.journal().lines().stream()
                .filter(line -> line.entry().photo().isPresent())
                .map(line -> shown(job.folder(), line))
                .toList();
    }

    private static ShownPhoto shown(JobFolder folder, Line line) {
        KeptPhoto photo = line.entry().photo().orElseThrow();
        return new ShownPhoto(line.k(), photo.file(), photo.facts().taken(), small(folder, photo));
    }

    private static Optional<BufferedImage> small(JobFolder folder, KeptPhoto photo) {
        Path file = folder.path().resolve("photos").resolve(photo.file());
        try {
            if (Files.size(file) > PhotoFile.LARGEST) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file);
            return sha256(bytes).equals(photo.sha256())
                    ? Thumbnail.of(bytes, SMALL, photo.facts().orientation())
                    : Optional.empty();
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
